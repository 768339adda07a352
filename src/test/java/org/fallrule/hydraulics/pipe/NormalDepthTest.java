package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.gpm;
import static org.fallrule.hydraulics.UsUnits.pipe;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class NormalDepthTest implements MethodContract {
    private static final RoundPipe PIPE = pipe(6, 0.011);
    private static final Slope SLOPE = new Slope(0.0125);
    private static final double FULL =
            PIPE.capacity(SLOPE).value().orElseThrow().cubicMetresPerSecond();
    private static final String ELEMENTS = "hydraulic elements of a circular pipe, Chow appendix A, from memory";
    private static final String NSPC = "National Standard Plumbing Code 2009, appendix K, read";

    @Override
    public Method method() {
        return NormalDepth.METHOD;
    }

    @Override
    public List<Published> published() {
        List<Published> all = new ArrayList<>();
        double[][] elements = {
            {0.10, 0.401, 0.021},
            {0.20, 0.615, 0.088},
            {0.25, 0.701, 0.137},
            {0.30, 0.776, 0.196},
            {0.40, 0.902, 0.337},
            {0.50, 1.000, 0.500},
            {0.60, 1.072, 0.672},
            {0.70, 1.120, 0.837},
            {0.75, 1.133, 0.912},
            {0.80, 1.140, 0.977},
            {0.90, 1.124, 1.066}
        };
        for (double[] row : elements) {
            all.add(new Published(
                    "V/Vfull at y/D " + row[0], row[1], 0.0006, "", ELEMENTS, () -> velocityOverFull(row[0])));
            all.add(new Published(
                    "Q/Qfull at y/D " + row[0], row[2], 0.0006, "", ELEMENTS, () -> flowOverFull(row[0])));
        }
        all.add(new Published("Q, full over half full", 2.00, 0.005, "", NSPC, () -> 1 / flowOverFull(0.5)));
        all.add(new Published("V, full over half full", 1.00, 0.005, "", NSPC, () -> 1 / velocityOverFull(0.5)));
        all.add(new Published(
                "Q, a quarter over half full", 0.274, 0.0005, "", NSPC, () -> flowOverFull(0.25) / flowOverFull(0.5)));
        all.add(new Published("V, a quarter over half full", 0.701, 0.0005, "", NSPC, () -> velocityOverFull(0.25)));
        all.add(new Published(
                "Q, three quarters over half full",
                1.82,
                0.005,
                "",
                NSPC,
                () -> flowOverFull(0.75) / flowOverFull(0.5)));
        all.add(new Published("V, three quarters over half full", 1.13, 0.005, "", NSPC, () -> velocityOverFull(0.75)));
        all.add(new Published(
                "4 in, n 0.015, 0.5 %, 25 gpm read off a chart: y/D",
                0.5,
                0.02,
                "",
                "a general handbook's sewer capacity chart, read",
                () -> open(pipe(4, 0.015), new Slope(0.005), gpm(25)).filling()));
        return all;
    }

    private static NormalFlow.Open open(RoundPipe pipe, Slope slope, Flow flow) {
        return (NormalFlow.Open) NormalDepth.of(pipe, slope, flow);
    }

    private static double flowOverFull(double filling) {
        double n = PIPE.roughness().n();
        return PIPE.section(filling * PIPE.bore().metres()).sectionFactor() / n * Math.sqrt(SLOPE.ratio()) / FULL;
    }

    /** From the flow back to the depth, and from there the velocity. */
    private static double velocityOverFull(double filling) {
        NormalFlow.Open open = open(PIPE, SLOPE, new Flow(FULL * flowOverFull(filling)));
        assertThat(open.filling()).isCloseTo(filling, within(1e-9));
        return open.velocity().metresPerSecond()
                / PIPE.fullVelocity(SLOPE).value().orElseThrow().metresPerSecond();
    }

    @Test
    void halfItsFlowHalfFillsAPipe() {
        NormalFlow.Open open = open(PIPE, SLOPE, new Flow(FULL / 2));

        assertThat(open.depth().metres()).isCloseTo(Length.inches(3).metres(), within(1e-9));
        assertThat(open.upperDepth()).isEmpty();
    }

    @Test
    void whatTheFullPipeCarriesRunsAtTwoDepths() {
        NormalFlow.Open open = open(PIPE, SLOPE, new Flow(FULL));

        assertThat(open.filling()).isCloseTo(0.8196, within(0.0001));
        assertThat(open.upperDepth().orElseThrow().metres())
                .isCloseTo(PIPE.bore().metres(), within(1e-9));
    }

    @Test
    void capacityPeaksBelowTheCrown() {
        assertThat(NormalDepth.GREATEST_FILLING).isCloseTo(0.9382, within(0.00005));
        assertThat(NormalDepth.GREATEST_OVER_FULL).isCloseTo(1.0757, within(0.00005));

        NormalFlow.Open open = open(PIPE, SLOPE, new Flow(FULL * NormalDepth.GREATEST_OVER_FULL));

        assertThat(open.filling()).isCloseTo(0.9382, within(0.0001));
        assertThat(open.upperDepth().orElseThrow().metres() / PIPE.bore().metres())
                .isCloseTo(0.9382, within(0.0001));
    }

    @Test
    void betweenTheTwoTheLowerDepthIsGivenAndTheUpperNamed() {
        NormalFlow.Open open = open(PIPE, SLOPE, new Flow(FULL * 1.05));
        double upper = open.upperDepth().orElseThrow().metres();

        assertThat(open.filling()).isBetween(0.82, 0.938);
        assertThat(upper / PIPE.bore().metres()).isBetween(0.938, 1.0);
        assertThat(PIPE.section(upper).sectionFactor())
                .isCloseTo(PIPE.section(open.depth().metres()).sectionFactor(), within(1e-12));
    }

    @Test
    void whatIsMoreThanThatFillsThePipeAndNeedsAFrictionSlope() {
        NormalFlow flow = NormalDepth.of(PIPE, SLOPE, new Flow(FULL * 1.08));

        assertThat(flow).isInstanceOf(NormalFlow.Full.class);
        NormalFlow.Full full = (NormalFlow.Full) flow;
        assertThat(full.greatestOpen().cubicMetresPerSecond()).isCloseTo(FULL * 1.0757, within(FULL * 1e-4));
        assertThat(full.frictionSlope().ratio()).isCloseTo(SLOPE.ratio() * 1.08 * 1.08, within(1e-9));
    }

    @Test
    void aLevelOrRisingPipeHasNoNormalDepth() {
        assertThat(NormalDepth.of(PIPE, new Slope(0), gpm(10))).isEqualTo(new NormalFlow.NoFall(new Slope(0)));
        assertThat(NormalDepth.of(PIPE, new Slope(-0.01), gpm(0))).isEqualTo(new NormalFlow.NoFall(new Slope(-0.01)));
    }

    @Test
    void noFlowLeavesAFallingPipeDry() {
        assertThat(NormalDepth.of(PIPE, SLOPE, new Flow(0))).isEqualTo(new NormalFlow.Dry());
    }

    @Test
    void aFlowBelowZeroIsRefused() {
        assertThatThrownBy(() -> NormalDepth.of(PIPE, SLOPE, new Flow(-1))).hasMessageContaining("below zero");
    }

    @Test
    void aTrickleInALargePipeAndAFullTinyOneAreFound() {
        assertThat(open(pipe(48, 0.013), new Slope(0.05), new Flow(1e-9))
                        .depth()
                        .metres())
                .isBetween(1e-6, 1e-3);
        assertThat(NormalDepth.of(pipe(0.1, 0.01), new Slope(1e-4), new Flow(1e-3)))
                .isInstanceOf(NormalFlow.Full.class);
    }
}
