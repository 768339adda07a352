package org.fallrule.hydrology;

import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** What a roof brings to its leaders when all of the rain runs off, as plumbing codes count it. */
public final class RoofRain {
    public static final Method METHOD = Method.named(
                    "roof_rain",
                    "Rain on a roof after the plumbing codes",
                    "The flow from a roof and from the walls that drain onto it, with no loss, and the roof that a flow"
                            + " serves.")
            .formula("gpm = 0.0104 R A")
            .formula("A = Ah + Av / 2")
            .symbol("gpm", "flow", "gpm")
            .symbol("R", "intensity of the code's storm", "in/h")
            .symbol("A", "area that counts", "ft2")
            .symbol("Ah", "plan area of the roof", "ft2")
            .symbol("Av", "area of one vertical wall that drains onto it", "ft2")
            .source("International Plumbing Code, 2018, section 1106 (the factor read in pages about the 2012 and 2021"
                    + " editions; half of the wall read in 1106.4)")
            .limit("The factor is computed from the units, 0.010390; the codes round it to 0.0104, 0.1 % more.")
            .limit("One wall: for two walls the Uniform Plumbing Code has rules of its own, not computed here.")
            .limit("Area and intensity above zero; else there is no answer.");

    private RoofRain() {}

    /** The area that counts for a roof with a wall above it that drains onto it. */
    public static Area counting(Area roof, Area wall) {
        return new Area(roof.squareMetres() + wall.squareMetres() / 2);
    }

    /** The flow from an area, or why there is none. */
    public static Answer<Flow> flow(Area counting, Intensity rain) {
        return counting.squareMetres() <= 0 || rain.metresPerSecond() <= 0
                ? Answer.none("a roof's area and its rain must be above zero")
                : Answer.of(new Flow(counting.squareMetres() * rain.metresPerSecond()));
    }

    /** The area that a flow serves, or why there is none. */
    public static Answer<Area> served(Flow flow, Intensity rain) {
        return flow.cubicMetresPerSecond() <= 0 || rain.metresPerSecond() <= 0
                ? Answer.none("a flow and its rain must be above zero")
                : Answer.of(new Area(flow.cubicMetresPerSecond() / rain.metresPerSecond()));
    }
}
