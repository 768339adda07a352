package org.fallrule.hydraulics.pipe;

import org.fallrule.hydraulics.mechanics.Bracket;
import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The depth at which a flow has the least energy: above it the water is tranquil, below it rapid. */
public final class CriticalDepth {
    public static final Method METHOD = Method.named(
                    "critical_depth",
                    "Critical depth and critical slope in a round pipe",
                    "The depth at which a flow has the least energy, and the slope that makes this depth normal.")
            .formula("Q^2 T / (g A^3) = 1")
            .formula("Sc = (Q n / (A R^(2/3)))^2 at critical depth")
            .formula("F = V / (g A/T)^(1/2)")
            .symbol("Q", "flow", "m3/s")
            .symbol("T", "width of the free surface", "m")
            .symbol("A", "wetted area", "m2")
            .symbol("g", "acceleration of gravity, 9.80665", "m/s2")
            .symbol("Sc", "critical slope", "m/m")
            .symbol("n", "Manning's roughness", "")
            .symbol("R", "hydraulic radius", "m")
            .symbol("F", "Froude number, 1 at critical depth", "")
            .symbol("V", "mean velocity", "m/s")
            .source("V. T. Chow, Open-Channel Hydraulics, 1959, sections 3-3, 4-2 and 6-7 (from memory)")
            .limit("Critical depth nears the crown as the flow grows and never passes it.")
            .limit("Without flow there is none. Within about 10 % of critical slope the surface is wavy.");

    private CriticalDepth() {}

    /** The critical depth; none without flow. */
    public static Answer<Length> of(Length bore, Flow flow) {
        if (flow.cubicMetresPerSecond() <= 0) {
            return Answer.none("no water flows, so no depth is critical");
        }
        return Answer.of(new Length(metres(bore.metres(), flow.cubicMetresPerSecond())));
    }

    /** The slope at which the critical depth is the normal depth; none without flow. */
    public static Answer<Slope> slope(RoundPipe pipe, Flow flow) {
        return of(pipe.bore(), flow)
                .map(depth -> new Slope(
                        pipe.section(depth.metres()).frictionSlope(flow.cubicMetresPerSecond(), pipe.roughness())));
    }

    /**
     * Froude number of a flow at a depth: below 1 tranquil, above 1 rapid. None without water or in a pipe that is full, as
     * there is no free surface then.
     */
    public static Answer<Double> froude(Length bore, Length depth, Flow flow) {
        CircularSection section = new CircularSection(bore.metres(), depth.metres());
        if (depth.metres() <= 0) {
            return Answer.none("there is no water in the pipe");
        }
        if (section.topWidthM() <= 0) {
            return Answer.none("the pipe is full and has no free surface");
        }
        double waveSpeed = Math.sqrt(Water.GRAVITY * section.areaSqM() / section.topWidthM());
        return Answer.of(section.velocityMps(flow.cubicMetresPerSecond()) / waveSpeed);
    }

    /** For solvers: the critical depth in metres of a flow above zero. */
    public static double metres(double diameterM, double flowCms) {
        double wanted = flowCms * flowCms / Water.GRAVITY;
        return Bracket.rootOfRising(
                y -> {
                    CircularSection section = new CircularSection(diameterM, y);
                    double area = section.areaSqM();
                    return area * area * area - wanted * section.topWidthM();
                },
                0,
                diameterM);
    }
}
