package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import org.fallrule.check.Baseline;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.junit.jupiter.api.Test;

/** Crossings whose depth is known and not, over and under. Figures of bands and quality levels are the baseline's. */
class SeparationOfCrossingsTest {
    private static final String ACROSS_12_IN = """
            from: utility
            across_at_least: 12 in
            near_crossing: 5 ft
            size_if_unknown: 4 in""";

    private static final String ENCASED = """
            from: utility
            across_at_least: 6 in when encased = true
            across_at_least: 12 in
            near_crossing: 5 ft
            size_if_unknown: 4 in""";

    /** A level yard at 100 ft; a pipe of 6 in outside at a level, south to north through a line of 6 in. */
    private static PlanInFeet pipeAt(double invert, String... ofUtility) {
        String[] more = java.util.Arrays.copyOf(ofUtility, ofUtility.length + 1);
        more[ofUtility.length] = "outside_diameter = 6 in";
        return plan().in(Baseline.locality())
                .absent(DRIVE)
                .absent(WALK)
                .spots("-90 -90 100, 190 -90 100, 0 190 100")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING Z (30 -20 " + invert + ", 30 20 " + invert + ")",
                        "outside_diameter = 6 in")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", more);
    }

    private static Observation only(PlanInFeet plan, String terms) {
        List<Observation> seen = plan.observe(new Separation(), terms);
        assertThat(seen).hasSize(1);
        return seen.get(0);
    }

    private static String line(PlanInFeet plan, String terms) {
        return PlanInFeet.line(only(plan, terms));
    }

    @Test
    void paintOnTheGrassSettlesNothingHoweverDeepItIsSaidToLie() {
        assertThat(line(pipeAt(98, "kind = gas", "depth = 60 in", "quality = D"), ACROSS_12_IN))
                .startsWith("cannot_tell P-1 to U-1; lacks depth of gas U-1 at quality A;"
                        + " by the depth on the plan, which is not to be relied on, 36.0 in between them;"
                        + " gas U-1 is expected, not known, 12.0 in to 36.0 in deep (49 CFR 192 327(b) and 361(a);"
                        + " rules/baseline.yaml:")
                .endsWith("crossing at station 0+20.0");
    }

    @Test
    void aTestHoleAtThatStationSettlesIt() {
        assertThat(only(pipeAt(98, "kind = gas", "quality = D"), ACROSS_12_IN).missing())
                .extracting(Missing::settledBy)
                .containsExactly("dig a test hole at station 0+20.0 of pipe P-1 (ASCE 38-22 quality level A)");
        assertThat(line(pipeAt(98, "kind = gas", "depth = 36 in", "quality = A"), ACROSS_12_IN))
                .startsWith("borderline P-1 to U-1: 12.0 in");
        assertThat(line(pipeAt(98.2, "kind = gas", "depth = 36 in", "quality = A"), ACROSS_12_IN))
                .startsWith("meets P-1 to U-1: 14.4 in");
        assertThat(line(pipeAt(97.8, "kind = gas", "depth = 36 in", "quality = A"), ACROSS_12_IN))
                .startsWith("fails P-1 to U-1: 9.6 in");
    }

    @Test
    void whatIsExpectedOfItsKindSaysHowLikelyTheConflictIs() {
        // the gas line's top is expected from 97.0 to 99.0 ft
        assertThat(line(pipeAt(97.6, "kind = gas"), ACROSS_12_IN)).contains("): likely conflict;");
        assertThat(line(pipeAt(94.9, "kind = gas"), ACROSS_12_IN)).contains("): likely clear;");
        assertThat(line(pipeAt(99.5, "kind = gas"), ACROSS_12_IN)).contains("): open;");
    }

    @Test
    void aDepthByGeophysicsIsKnownToAFoot() {
        assertThat(line(pipeAt(98.9, "kind = gas", "depth = 36 in", "quality = B"), ACROSS_12_IN))
                .startsWith("borderline P-1 to U-1: 22.8 in; gas U-1: quality B, taken as known to 1 ft in height by"
                        + " common practice (rules/baseline.yaml:");
        assertThat(line(pipeAt(99.1, "kind = gas", "depth = 36 in", "quality = B"), ACROSS_12_IN))
                .startsWith("meets P-1 to U-1: 25.2 in; gas U-1: quality B, taken as known to 1 ft in height");
    }

    @Test
    void aColumnThatSaysHowWellADepthIsKnownIsBelieved() {
        assertThat(line(
                        pipeAt(98.2, "kind = gas", "depth = 36 in", "quality = D", "vertical_accuracy = 0.1 ft"),
                        ACROSS_12_IN))
                .isEqualTo("meets P-1 to U-1: 14.4 in; crossing at station 0+20.0");
    }

    @Test
    void aCasingAroundEitherOfTheTwoMayAskLess() {
        String[] ofUtility = {"kind = gas", "depth = 36 in", "vertical_accuracy = 0 ft"};

        assertThat(line(pipeAt(97.75, ofUtility), ENCASED)).startsWith("fails P-1 to U-1: 9.0 in");
        assertThat(line(
                        pipeAt(97.75, "kind = gas", "depth = 36 in", "vertical_accuracy = 0 ft", "encased = true"),
                        ENCASED))
                .startsWith("meets P-1 to U-1: 9.0 in");
        assertThat(PlanInFeet.line(plan().with(
                                PIPE,
                                "P-1",
                                "LINESTRING Z (0 -20 97.75, 0 20 97.75)",
                                "outside_diameter = 6 in",
                                "encased = true")
                        .with(UTILITY, "U-1", "LINESTRING (-9 0, 9 0)", "top = 97 ft", "outside_diameter = 6 in")
                        .observe(new Separation(), ENCASED)
                        .get(0)))
                .startsWith("meets P-1 to U-1: 9.0 in");
    }

    @Test
    void ruleThatWantsTheUtilityOnTopFailsADrainOverIt() {
        String terms = """
                from: utility
                utility_over_at_least: 1 ft
                near_crossing: 5 ft
                size_if_unknown: 4 in""";
        String[] exact = {"kind = water_main", "top = 97 ft", "vertical_accuracy = 0 ft"};

        // its bottom at 96.5: the drain's top half a foot above its invert
        assertThat(line(pipeAt(95, exact), terms)).isEqualTo("meets P-1 to U-1: 1.00 ft; crossing at station 0+20.0");
        assertThat(line(pipeAt(95.1, exact), terms)).isEqualTo("fails P-1 to U-1: 0.90 ft; crossing at station 0+20.0");
        assertThat(line(pipeAt(99, exact), terms)).isEqualTo("fails P-1 to U-1: -3.00 ft; crossing at station 0+20.0");
    }

    private static final String OVER_AND_UNDER = """
            from: utility
            over_at_least: 6 in
            under_at_least: 18 in
            near_crossing: 5 ft
            size_if_unknown: 4 in""";

    @Test
    void whereOverAndUnderAreAskedApartItSaysWhichOfTheTwoItIs() {
        String[] exact = {"kind = gas", "top = 97 ft", "vertical_accuracy = 0 ft"};

        assertThat(measured(pipeAt(97.6, exact), OVER_AND_UNDER)).isEqualTo("height over gas U-1 7.2 in");
        assertThat(measured(pipeAt(94.6, exact), OVER_AND_UNDER)).isEqualTo("height under gas U-1 16.8 in");
        assertThat(measured(pipeAt(97.6, exact), ACROSS_12_IN)).isEqualTo("height between them 7.2 in");
    }

    private static String measured(PlanInFeet plan, String terms) {
        Measured measured = only(plan, terms).measured().orElseThrow();
        return measured.of() + " " + Printed.of(measured.value(), Unit.INCH);
    }

    @Test
    void howLikelyAConflictIsHangsOnWhatIsAskedOverAndUnder() {
        // the gas line's top is expected from 97.0 to 99.0 ft, and it is half a foot thick
        String asksLittle = OVER_AND_UNDER.replace("18 in", "6 in");

        assertThat(line(pipeAt(95.2, "kind = gas"), asksLittle)).contains("): likely clear;");
        assertThat(line(pipeAt(95.2, "kind = gas"), OVER_AND_UNDER)).contains("): open;");
    }

    @Test
    void whereThePlanGivesADepthToRelyOnNothingIsExpected() {
        PlanInFeet withoutInverts = plan().in(Baseline.locality())
                .spots("-90 -90 100, 190 -90 100, 0 190 100")
                .with(PIPE, "P-1", "LINESTRING (30 -20, 30 20)", "outside_diameter = 6 in")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = gas", "depth = 36 in", "quality = A");

        assertThat(line(withoutInverts, ACROSS_12_IN))
                .startsWith("cannot_tell P-1 to U-1; lacks invert_up and invert_down of pipe P-1")
                .doesNotContain("expected");
    }
}
