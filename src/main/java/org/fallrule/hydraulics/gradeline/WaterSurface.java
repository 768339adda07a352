package org.fallrule.hydraulics.gradeline;

import org.fallrule.hydraulics.mechanics.Bracket;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.NormalFlow;
import org.fallrule.measure.Flow;
import org.fallrule.method.Method;

/** The free surface of a tranquil flow, followed up a pipe from a depth at its lower end. */
public final class WaterSurface {
    public static final Method METHOD = Method.named(
                    "direct_step",
                    "Backwater in a part-full pipe, direct step",
                    "The depth at the upper end of a pipe from the depth at its lower end, where the water is tranquil.")
            .formula("dx = (E2 - E1) / (Sf - S0),  E = y + V^2/2g,  Sf the mean of both ends of the step")
            .symbol("dx", "length of a step, upstream", "m")
            .symbol("E1, E2", "specific energy at the lower and the upper end of the step", "m")
            .symbol("y", "depth", "m")
            .symbol("V", "mean velocity", "m/s")
            .symbol("g", "acceleration of gravity", "m/s2")
            .symbol("Sf", "friction slope by Manning's formula", "m/m")
            .symbol("S0", "slope of the pipe, below zero where it rises", "m/m")
            .source("V. T. Chow, Open-Channel Hydraulics, 1959, section 10-2 (from memory)")
            .limit(
                    "Begins at critical depth or above. On a slope that keeps normal flow rapid the surface ends where it"
                            + " meets critical depth; a jump stands below that, and its place is not sought.")
            .limit("Where the surface meets the crown the rest of the pipe is taken as full.")
            .limit("In 60 steps of depth; within 0.5 % of the diameter of a numerical integration in the cases tried.");

    private static final int STEPS = 60;
    /** Of the gap to normal depth, what is left after each step; the surface nears it without end. */
    private static final double LEFT_BY_STEP = 0.88;

    private final Reach reach;
    private final double target;
    private final boolean nearsTarget;

    private WaterSurface(Reach reach, double target, boolean nearsTarget) {
        this.reach = reach;
        this.target = target;
        this.nearsTarget = nearsTarget;
    }

    /** Depth or pressure head in metres at the upper end. */
    static double depthAtUpperEnd(Reach reach, double depthM, double stationM) {
        if (reach.slope <= 0) {
            return new WaterSurface(reach, reach.diameterM, false).follow(depthM, stationM);
        }
        double normal = normalDepth(reach);
        return normal > reach.criticalM
                ? new WaterSurface(reach, normal, true).follow(depthM, stationM)
                : new WaterSurface(reach, reach.criticalM, false).follow(depthM, stationM);
    }

    /** The normal depth of a reach that falls and is not overfull. */
    static double normalDepth(Reach reach) {
        NormalFlow flow = NormalDepth.of(reach.drain.pipe(), reach.drain.slope(), new Flow(reach.flowCms));
        return flow instanceof NormalFlow.Open open ? open.depth().metres() : reach.diameterM;
    }

    private double follow(double startDepth, double startStation) {
        Depth depth = at(startDepth);
        double station = startStation;
        for (int step = 1; step <= STEPS && station < reach.lengthM; step++) {
            Depth next = at(depthAfter(step, startDepth));
            double dx = advance(depth, next);
            if (station + dx >= reach.lengthM) {
                return depthWithin(depth, next.metres, reach.lengthM - station);
            }
            station += dx;
            depth = next;
        }
        return beyondTarget(depth.metres, station);
    }

    private double depthAfter(int step, double start) {
        double left = nearsTarget ? Math.pow(LEFT_BY_STEP, step) : 1 - (double) step / STEPS;
        return target + (start - target) * left;
    }

    /** A depth with what the flow has there, worked out once for the steps to it and from it. */
    private record Depth(double metres, double frictionSlope, double energyM) {}

    private Depth at(double metres) {
        return new Depth(metres, reach.frictionSlopeAt(metres), reach.energyAt(metres));
    }

    /** How far upstream the water has another depth. */
    private double advance(Depth from, Depth to) {
        double friction = (from.frictionSlope + to.frictionSlope) / 2;
        double gap = friction - reach.slope;
        double rise = to.energyM - from.energyM;
        return rise == 0 || gap == 0 ? 0 : Math.max(0, rise / gap);
    }

    private double depthWithin(Depth from, double to, double metres) {
        double gap = to - from.metres;
        double part = Bracket.rootOfRising(t -> advance(from, at(from.metres + t * gap)) - metres, 0, 1);
        return from.metres + part * gap;
    }

    private double beyondTarget(double depth, double station) {
        if (nearsTarget || reach.slope > 0) {
            return depth;
        }
        return reach.diameterM + (reach.fullFrictionSlope() - reach.slope) * (reach.lengthM - station);
    }
}
