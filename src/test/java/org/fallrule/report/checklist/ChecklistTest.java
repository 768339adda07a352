package org.fallrule.report.checklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Condition;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Place;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.review.Review;
import org.fallrule.rulebook.ChecklistItem;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.rulebook.ShownBy;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Items of a checklist held against plans. */
class ChecklistTest {
    private static final ShownBy BY_HAND = new ShownBy.ByHand();

    private static ShownBy role(Role role, Attribute<?>... known) {
        return new ShownBy.Features(role, Condition.ALWAYS, List.of(known));
    }

    private static String held(PlanInFeet plan, ShownBy shownBy) {
        Place place = Place.of("rules/baseline.yaml").at(3, 5);
        ChecklistItem item = new ChecklistItem("x", "something", ChecklistItem.Asked.USUALLY, shownBy, place);
        RuleBook book = new RuleBook(List.of(), plan.analysis().locality(), List.of(), List.of(), List.of(item));
        Report report = new Report(SiteAnalysis.of(plan.site()), "none", book, new Review(List.of(), List.of()));
        ChecklistEntry entry = Checklist.of(report).get(0);
        return entry.standing().word() + ": " + entry.says()
                + (entry.settledBy().isEmpty() ? "" : " -> " + entry.settledBy());
    }

    @Test
    void aLayerShowsWhatItHolds() {
        assertThat(held(plan().with(Role.TREE, "T-1", "POINT (0 0)"), role(Role.TREE)))
                .isEqualTo("shown: 1 in the layer tree");
    }

    @Test
    void silenceIsMissingAndNeverAPass() {
        assertThat(held(plan(), role(Role.TREE)))
                .isEqualTo("missing: the plan has no tree layer -> supply the layer tree, or state it absent");
        assertThat(held(plan().empty(Role.TREE), role(Role.TREE))).startsWith("missing: the layer tree has nothing");
    }

    @Test
    void whatIsStatedAbsentIsSaidToBeSo() {
        assertThat(held(plan().absent(Role.SEPTIC), role(Role.SEPTIC)))
                .isEqualTo("stated_absent: the plan states that there is no septic");
    }

    @Test
    void eachFeatureMustSayWhatIsAskedOfIt() {
        PlanInFeet plan =
                plan().with(Role.INLET, "CB-1", "POINT (0 0)", "rim = 9 ft").with(Role.INLET, "CB-2", "POINT (5 0)");

        assertThat(held(plan, role(Role.INLET, Attribute.RIM)))
                .isEqualTo("missing: rim is not given for inlet CB-2 -> give rim in the layer inlet");
    }

    @Test
    void aConditionChoosesWhatCounts() {
        Place place = Place.of("a.yaml");
        ShownBy own = new ShownBy.Features(Role.LOT, Condition.parse("own = true", place), List.of());
        String square = "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0))";

        assertThat(held(plan().with(Role.LOT, "L", square, "own = true"), own)).startsWith("shown: ");
        assertThat(held(plan().with(Role.LOT, "L", square), own))
                .isEqualTo("missing: the layer lot has nothing with own = true"
                        + " -> put it into the layer lot with own = true");
    }

    @Test
    void ofSeveralEachCountsAndWhatIsMissingComesFirst() {
        PlanInFeet plan = plan().absent(Role.SEPTIC);

        assertThat(held(plan, new ShownBy.AllOf(List.of(role(Role.SEPTIC), role(Role.WELL)))))
                .startsWith("missing: the plan has no well layer");
        assertThat(held(plan.absent(Role.WELL), new ShownBy.AllOf(List.of(role(Role.SEPTIC), role(Role.WELL)))))
                .startsWith("stated_absent: ");
        assertThat(held(plan, new ShownBy.AllOf(List.of(role(Role.SEPTIC), BY_HAND))))
                .startsWith("to_be_shown_by_hand: ");
    }

    @Test
    void ofSeveralOneIsEnoughWhereTheBookSaysSo() {
        ShownBy either = new ShownBy.AnyOf(List.of(role(Role.CONTOUR), role(Role.SPOT)));

        assertThat(held(plan().spots("0 0 1, 9 0 1, 0 9 1"), either)).startsWith("shown: ");
        assertThat(held(plan(), either)).startsWith("missing: ").contains(", or supply the layer spot");
    }

    @Test
    void aFactOfTheSiteIsShownWhenItIsGiven() {
        assertThat(held(plan(), new ShownBy.Stated(ShownBy.SiteFact.DATUM)))
                .isEqualTo("missing: datum is not given -> give datum in site.yaml");
        assertThat(held(plan(), new ShownBy.Stated(ShownBy.SiteFact.NAME))).isEqualTo("shown: site: Plan (invented)");
    }

    @Test
    void theShippedBooksAskForFortyTwoThings() {
        RuleBook book = new RuleLibrary(Path.of("rules"), "rules").load("larkmoor", Optional.empty());

        assertThat(book.checklist()).hasSize(42);
        assertThat(Checklist.summary(Checklist.of(Reports.of("thistledown-3"))))
                .matches("\\d+ shown, \\d+ stated absent, [1-9]\\d* missing, \\d+ to be shown by hand");
    }
}
