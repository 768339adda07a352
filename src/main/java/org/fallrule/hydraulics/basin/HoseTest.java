package org.fallrule.hydraulics.basin;

import java.util.List;
import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.NormalFlow;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * A garden hose let run into a basin: when water should come at the outfall. What comes later than this, or never, tells of a
 * belly, a leak or a blocked pipe.
 *
 * @param filling until the sump is filled up to the outlet's invert
 * @param travel from there through the pipes
 */
public record HoseTest(Time filling, Time travel) {
    public static final Method METHOD = Method.named(
                    "hose_test",
                    "Garden hose in a basin",
                    "When water from a hose, run into a basin, should come at the outfall.")
            .formula("filling = integral of A dh / (Q - q(h)) up to the outlet")
            .formula("q(h) = lesser of Cd a (2 g h)^0.5 and f As")
            .formula("travel = sum of L / V, V at normal depth of Q less what the sump loses")
            .symbol("A", "plan area of the sump", "m2")
            .symbol("h", "depth in the sump", "m")
            .symbol("Q", "flow of the hose", "m3/s")
            .symbol("q", "what the weep holes take", "m3/s")
            .symbol("Cd, a", "coefficient of discharge and area of the holes", "m2")
            .symbol("f, As", "infiltration rate and area of the soil", "m/s, m2")
            .symbol("g", "acceleration of gravity", "m/s2")
            .symbol("L", "length of a pipe", "m")
            .symbol("V", "velocity in the pipe", "m/s")
            .source("Continuity, Torricelli's law and Manning's formula")
            .source(
                    "That a garden hose gives about 5 to 10 gpm, and that a sump in sand is empty about ten minutes after, is"
                            + " common practice without a source")
            .limit(
                    "Solid pipes, laid dry and clean; a perforated pipe may swallow the hose. Stone around the sump is not"
                            + " filled first.")
            .limit("Each pipe must fall.")
            .limit("Measure the hose: time it into a bucket.");

    private static final int SLICES = 200;

    /**
     * The sump below the outlet.
     *
     * @param plan its area
     * @param depth from the weep holes to the outlet's invert
     * @param holes area of all weep holes, zero when there are none
     * @param coefficient of discharge of the holes
     * @param soil area of soil that takes the water
     * @param rate infiltration rate of that soil
     */
    public record Sump(Area plan, Length depth, Area holes, double coefficient, Area soil, Intensity rate) {

        /** How it drains once the hose is shut, from the outlet's invert down. */
        public DrainDown drainDown() {
            return SumpDrainDown.of(plan, depth, holes, coefficient, soil, rate);
        }

        private double lossCms(double depthM) {
            double through = coefficient * holes.squareMetres() * Water.speedAfterFall(depthM);
            return Math.min(through, soil.squareMetres() * rate.metresPerSecond());
        }
    }

    /** One pipe on the way to the outfall. */
    public record Stretch(RoundPipe pipe, Slope slope, Length length) {}

    /** When water should run; none when the sump takes all of it, or a pipe does not fall or is too small. */
    public static Answer<HoseTest> of(Flow hose, Sump sump, List<Stretch> way) {
        double hoseCms = hose.cubicMetresPerSecond();
        double leftCms = hoseCms - sump.lossCms(sump.depth().metres());
        if (leftCms <= 0) {
            return Answer.none(
                    "the sump's weep holes take all that the hose gives, so that no water reaches the outfall");
        }
        double travel = 0;
        for (Stretch stretch : way) {
            Answer<Time> time = travel(stretch, new Flow(leftCms));
            if (time.value().isEmpty()) {
                return Answer.none(time.why());
            }
            travel += time.value().get().seconds();
        }
        return Answer.of(new HoseTest(filling(hoseCms, sump), new Time(travel)));
    }

    /** From turning the hose on to water at the outfall. */
    public Time untilItRuns() {
        return new Time(filling.seconds() + travel.seconds());
    }

    private static Answer<Time> travel(Stretch stretch, Flow flow) {
        NormalFlow running = NormalDepth.of(stretch.pipe(), stretch.slope(), flow);
        if (running instanceof NormalFlow.Open open) {
            return Answer.of(
                    new Time(stretch.length().metres() / open.velocity().metresPerSecond()));
        }
        return Answer.none(
                running instanceof NormalFlow.NoFall
                        ? "a pipe on the way does not fall, so how fast water runs in it is not known"
                        : "a pipe on the way is too small for the hose");
    }

    /** By slices of depth, each at its middle. */
    private static Time filling(double hoseCms, Sump sump) {
        double slice = sump.depth().metres() / SLICES;
        double seconds = 0;
        for (int i = 0; i < SLICES; i++) {
            seconds += sump.plan().squareMetres() * slice / (hoseCms - sump.lossCms((i + 0.5) * slice));
        }
        return new Time(seconds);
    }
}
