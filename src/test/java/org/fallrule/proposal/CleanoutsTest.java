package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.measure.Unit;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** By the baseline: an opening every 100 ft, and no more than 135 degrees of bends between two. */
class CleanoutsTest {
    private static final RuleBook BOOK =
            new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", Optional.empty(), SmallLots.TODAY);

    private static List<String> along(String kind, double... feet) {
        PlanInFeet plan = PlanInFeet.plan().with(Role.INLET, "IN", "POINT (0 0)", "kind = " + kind);
        SiteAnalysis analysis = SmallLots.analysis(plan, BOOK);
        Feature inlet = analysis.site().features(Role.INLET).get(0);
        List<Coordinate> axis = new ArrayList<>();
        for (int i = 0; i < feet.length; i += 2) {
            axis.add(new Coordinate(feet[i] * Unit.FOOT.toSi(), feet[i + 1] * Unit.FOOT.toSi()));
        }
        Stock stock = new Stock(BOOK.locality().laying());
        LineRules rules = new LineRules(analysis, BOOK.rules(), false);
        return Cleanouts.of(Drain.of(inlet, axis), rules, stock.pipe(stock.smallest())).stream()
                .map(place -> Math.round(place.x / Unit.FOOT.toSi()) + " " + Math.round(place.y / Unit.FOOT.toSi()))
                .toList();
    }

    @Test
    void aHundredFeetNeedNone() {
        assertThat(along("basin", 0, 0, 100, 0)).isEmpty();
    }

    @Test
    void aLongStraightLineHasOneEveryHundredFeet() {
        assertThat(along("basin", 0, 0, 250, 0)).containsExactly("100 0", "200 0");
    }

    @Test
    void threeBendsOf45DegreesNeedNoneAndTheFourthHasOne() {
        assertThat(along("basin", 0, 0, 10, 0, 20, 10, 20, 20, 10, 30)).isEmpty();
        assertThat(along("basin", 0, 0, 10, 0, 20, 10, 20, 20, 10, 30, 0, 30)).containsExactly("10 30");
    }

    @Test
    void aBendOfMoreThan45DegreesHasOneAtIt() {
        assertThat(along("downspout", 0, 0, 20, 0, 20, 20)).containsExactly("20 0");
    }
}
