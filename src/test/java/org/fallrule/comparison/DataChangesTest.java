package org.fallrule.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Place;
import org.fallrule.report.comparison.ChangeWords;
import org.fallrule.site.PlanInMetres;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Waiver;
import org.junit.jupiter.api.Test;

/** What two states say differently, as a reader is told. */
class DataChangesTest {
    private static List<String> changes(PlanInFeet before, PlanInFeet after) {
        return changes(before.site(), after.site());
    }

    private static List<String> changes(Site before, Site after) {
        FeaturePairs pairs = FeaturePairs.of(before, after);
        return DataChanges.of(before, after, pairs, false).stream()
                .map(change -> change.kind().word() + " " + ChangeWords.of(change))
                .toList();
    }

    @Test
    void theSamePlanTwiceHasNothingToTell() {
        PlanInFeet plan = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "diameter = 4 in");

        assertThat(changes(plan, plan)).isEmpty();
    }

    @Test
    void aMoveIsToldInFeetAndLessThanTheLastDigitOfASurveyIsNone() {
        PlanInFeet before = PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (0 0)");

        assertThat(changes(before, PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (3 4)")))
                .containsExactly("moved outfall OF-1: moved 5 ft in plan");
        assertThat(changes(before, PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (0.009 0)")))
                .isEmpty();
    }

    @Test
    void aPipeHasMovedAsFarAsItsFarthestVertex() {
        PlanInFeet before = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)");

        assertThat(changes(before, PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 20 2.5, 40 0)")))
                .containsExactly("moved pipe P-1: moved 2.50 ft in plan");
    }

    @Test
    void aSpotThatHasRisen() {
        PlanInFeet before = PlanInFeet.plan().spots("0 0 10");

        assertThat(changes(before, PlanInFeet.plan().spots("0 0 9.7")))
                .containsExactly("moved spot S-1: lowered 0.30 ft");
    }

    @Test
    void attributesFromAndTo() {
        PlanInFeet before =
                PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "diameter = 4 in", "material = abs");
        PlanInFeet after = PlanInFeet.plan()
                .with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "diameter = 6 in", "invert_up = 9 ft");

        assertThat(changes(before, after))
                .containsExactly(
                        "attribute pipe P-1, diameter: 4.0 in, now 6.0 in",
                        "attribute pipe P-1, material: abs, now not said",
                        "attribute pipe P-1, invert up: not said, now 9.00 ft");
    }

    @Test
    void theSameLengthInAnotherUnitIsNoChange() {
        PlanInFeet before = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "diameter = 4 in");
        PlanInFeet after = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "diameter = 101.6 mm");

        assertThat(changes(before, after)).isEmpty();
    }

    @Test
    void layersAndSurveyAndWhatIsAddedRemovedRenamed() {
        PlanInFeet before = PlanInFeet.plan()
                .with(Role.TREE, "T-1", "POINT (0 0)")
                .with(Role.TREE, "T-2", "POINT (50 0)")
                .absent(Role.WELL);
        PlanInFeet after = PlanInFeet.plan()
                .with(Role.TREE, "OAK", "POINT (0 0)")
                .with(Role.TREE, "T-3", "POINT (70 0)")
                .with(Role.WELL, "W-1", "POINT (9 9)")
                .surveyedTo(0.1, 0.05);

        assertThat(changes(before, after))
                .containsExactly(
                        "site the survey, horizontal accuracy: not said, now 0.10 ft",
                        "site the survey, vertical accuracy: not said, now 0.05 ft",
                        "layer the well layer: stated absent, now supplied",
                        "added tree T-3",
                        "added well W-1",
                        "removed tree T-2",
                        "renamed tree OAK: was T-1; it lies in the same place, so it is taken as the same");
    }

    @Test
    void manyChangesOfAKindAreToldInPart() {
        PlanInFeet before = PlanInFeet.plan();
        PlanInFeet after = PlanInFeet.plan();
        for (int i = 0; i < 20; i++) {
            after = after.with(Role.TREE, "T-" + i, "POINT (" + 10 * i + " 0)");
        }
        List<ChangeWords.Line> lines = ChangeWords.lines(
                DataChanges.of(before.site(), after.site(), FeaturePairs.of(before.site(), after.site()), false));

        assertThat(lines).hasSize(1 + 12 + 1);
        assertThat(lines.get(13).says()).isEqualTo("and 8 more of tree; comparison.json lists them");
    }

    @Test
    void aPipeThatIsGivenUpIsNotGone() {
        PlanInFeet before = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "status = existing");
        PlanInFeet after = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)", "status = abandoned");

        assertThat(changes(before, after)).containsExactly("attribute pipe P-1, status: existing, now abandoned");
    }

    @Test
    void aMetricPlanIsToldInMetres() {
        Site before = inMetres(PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (0 0)", "invert = 10 ft"), 0.1);
        Site after = inMetres(PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (3 4)", "invert = 11 ft"), 0.2);

        assertThat(changes(before, after))
                .containsExactly(
                        "site the survey, horizontal accuracy: 0.030 m, now 0.061 m",
                        "moved outfall OF-1: moved 1.524 m in plan",
                        "attribute outfall OF-1, invert: 3.048 m, now 3.353 m");
    }

    @Test
    void waiversAreToldByRuleAndFeatureWithTheirDays() {
        PlanInFeet plan = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)");
        Waiver first = waiver("pipe-cover", "P-1", "2026-01-02", Optional.empty());
        Waiver sameRule = waiver("pipe-cover", "P-2", "2026-01-02", Optional.empty());
        Waiver longer = waiver("pipe-cover", "P-1", "2026-03-04", Optional.of("2026-09-01"));

        assertThat(changes(plan.waived(first), plan.waived(first))).isEmpty();
        assertThat(changes(plan.waived(first), plan.waived(longer, sameRule)))
                .containsExactly(
                        "site the waivers, pipe-cover for P-1: by county engineer on 2026-01-02 (rock), now by county"
                                + " engineer on 2026-03-04 until 2026-09-01 (rock)",
                        "site the waivers, pipe-cover for P-2: not said, now by county engineer on 2026-01-02 (rock)");
        assertThat(changes(plan.waived(first), plan))
                .containsExactly(
                        "site the waivers, pipe-cover for P-1: by county engineer on 2026-01-02 (rock), now not said");
    }

    private static Waiver waiver(String rule, String feature, String date, Optional<String> until) {
        return new Waiver(
                rule,
                Optional.of(feature),
                "county engineer",
                LocalDate.parse(date),
                "rock",
                until.map(LocalDate::parse),
                Place.of("site.yaml").at(9, 5));
    }

    private static Site inMetres(PlanInFeet plan, double surveyedTo) {
        return PlanInMetres.of(plan.surveyedTo(surveyedTo, 0.1).site());
    }
}
