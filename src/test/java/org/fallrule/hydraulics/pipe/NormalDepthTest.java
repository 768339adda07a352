package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.gpm;
import static org.fallrule.hydraulics.UsUnits.pipe;

import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class NormalDepthTest implements MethodContract {
    private static final RoundPipe PIPE = pipe(6, 0.011);
    private static final Slope SLOPE = new Slope(0.0125);
    private static final double FULL =
            PIPE.capacity(SLOPE).value().orElseThrow().cubicMetresPerSecond();

    @Override
    public Method method() {
        return NormalDepth.METHOD;
    }

    @Override
    public double ours(Given given) {
        if (given.what().equals("y/D of a flow")) {
            RoundPipe pipe = new RoundPipe(given.length("bore"), new Roughness(given.number("n")));
            return open(pipe, given.slope("slope"), given.flow("Q")).filling();
        }
        double filling = given.number("y/D");
        CircularSection unit = new CircularSection(1, filling);
        CircularSection full = new CircularSection(1, 1);
        return switch (given.what()) {
            case "A/D^2" -> unit.areaSqM();
            case "P/D" -> unit.wettedPerimeterM();
            case "R/D" -> unit.hydraulicRadiusM();
            case "A R^(2/3) / D^(8/3)" -> unit.sectionFactor();
            case "A/Afull" -> unit.areaSqM() / full.areaSqM();
            case "R/Rfull" -> unit.hydraulicRadiusM() / full.hydraulicRadiusM();
            case "Q/Qfull" -> flowOverFull(filling);
            case "Q over Q of half full" -> flowOverFull(filling) / flowOverFull(0.5);
            case "V/Vfull" -> velocityOverFull(filling);
            case "V over V of half full" -> velocityOverFull(filling) / velocityOverFull(0.5);
            default -> throw new AssertionError(given.value());
        };
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
        if (filling == 1) {
            return 1;
        }
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
