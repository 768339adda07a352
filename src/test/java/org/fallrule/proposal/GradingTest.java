package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.measure.Unit;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class GradingTest {
    private static final RuleBook BOOK = SmallLots.book(8);
    private static final double FOOT = Unit.FOOT.toSi();

    /** A line straight down a lot, from 52 ft to 8 ft behind its front. */
    private static Optional<Double> invertAtInlet(PlanInFeet plan) {
        SiteAnalysis analysis = SmallLots.analysis(plan, BOOK);
        LineRules rules = new LineRules(analysis, BOOK.rules(), false);
        Feature inlet = analysis.site().features(Role.INLET).get(0);
        Drain drain =
                Drain.of(inlet, List.of(new Coordinate(24 * FOOT, 52 * FOOT), new Coordinate(24 * FOOT, 8 * FOOT)));
        Stock stock = new Stock(BOOK.locality().laying());
        return new Grading(analysis, rules, rules, stock, new Ground(analysis))
                .of(drain, Map.of())
                .map(grades -> grades.level(0).level() / FOOT);
    }

    // the ground rises from 21.12 at the outfall by 0.14 ft a foot; 10 ft before it cover of 6 in is asked and 4.1075
    // in of pipe
    // lie under it, 21.12 + 1.4 - 0.8423; an even grade through that point is 0.05577, over 44 ft 2.454; it may end in
    // the
    // hundredth below
    @Test
    void theLineIsAsHighAsCoverBeforeTheLastRunLetsIt() {
        double outfall = groundAtOutfall();

        assertThat(outfall).isCloseTo(21.12, within(0.001));
        assertThat(invertAtInlet(SmallLots.falling(14)).orElseThrow()).isCloseTo(21.12 + 2.454, within(0.08));
    }

    private static double groundAtOutfall() {
        return SmallLots.analysis(SmallLots.falling(14), BOOK)
                        .ground()
                        .orElseThrow()
                        .elevationAt(new Coordinate(24 * FOOT, 8 * FOOT))
                        .orElseThrow()
                        .metres()
                / FOOT;
    }

    @Test
    void onGroundTooFlatThereIsNoGrade() {
        assertThat(invertAtInlet(SmallLots.falling(2))).isEmpty();
    }

    // a main 28 ft behind the front, its top 1 ft deep at 22.92 there: too shallow to pass over by 12 in, so the line
    // goes under:
    // top of pipe 12 in below its bottom (1 in thick), invert 22.92 - 0.0833 - 1 - 0.3423 = 21.495
    @Test
    void whereItDoesNotComeOverAUtilityItIsLaidUnderIt() {
        PlanInFeet plan = SmallLots.falling(14)
                .with(
                        Role.UTILITY,
                        "G",
                        "LINESTRING (-20 28, 80 28)",
                        "kind = gas",
                        "depth = 12 in",
                        "diameter = 1 in",
                        "quality = A");

        double atInlet = invertAtInlet(plan).orElseThrow();
        double atMain = 21.12 + (atInlet - 21.12) * 20 / 44;

        assertThat(atMain).isLessThanOrEqualTo(22.92 - 1.0 / 12 - 1 - 4.1075 / 12 + 0.005);
        assertThat(atMain).isGreaterThan(22.92 - 1.0 / 12 - 1 - 4.1075 / 12 - 0.1);
    }
}
