package org.fallrule.hydraulics.pipe;

import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;

/** What a vertical leader takes, the water clinging to its wall and air going up its middle. */
public final class VerticalLeader {
    public static final Method METHOD = Method.named(
                    "vertical_leader", "Vertical leader or stack", "What a vertical pipe takes at a filling.")
            .formula("q = 27.8 r^(5/3) d^(8/3)")
            .symbol("q", "flow", "gpm")
            .symbol("r", "part of the bore that water fills; 7/24 in many codes, 1/3 at most", "")
            .symbol("d", "inside diameter", "in")
            .source(
                    "R. S. Wyly and H. N. Eaton, Capacities of stacks in sanitary drainage systems for buildings, National"
                            + " Bureau of Standards Monograph 31, 1961 (from memory)")
            .source("National Standard Plumbing Code 2006, table 13.6.1 (read): all nine sizes follow at r = 7/24")
            .limit(
                    "Up to a third full; more pulls slugs of water and noise. No answer is for a leader with elbows near its"
                            + " head.");

    private static final double WYLY_EATON = 27.8;

    private VerticalLeader() {}

    /**
     * The flow at a filling.
     *
     * @param filling part of the bore that water fills, above 0 and at most 1/3
     */
    public static Flow capacity(Length bore, double filling) {
        if (!(filling > 0 && filling <= 1.0 / 3 + 1e-9)) {
            throw new IllegalArgumentException(
                    "a leader's filling must lie above 0 and at most at 1/3, was " + filling);
        }
        double gpm = WYLY_EATON * Math.pow(filling, 5.0 / 3) * Math.pow(bore.in(Unit.INCH), 8.0 / 3);
        return new Flow(gpm * Unit.GALLON_PER_MINUTE.toSi());
    }
}
