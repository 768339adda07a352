package org.fallrule.report;

import java.util.Optional;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;

/**
 * A row of the table of crossings in words.
 *
 * @param pipe the pipe
 * @param station the station along it
 * @param utility what is crossed
 * @param size the utility's outside diameter
 * @param quality its quality level after ASCE 38-22
 * @param depth how deep its top lies or is expected
 * @param gap the clear height and which of the two is above
 * @param angle between the two in plan
 * @param outcome what the rules make of it; empty where none speaks of it
 * @param call who marks it
 */
public record CrossingWords(
        String pipe,
        String station,
        String utility,
        String size,
        String quality,
        String depth,
        String gap,
        String angle,
        Optional<Outcome> outcome,
        String call) {
    private static final String UNKNOWN = "not given";

    public static CrossingWords of(CrossedUtility crossed) {
        UtilityCrossing crossing = crossed.crossing();
        SheetUnits units = SheetUnits.of(crossed.plan());
        return new CrossingWords(
                crossing.run().id(),
                crossed.station(),
                crossing.utility().spoken(),
                crossing.size().map(units::size).orElse(UNKNOWN),
                crossing.utility().get(Attribute.QUALITY).orElse(UNKNOWN),
                depth(crossed),
                gap(crossed),
                Printed.of(crossing.angle(), Unit.DEGREE),
                crossed.outcome(),
                WhoToCall.of(crossing.utility()).words());
    }

    private static String depth(CrossedUtility crossed) {
        UtilityCrossing crossing = crossed.crossing();
        SheetUnits units = SheetUnits.of(crossed.plan());
        String expected = crossing.expected()
                .map(level -> "expected " + units.size(level.cover().from()) + " to "
                        + units.size(level.cover().to()))
                .orElse("");
        Optional<String> given = crossing.utility()
                .get(Attribute.TOP)
                .map(top -> "top at " + crossed.plan().printed(top, Unit.ELEVATION_FOOT))
                .or(() -> crossing.utility().get(Attribute.DEPTH).map(units::size));
        if (given.isPresent() && crossing.isTopRelied()) {
            return given.get();
        }
        String unsure = given.map(depth -> depth + ", not relied on").orElse(expected.isEmpty() ? UNKNOWN : "");
        return unsure.isEmpty() || expected.isEmpty() ? unsure + expected : unsure + ", " + expected;
    }

    /** {@code 15.4 in, drain above}; where the two overlap the drain is neither above nor below. */
    private static String gap(CrossedUtility crossed) {
        return crossed.gap()
                .map(gap -> crossed.gapShown().orElseThrow() + ", "
                        + side(gap.clear().metres() < 0, gap.isDrainOver()))
                .orElse("not known");
    }

    private static String side(boolean overlap, boolean isDrainOver) {
        return overlap ? "the two overlap" : isDrainOver ? "drain above" : "drain below";
    }

    /** How the rules stand to it, in words. */
    public String stands() {
        return outcome.map(Outcome::spoken).orElse("no rule");
    }
}
