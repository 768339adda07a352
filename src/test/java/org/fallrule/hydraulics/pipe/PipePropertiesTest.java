package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;

/** What holds for any pipe. Drawn from a seed, as sizes, slopes and flows span decades. */
class PipePropertiesTest {

    /** A number from low to high, each decade as likely as another. */
    private static double decades(Random random, double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private static RoundPipe pipe(Random random) {
        return new RoundPipe(new Length(decades(random, 0.005, 3)), new Roughness(decades(random, 0.008, 0.03)));
    }

    private static double capacity(RoundPipe pipe, double slope) {
        return pipe.capacity(new Slope(slope)).value().orElseThrow().cubicMetresPerSecond();
    }

    @Property
    void moreSlopeOrDiameterOrLessRoughnessNeverLowersCapacity(@ForAll long seed) {
        Random random = new Random(seed);
        RoundPipe pipe = pipe(random);
        double slope = decades(random, 1e-6, 0.5);
        double more = 1 + random.nextDouble();
        RoundPipe wider = new RoundPipe(pipe.bore().times(more), pipe.roughness());
        RoundPipe rougher =
                new RoundPipe(pipe.bore(), new Roughness(pipe.roughness().n() * more));

        assertThat(capacity(pipe, slope * more)).isGreaterThanOrEqualTo(capacity(pipe, slope));
        assertThat(capacity(wider, slope)).isGreaterThanOrEqualTo(capacity(pipe, slope));
        assertThat(capacity(rougher, slope)).isLessThanOrEqualTo(capacity(pipe, slope));
    }

    @Property
    void normalDepthInvertsTheFlow(@ForAll long seed) {
        Random random = new Random(seed);
        RoundPipe pipe = pipe(random);
        double slope = decades(random, 1e-6, 0.5);
        double flow = capacity(pipe, slope) * decades(random, 1e-6, NormalDepth.GREATEST_OVER_FULL * 0.999999);
        NormalFlow.Open open = (NormalFlow.Open) NormalDepth.of(pipe, new Slope(slope), new Flow(flow));
        double again = pipe.section(open.depth().metres()).sectionFactor()
                / pipe.roughness().n()
                * Math.sqrt(slope);

        assertThat(open.filling()).isBetween(0.0, NormalDepth.GREATEST_FILLING);
        assertThat(again).isCloseTo(flow, within(flow * 1e-9));
    }

    @Property
    void moreFlowRunsDeeperAndCriticalDepthRisesWithIt(@ForAll long seed) {
        Random random = new Random(seed);
        RoundPipe pipe = pipe(random);
        double slope = decades(random, 1e-5, 0.3);
        double flow = capacity(pipe, slope) * random.nextDouble(0.01, 1);
        double less = flow * random.nextDouble(0.1, 1);

        assertThat(depth(pipe, slope, less)).isLessThanOrEqualTo(depth(pipe, slope, flow));
        assertThat(CriticalDepth.metres(pipe.bore().metres(), less))
                .isLessThanOrEqualTo(CriticalDepth.metres(pipe.bore().metres(), flow));
    }

    private static double depth(RoundPipe pipe, double slope, double flow) {
        return ((NormalFlow.Open) NormalDepth.of(pipe, new Slope(slope), new Flow(flow)))
                .depth()
                .metres();
    }

    @Property
    void aFlowIsRapidJustWhereThePipeIsSteeperThanCritical(@ForAll long seed) {
        Random random = new Random(seed);
        RoundPipe pipe = pipe(random);
        double slope = decades(random, 1e-5, 0.3);
        Flow flow = new Flow(capacity(pipe, slope) * random.nextDouble(0.01, 0.8));
        double critical = CriticalDepth.slope(pipe, flow).value().orElseThrow().ratio();
        double froude = CriticalDepth.froude(
                        pipe.bore(), new Length(depth(pipe, slope, flow.cubicMetresPerSecond())), flow)
                .value()
                .orElseThrow();

        if (Math.abs(slope / critical - 1) > 1e-6) {
            assertThat(froude > 1).isEqualTo(slope > critical);
        }
    }

    @Property
    void inputInUsAndInSiUnitsGivesTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        double inches = decades(random, 0.5, 100);
        double perFoot = decades(random, 1e-4, 1);
        double gpm = decades(random, 0.01, 1);
        Roughness n = new Roughness(0.012);
        RoundPipe us = new RoundPipe(Length.inches(inches), n);
        RoundPipe si = new RoundPipe(new Length(inches * 25.4 / 1000), n);
        Slope usSlope =
                new Slope(Written.of(perFoot, Unit.INCH_PER_FOOT).quantity().si());
        Slope siSlope = new Slope(perFoot * 1000 / 12 / 1000);
        Flow usFlow =
                new Flow(Written.of(gpm, Unit.GALLON_PER_MINUTE).quantity().si());
        Flow siFlow = new Flow(gpm * 3.785411784 / 60 / 1000);

        assertThat(capacity(us, usSlope.ratio()))
                .isCloseTo(capacity(si, siSlope.ratio()), within(1e-9 * capacity(si, siSlope.ratio())));
        if (NormalDepth.of(us, usSlope, usFlow) instanceof NormalFlow.Open one
                && NormalDepth.of(si, siSlope, siFlow) instanceof NormalFlow.Open other) {
            assertThat(one.filling()).isCloseTo(other.filling(), within(1e-9));
            assertThat(one.velocity().metresPerSecond())
                    .isCloseTo(other.velocity().metresPerSecond(), within(1e-9));
        }
        assertThat(CriticalDepth.metres(us.bore().metres(), usFlow.cubicMetresPerSecond()))
                .isCloseTo(CriticalDepth.metres(si.bore().metres(), siFlow.cubicMetresPerSecond()), within(1e-9));
    }
}
