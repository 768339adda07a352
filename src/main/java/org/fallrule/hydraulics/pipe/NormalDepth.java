package org.fallrule.hydraulics.pipe;

import java.util.Optional;
import org.fallrule.hydraulics.mechanics.Bracket;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Method;

/** The depth that a steady flow takes in a long pipe, where friction uses up exactly the fall. */
public final class NormalDepth {
    public static final Method METHOD = Method.named(
                    "normal_depth",
                    "Normal depth in a round pipe, part full",
                    "Depth and velocity of a steady flow in a long round pipe, by Manning's formula.")
            .formula("Q = (1/n) A R^(2/3) S^(1/2), solved for y")
            .formula("theta = 2 acos(1 - 2y/D);  A = D^2 (theta - sin theta)/8;  P = D theta/2;  R = A/P")
            .symbol("Q", "flow", "m3/s")
            .symbol("n", "Manning's roughness, the same at every depth", "")
            .symbol("y", "normal depth", "m")
            .symbol("D", "inside diameter", "m")
            .symbol("theta", "angle that the surface spans at the centre", "rad")
            .symbol("A", "wetted area", "m2")
            .symbol("P", "wetted perimeter", "m")
            .symbol("R", "hydraulic radius", "m")
            .symbol("S", "slope of the pipe", "m/m")
            .source("V. T. Chow, Open-Channel Hydraulics, 1959, sections 2-5 and 6-6, table 2-1 (from memory)")
            .source(
                    "National Standard Plumbing Code 2009, appendix K: flow and velocity at a quarter, half, three quarters"
                            + " and full depth (read)")
            .limit("From 0.8196 of the diameter upward two depths carry the same flow, greatest 1.0757 times the full"
                    + " pipe's at 0.9382. The lower is given; the upper is named beside it, as the pipe may fill.")
            .limit("Greatest velocity is 1.1400 times the full pipe's, at 0.8128 of the diameter.")
            .limit("A level or rising pipe has no normal depth; the grade line tells how water stands in it.")
            .limit("n is taken as constant with depth; measured n is up to a quarter higher in a part-full pipe"
                    + " (T. R. Camp, 1946, from memory).");

    /** Depth over diameter at which a free surface passes the greatest flow, 0.9382. */
    public static final double GREATEST_FILLING = greatestFilling();

    /** The greatest flow with a free surface over that of the full pipe, 1.0757. */
    public static final double GREATEST_OVER_FULL =
            new CircularSection(1, GREATEST_FILLING).sectionFactor() / new CircularSection(1, 1).sectionFactor();

    private NormalDepth() {}

    /**
     * How a flow runs in a long pipe.
     *
     * @throws IllegalArgumentException if the flow is below zero
     */
    public static NormalFlow of(RoundPipe pipe, Slope slope, Flow flow) {
        double flowCms = flow.cubicMetresPerSecond();
        if (flowCms < 0) {
            throw new IllegalArgumentException("a flow must not be below zero, was " + flowCms + " m3/s");
        }
        if (slope.ratio() <= 0) {
            return new NormalFlow.NoFall(slope);
        }
        if (flowCms == 0) {
            return new NormalFlow.Dry();
        }
        double full = pipe.conveyanceCms() * Math.sqrt(slope.ratio());
        if (flowCms > full * GREATEST_OVER_FULL) {
            return new NormalFlow.Full(new Flow(full * GREATEST_OVER_FULL), pipe.frictionSlope(flow));
        }
        return open(pipe, slope, flowCms, full);
    }

    private static NormalFlow open(RoundPipe pipe, Slope slope, double flowCms, double fullCms) {
        double wanted = flowCms * pipe.roughness().n() / Math.sqrt(slope.ratio());
        double diameter = pipe.bore().metres();
        double crest = GREATEST_FILLING * diameter;
        double depth = Bracket.rootOfRising(y -> pipe.section(y).sectionFactor() - wanted, 0, crest);
        Optional<Length> upper = flowCms < fullCms
                ? Optional.empty()
                : Optional.of(new Length(
                        Bracket.rootOfRising(y -> wanted - pipe.section(y).sectionFactor(), crest, diameter)));
        Velocity velocity = new Velocity(pipe.section(depth).velocityMps(flowCms));
        return new NormalFlow.Open(new Length(depth), depth / diameter, velocity, upper);
    }

    /** Where the derivative of the section factor by the angle is zero: 3 theta - 5 theta cos theta + 2 sin theta = 0. */
    private static double greatestFilling() {
        double theta =
                Bracket.rootOfRising(t -> 5 * t * Math.cos(t) - 3 * t - 2 * Math.sin(t), 1.5 * Math.PI, 2 * Math.PI);
        return (1 - Math.cos(theta / 2)) / 2;
    }
}
