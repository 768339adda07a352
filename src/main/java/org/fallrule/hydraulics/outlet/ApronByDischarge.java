package org.fallrule.hydraulics.outlet;

import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** A stone apron whose length follows from the flow and the pipe. */
public final class ApronByDischarge {
    public static final Method METHOD = Method.named(
                    "apron_by_discharge",
                    "Stone apron by discharge and diameter",
                    "Length of a stone apron, its width at the pipe and its thickness.")
            .formula("L = 1.7 Q / D^1.5 + 8 D;  W = 3 D;  T = 2 D50")
            .symbol("L", "length of the apron", "ft")
            .symbol("Q", "flow", "ft3/s")
            .symbol("D", "inside diameter", "ft")
            .symbol("W", "width at the pipe", "ft")
            .symbol("T", "thickness", "ft")
            .symbol("D50", "median size of the stone", "ft")
            .source("Dane County, Wisconsin, erosion control and stormwater manual, stone apron at an outlet (read)")
            .limit("One county's rule; a county that prints its own comes first.")
            .limit("Without flow no apron is given. Level ground below the outfall is assumed.");

    private ApronByDischarge() {}

    /** Length along the flow; none without flow. */
    public static Answer<Length> length(Length bore, Flow flow) {
        if (flow.cubicMetresPerSecond() <= 0) {
            return Answer.none("no water leaves the pipe, so nothing asks for an apron");
        }
        double d = bore.in(Unit.FOOT);
        return Answer.of(Length.feet(1.7 * flow.in(Unit.CUBIC_FOOT_PER_SECOND) / Math.pow(d, 1.5) + 8 * d));
    }

    /** Width at the pipe. */
    public static Length widthAtPipe(Length bore) {
        return bore.times(3);
    }

    /** Thickness of the layer. */
    public static Length thickness(Length medianStone) {
        return medianStone.times(2);
    }
}
