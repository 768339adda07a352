package org.fallrule.hydrology;

import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** What a vertical leader carries with an air core in its middle. */
public final class LeaderCapacity {
    public static final Method METHOD = Method.named(
                    "leader_capacity",
                    "Capacity of a vertical leader",
                    "The flow that a vertical pipe carries as a sheet on its wall, filled to a given share.")
            .formula("q = 27.8 r^(5/3) d^(8/3)")
            .symbol("q", "flow", "gpm")
            .symbol("r", "share of the cross-section that water fills, 7/24 or 1/3 in plumbing codes", "")
            .symbol("d", "inside diameter", "in")
            .source("R. S. Wyly, H. N. Eaton, Capacities of stacks in sanitary drainage systems, National Bureau of"
                    + " Standards Monograph 31, 1961 (from memory)")
            .limit("Round, open at the top, tall enough for the water to reach its final speed.")
            .limit("Filled to 1/4 to 1/3 (from memory); outside of it there is no answer.")
            .limit("A code's own table comes first where the code asks for it.");

    private static final double LEAST_FILLED = 1.0 / 4;
    private static final double MOST_FILLED = 1.0 / 3;

    private LeaderCapacity() {}

    /** The capacity, or why there is none. */
    public static Answer<Flow> flow(Length insideDiameter, Ratio filled) {
        double tolerance = Dimension.RATIO.tolerance();
        if (insideDiameter.metres() <= 0) {
            return Answer.none("the leader has no diameter");
        }
        if (filled.value() < LEAST_FILLED - tolerance || filled.value() > MOST_FILLED + tolerance) {
            return Answer.none("the formula holds for a leader filled to 1/4 to 1/3, asked for "
                    + Printed.trimmed(filled.value()));
        }
        return Answer.of(new Flow(27.8
                * Math.pow(filled.value(), 5.0 / 3)
                * Math.pow(insideDiameter.in(Unit.INCH), 8.0 / 3)
                * Unit.GALLON_PER_MINUTE.toSi()));
    }
}
