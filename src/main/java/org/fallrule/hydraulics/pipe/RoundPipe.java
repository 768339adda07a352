package org.fallrule.hydraulics.pipe;

import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * A round pipe running full at atmospheric pressure, by Manning's formula.
 *
 * @param bore inside diameter, above zero; a nominal size is not a bore where a standard fixes another
 * @param roughness of its inside
 */
public record RoundPipe(Length bore, Roughness roughness) {
    public static final Method METHOD = Method.named(
                    "manning_full",
                    "Manning's formula, pipe running full",
                    "Capacity and velocity of a round pipe that just runs full, and the slope that friction asks for.")
            .formula("Q = (1/n) A R^(2/3) S^(1/2) = (0.3117/n) D^(8/3) S^(1/2)")
            .formula("V = (0.3969/n) D^(2/3) S^(1/2)")
            .symbol("Q", "flow", "m3/s")
            .symbol("V", "mean velocity", "m/s")
            .symbol("n", "Manning's roughness", "")
            .symbol("A", "area of the bore", "m2")
            .symbol("R", "hydraulic radius, D/4 when full", "m")
            .symbol("D", "inside diameter", "m")
            .symbol("S", "slope of the pipe, or of the energy line", "m/m")
            .source("R. Manning, On the flow of water in open channels and pipes, Transactions of the Institution of"
                    + " Civil Engineers of Ireland 20, 1891 (from memory)")
            .source(
                    "FHWA HEC-22, third edition, 2009, equation 7-1, which rounds the constants to 0.312 and 0.397, in feet"
                            + " 0.46 and 0.59 (from memory); the constants here are not rounded, in feet 0.4632 and 0.5897")
            .limit("Steady, fully turbulent flow; a pipe of less than about 2 in is smoother than its n says.")
            .limit("A level or rising pipe has no capacity of its own: the water is pushed, and the grade line tells"
                    + " how high. No answer is given.")
            .limit("A pipe passes up to 1.0757 times this flow at 0.938 of its depth. That reserve is not counted: the"
                    + " least disturbance fills the pipe.")
            .limit("Fittings, joints, roots and silt are not in it.");

    public RoundPipe {
        if (!(bore.metres() > 0)) {
            throw new IllegalArgumentException("a pipe's bore must be above zero, was " + bore.metres() + " m");
        }
    }

    /** The flow at which the pipe just runs full; none when it does not fall. */
    public Answer<Flow> capacity(Slope slope) {
        return slope.ratio() > 0 ? Answer.of(new Flow(conveyanceCms() * Math.sqrt(slope.ratio()))) : noFall(slope);
    }

    /** The mean velocity of a pipe that just runs full; none when it does not fall. */
    public Answer<Velocity> fullVelocity(Slope slope) {
        return capacity(slope).map(flow -> new Velocity(fullSection().velocityMps(flow.cubicMetresPerSecond())));
    }

    /** The slope at which the pipe, running full, flows at a velocity. */
    public Slope slopeFor(Velocity velocity) {
        return frictionSlope(new Flow(velocity.metresPerSecond() * fullSection().areaSqM()));
    }

    /** The slope of the energy line when a flow fills the pipe. */
    public Slope frictionSlope(Flow flow) {
        return new Slope(fullSection().frictionSlope(flow.cubicMetresPerSecond(), roughness));
    }

    /** The full pipe's flow in m³/s at a slope of 1. */
    public double conveyanceCms() {
        return fullSection().sectionFactor() / roughness.n();
    }

    CircularSection fullSection() {
        return section(bore.metres());
    }

    CircularSection section(double depthM) {
        return new CircularSection(bore.metres(), depthM);
    }

    private static <T> Answer<T> noFall(Slope slope) {
        return Answer.none(
                slope.ratio() < 0
                        ? "the pipe rises in the direction of flow and has no capacity of its own"
                        : "the pipe is level and has no capacity of its own");
    }
}
