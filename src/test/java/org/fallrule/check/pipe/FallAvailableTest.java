package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class FallAvailableTest {
    private static final String ONE_PERCENT = """
            slope_at_least: 1 %
            cover_at_inlet: 12 in""";
    private static final String BY_DIAMETER = """
            slope_at_least: 2 % when diameter_in <= 2.5
            slope_at_least: 1 %
            cover_at_inlet: 12 in""";

    /** An inlet and an outfall 100 ft apart, one pipe between them with its inverts in feet. */
    private static PlanInFeet onePipe(String up, String down) {
        return plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 " + up + ", 100 0 " + down + ")");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new FallAvailable(), terms);
    }

    @Test
    void lessFallThanTheLeastSlopeNeedsFails() {
        assertThat(check(onePipe("100", "99.2"), ONE_PERCENT)).containsExactly("fails I-1 to OF-1: 0.80 ft");
    }

    @Test
    void exactlyTheFallThatTheLeastSlopeNeedsMeets() {
        assertThat(check(onePipe("100", "99"), ONE_PERCENT)).containsExactly("meets I-1 to OF-1: 1.00 ft");
    }

    @Test
    void moreFallThanTheLeastSlopeNeedsMeets() {
        assertThat(check(onePipe("100", "97.5"), ONE_PERCENT)).containsExactly("meets I-1 to OF-1: 2.50 ft");
    }

    @Test
    void anOutfallAboveItsInletFails() {
        assertThat(check(onePipe("100", "101"), ONE_PERCENT)).containsExactly("fails I-1 to OF-1: -1.00 ft");
    }

    /** 100 ft at 2 % and 50 ft at 1 % need 2.5 ft. */
    @Test
    void alongSeveralPipesEachNeedsItsOwnSlope() {
        PlanInFeet start = plan().with(INLET, "I-1", "POINT (0 0)").with(OUTFALL, "OF-1", "POINT (150 0)");
        PlanInFeet first = start.with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "diameter = 2 in", "invert_up = 100 ft");
        String second = "LINESTRING (100 0, 150 0)";

        assertThat(check(first.with(PIPE, "P-2", second, "diameter = 4 in", "invert_down = 97.5 ft"), BY_DIAMETER))
                .containsExactly("meets I-1 to OF-1: 2.50 ft");
        assertThat(check(first.with(PIPE, "P-2", second, "diameter = 4 in", "invert_down = 97.6 ft"), BY_DIAMETER))
                .containsExactly("fails I-1 to OF-1: 2.40 ft");
        assertThat(check(first.with(PIPE, "P-2", second, "invert_down = 97.5 ft"), BY_DIAMETER))
                .containsExactly("cannot_tell I-1; lacks diameter of pipe P-2, on which the limit depends");
    }

    @Test
    void eachInletOfABranchHasItsOwnWay() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(INLET, "I-2", "POINT (60 30)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 101, 60 0 99)")
                .with(PIPE, "P-2", "LINESTRING Z (60 30 98.9, 60 0 98.8)")
                .with(PIPE, "P-3", "LINESTRING Z (60 0 98.8, 100 0 98.3)");

        assertThat(check(plan, ONE_PERCENT))
                .containsExactly("meets I-1 to OF-1: 2.70 ft", "fails I-2 to OF-1: 0.60 ft");
    }

    @Test
    void anInletThatNoPipeLeavesHasNoWayToAnOutfall() {
        PlanInFeet plan = onePipe("100", "98").with(INLET, "I-2", "POINT (0 5)");

        assertThat(check(plan, ONE_PERCENT))
                .containsExactly(
                        "meets I-1 to OF-1: 2.00 ft", "cannot_tell I-2; lacks a way from inlet I-2 to an outfall");
    }

    @Test
    void aGapBetweenTwoPipesIsNoWayToAnOutfall() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 100, 48 0 99)")
                .with(PIPE, "P-2", "LINESTRING Z (52 0 99, 100 0 98)");

        assertThat(check(plan, ONE_PERCENT))
                .containsExactly("cannot_tell I-1; lacks a way from inlet I-1 to an outfall");
    }

    /** Rim 103, less 12 in of cover and a pipe of 6 in, leaves 101.5; the outfall stands at 99. */
    @Test
    void withoutAnInvertTheInletsRimLessCoverAndPipeCounts() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)", "rim = 103 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)", "invert = 99 ft");

        assertThat(check(plan.with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "outside_diameter = 6 in"), ONE_PERCENT))
                .containsExactly(
                        "meets I-1 to OF-1: 2.50 ft; no invert is given at the inlet: its level is taken as the"
                                + " rim less the cover to allow and the pipe");
        assertThat(check(plan.with(PIPE, "P-1", "LINESTRING (0 0, 100 0)"), ONE_PERCENT))
                .containsExactly("cannot_tell I-1; lacks a level at inlet I-1");
    }

    @Test
    void theInvertOfTheLeavingPipeComesBeforeTheRim() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)", "rim = 103 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 100, 100 0 99)", "outside_diameter = 6 in");

        assertThat(check(plan, ONE_PERCENT)).containsExactly("meets I-1 to OF-1: 1.00 ft");
    }

    @Test
    void withoutAnInvertAtTheOutfallTheGroundThereCounts() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "invert_up = 100 ft");

        assertThat(check(plan.spots("90 -10 98, 110 -10 98, 100 20 98"), ONE_PERCENT))
                .containsExactly(
                        "meets I-1 to OF-1: 2.00 ft; no invert is given at the outfall: its level is taken as the"
                                + " ground's");
        assertThat(check(plan.spots("0 -10 98, 10 -10 98, 0 20 98"), ONE_PERCENT))
                .containsExactly("cannot_tell I-1; lacks a level at the outfall of pipe P-1");
        assertThat(check(plan, ONE_PERCENT))
                .containsExactly("cannot_tell I-1; lacks a level at the outfall of pipe P-1");
    }

    @Test
    void theGroundAtTheOutfallIsAsAccurateAsTheSurvey() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "invert_up = 99.03 ft")
                .spots("90 -10 98, 110 -10 98, 100 20 98")
                .surveyedTo(0, 0.05);

        assertThat(check(plan, ONE_PERCENT))
                .containsExactly(
                        "borderline I-1 to OF-1: 1.03 ft; no invert is given at the outfall: its level is taken as the"
                                + " ground's");
    }

    @Test
    void withNoLevelAtAllBothAreNamed() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)");

        assertThat(check(plan, ONE_PERCENT))
                .containsExactly(
                        "cannot_tell I-1; lacks a level at inlet I-1; lacks a level at the outfall of pipe P-1");
    }

    @Test
    void withoutInletsNothingIsObserved() {
        assertThat(check(plan().empty(INLET).with(PIPE, "P-1", "LINESTRING (0 0, 9 0)"), ONE_PERCENT))
                .isEmpty();
    }
}
