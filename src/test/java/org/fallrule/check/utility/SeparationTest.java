package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/**
 * The values are those of Recommended Standards for Water Works, 2018 edition, 8.8.2 (10 ft beside, edge to edge) and 8.8.3
 * (18 in at a crossing, above or below); its text from memory. How far around a crossing the distance beside is not asked is
 * common practice without a published source.
 */
class SeparationTest {
    private static final String BESIDE_A_MAIN = """
            from: utility
            from_where: kind = 'water_main'
            beside_at_least: 10 ft
            near_crossing: 15 ft
            size_if_unknown: 12 in""";
    private static final String ACROSS_A_MAIN = """
            from: utility
            from_where: kind = 'water_main'
            across_at_least: 18 in
            near_crossing: 15 ft
            size_if_unknown: 12 in""";

    /** A water main of 12 in outside along the x axis, its top at 96 ft. */
    private static final PlanInFeet MAIN = plan().with(
                    UTILITY,
                    "U-1",
                    "LINESTRING (-100 0, 200 0)",
                    "kind = water_main",
                    "outside_diameter = 12 in",
                    "top = 96 ft");

    private static PlanInFeet mainAndPipe(String wkt, String... attributes) {
        String[] more = java.util.Arrays.copyOf(attributes, attributes.length + 1);
        more[attributes.length] = "outside_diameter = 6 in";
        return MAIN.with(PIPE, "P-1", wkt, more);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Separation(), terms);
    }

    @Test
    void besideAMainTheDistanceIsFromOutsideToOutside() {
        // 9.75 ft between centrelines less 0.5 ft and 0.25 ft
        assertThat(check(mainAndPipe("LINESTRING (0 9.75, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("fails P-1 to U-1: 9.00 ft; nearer than that over 5.94 ft, station 0+00.0 to 0+05.9");
    }

    @Test
    void exactlyTheDistanceBesideMeets() {
        assertThat(check(mainAndPipe("LINESTRING (0 10.75, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("meets P-1 to U-1: 10.00 ft");
    }

    @Test
    void moreThanTheDistanceBesideMeets() {
        assertThat(check(mainAndPipe("LINESTRING (0 12, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("meets P-1 to U-1: 11.25 ft");
    }

    @Test
    void aPipeThatOverlapsTheMainInPlanIsLessThanNoDistanceFromIt() {
        assertThat(check(mainAndPipe("LINESTRING (0 0.5, 60 0.5)"), BESIDE_A_MAIN))
                .containsExactly(
                        "fails P-1 to U-1: -0.25 ft; nearer than that over 60.00 ft, station 0+00.0 to 0+60.0");
    }

    @Test
    void aPipeThatLiesOnTheLineOfTheMainIsNotExcusedAsACrossing() {
        assertThat(check(mainAndPipe("LINESTRING (0 0, 20 0)"), BESIDE_A_MAIN))
                .containsExactly(
                        "fails P-1 to U-1: -0.75 ft; nearer than that over 20.00 ft, station 0+00.0 to 0+20.0");
    }

    @Test
    void whenAllPipesMeetOnlyTheNearestIsTold() {
        PlanInFeet plan = mainAndPipe("LINESTRING (0 20, 60 20)")
                .with(PIPE, "P-2", "LINESTRING (0 15, 60 15)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN)).containsExactly("meets P-2 to U-1: 14.25 ft");
    }

    @Test
    void everyPipeThatDoesNotMeetIsTold() {
        PlanInFeet plan = mainAndPipe("LINESTRING (0 5, 60 5)")
                .with(PIPE, "P-2", "LINESTRING (0 -5, 60 -5)", "diameter = 6 in")
                .with(PIPE, "P-3", "LINESTRING (0 50, 60 50)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly(
                        "fails P-1 to U-1: 4.25 ft; nearer than that over 60.00 ft, station 0+00.0 to 0+60.0",
                        "fails P-2 to U-1: 4.25 ft; nearer than that over 60.00 ft, station 0+00.0 to 0+60.0");
    }

    @Test
    void aPipeThatCrossesSquarelyIsNotHeldAgainstTheDistanceBeside() {
        // 15 ft from the crossing it lies 14.25 ft off
        assertThat(check(mainAndPipe("LINESTRING (0 -30, 0 30)"), BESIDE_A_MAIN))
                .containsExactly("meets P-1 to U-1: 14.25 ft");
    }

    @Test
    void aPipeThatEndsNearItsCrossingHasNothingBeside() {
        assertThat(check(mainAndPipe("LINESTRING (0 -10, 0 10)"), BESIDE_A_MAIN))
                .isEmpty();
    }

    @Test
    void aPipeThatCrossesAndThenLiesAlongsideIsCaught() {
        assertThat(check(mainAndPipe("LINESTRING (0 -20, 0 5, 60 5)"), BESIDE_A_MAIN))
                .containsExactly("fails P-1 to U-1: 4.25 ft; nearer than that over 45.86 ft, station 0+39.1 to 0+85.0");
    }

    @Test
    void theNextPipeOfTheLineIsExcusedNearTheCrossingToo() {
        PlanInFeet plan =
                mainAndPipe("LINESTRING (0 -30, 0 4)").with(PIPE, "P-2", "LINESTRING (0 4, 0 40)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN)).containsExactly("meets P-1 to U-1: 14.25 ft");
    }

    @Test
    void theNextPipeOfTheLineIsCaughtWhereItLiesAlongside() {
        PlanInFeet plan =
                mainAndPipe("LINESTRING (0 -30, 0 4)").with(PIPE, "P-2", "LINESTRING (0 4, 60 4)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly("fails P-2 to U-1: 3.25 ft; nearer than that over 45.54 ft, station 0+14.5 to 0+60.0");
    }

    @Test
    void aPipeOfAnotherLineIsNotExcusedByACrossing() {
        PlanInFeet plan =
                mainAndPipe("LINESTRING (0 -30, 0 30)").with(PIPE, "P-2", "LINESTRING (5 4, 9 4)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly("fails P-2 to U-1: 3.25 ft; nearer than that over 4.00 ft, station 0+00.0 to 0+04.0");
    }

    @Test
    void aMainOfUnknownSizeIsTakenWithTheSizeOfTheRule() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "kind = water_main")
                .with(PIPE, "P-1", "LINESTRING (0 10.75, 60 20)", "outside_diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly(
                        "meets P-1 to U-1: 10.00 ft; size of water main U-1 is not given and taken from the rule");
    }

    @Test
    void aPipeOfUnknownSizeMeetsWhereEvenTheWidestPipeOfThePlanWould() {
        PlanInFeet sized = MAIN.with(PIPE, "P-2", "LINESTRING (0 90, 60 90)", "outside_diameter = 6 in");

        assertThat(check(sized.with(PIPE, "P-1", "LINESTRING (0 10.75, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("meets P-1 to U-1: 10.00 ft; diameter of pipe P-1 is not given;"
                        + " counted as wide as the widest pipe of the plan, 6.0 in");
        assertThat(check(sized.with(PIPE, "P-1", "LINESTRING (0 10.74, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("cannot_tell P-1 to U-1: 10.24 ft; lacks diameter of pipe P-1");
    }

    @Test
    void aPipeOfUnknownSizeCanFailButNotMeet() {
        assertThat(check(MAIN.with(PIPE, "P-1", "LINESTRING (0 9, 60 20)"), BESIDE_A_MAIN))
                .containsExactly(
                        "fails P-1 to U-1: 8.50 ft; lacks diameter of pipe P-1; nearer than that over 8.32 ft, station 0+00.0 to 0+08.3");
        assertThat(check(MAIN.with(PIPE, "P-1", "LINESTRING (0 10.6, 60 20)"), BESIDE_A_MAIN))
                .containsExactly("cannot_tell P-1 to U-1: 10.10 ft; lacks diameter of pipe P-1");
    }

    @Test
    void aNearUtilityOfUnknownKindLeavesItOpen() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "outside_diameter = 12 in")
                .with(PIPE, "P-1", "LINESTRING (0 5.75, 60 20)", "outside_diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly(
                        "cannot_tell P-1 to U-1: 5.00 ft; lacks kind of utility U-1; nearer than that over 21.64 ft, station 0+00.0 to 0+21.6");
    }

    @Test
    void aFarUtilityOfUnknownKindDoesNotMatter() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "outside_diameter = 12 in")
                .with(PIPE, "P-1", "LINESTRING (0 12.75, 60 20)", "outside_diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN))
                .containsExactly(
                        "meets P-1 to U-1: 12.00 ft; kind of utility U-1 is not given, but it is far enough away");
    }

    @Test
    void withoutAUtilityOfTheKindNothingIsObserved() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "kind = gas", "top = 96 ft")
                .with(PIPE, "P-1", "LINESTRING (0 -9, 0 9)", "diameter = 6 in");

        assertThat(check(plan, BESIDE_A_MAIN)).isEmpty();
        assertThat(check(plan, ACROSS_A_MAIN)).isEmpty();
    }

    @Test
    void builtUtilitiesAreAsAccurateAsTheSurvey() {
        assertThat(check(mainAndPipe("LINESTRING (0 10.8, 60 20)").surveyedTo(0.1, 0), BESIDE_A_MAIN))
                .containsExactly(
                        "borderline P-1 to U-1: 10.05 ft; water main U-1 is known to 0.10 ft in plan by the survey");
    }

    @Test
    void whereThePipeCrossesAboveTheHeightIsFromItsBottomToTheTopOfTheMain() {
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 97.4, 0 20 97.4)"), ACROSS_A_MAIN))
                .containsExactly("fails P-1 to U-1: 16.8 in; crossing at station 0+20.0");
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 97.5, 0 20 97.5)"), ACROSS_A_MAIN))
                .containsExactly("meets P-1 to U-1: 18.0 in; crossing at station 0+20.0");
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 98, 0 20 98)"), ACROSS_A_MAIN))
                .containsExactly("meets P-1 to U-1: 24.0 in; crossing at station 0+20.0");
    }

    @Test
    void whereThePipeCrossesBelowTheHeightIsFromItsTopToTheBottomOfTheMain() {
        // the main's bottom lies at 95, the pipe's top half a foot above its invert
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 93, 0 20 93)"), ACROSS_A_MAIN))
                .containsExactly("meets P-1 to U-1: 18.0 in; crossing at station 0+20.0");
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 93.1, 0 20 93.1)"), ACROSS_A_MAIN))
                .containsExactly("fails P-1 to U-1: 16.8 in; crossing at station 0+20.0");
    }

    @Test
    void aPipeThatRunsThroughTheMainOverlapsIt() {
        assertThat(check(mainAndPipe("LINESTRING Z (0 -20 95.75, 0 20 95.75)"), ACROSS_A_MAIN))
                .containsExactly("fails P-1 to U-1: -3.0 in; crossing at station 0+20.0");
    }

    @Test
    void thePipeCrossesAtTheHeightThatItsFallLeavesItThere() {
        assertThat(check(mainAndPipe("LINESTRING Z (0 -30 98.5, 0 10 97.3)"), ACROSS_A_MAIN))
                .containsExactly("meets P-1 to U-1: 19.2 in; crossing at station 0+30.0");
    }

    @Test
    void eachOfTwoCrossingsIsTold() {
        assertThat(check(
                        mainAndPipe("LINESTRING Z (0 -20 99, 0 20 99, 40 20 99, 40 -20 97)", "invert_down = 97 ft"),
                        ACROSS_A_MAIN))
                .containsExactly(
                        "meets P-1 to U-1: 32.0 in; crossing at station 0+20.0",
                        "meets P-1 to U-1: 16.0 in; crossing at station 1+00.0".replace("meets", "fails"));
    }

    @Test
    void aPipeThatComesBackOverItsOwnWayCrossesTwice() {
        assertThat(check(
                        mainAndPipe("LINESTRING (0 -20, 0 20, 0 -10)", "invert_up = 99 ft", "invert_down = 98.3 ft"),
                        ACROSS_A_MAIN))
                .containsExactly(
                        "meets P-1 to U-1: 33.6 in; crossing at station 0+20.0",
                        "meets P-1 to U-1: 28.8 in; crossing at station 0+60.0");
    }

    @Test
    void withoutADepthTheHeightAtTheCrossingIsNotKnown() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-9 0, 9 0)", "kind = water_main")
                .with(PIPE, "P-1", "LINESTRING Z (0 -20 98, 0 20 98)", "diameter = 6 in");

        assertThat(check(plan, ACROSS_A_MAIN))
                .containsExactly("cannot_tell P-1 to U-1; lacks depth of water main U-1; crossing at station 0+20.0");
    }

    @Test
    void withADepthTheGroundAboveTheCrossingIsNeeded() {
        PlanInFeet plan = plan().with(
                        UTILITY,
                        "U-1",
                        "LINESTRING (-9 0, 9 0)",
                        "kind = water_main",
                        "depth = 36 in",
                        "diameter = 12 in")
                .with(PIPE, "P-1", "LINESTRING Z (0 -20 98, 0 20 98)", "outside_diameter = 6 in");

        assertThat(check(plan, ACROSS_A_MAIN))
                .containsExactly(
                        "cannot_tell P-1 to U-1; lacks ground above water main U-1; crossing at station 0+20.0");
        assertThat(check(plan.spots("-30 -30 99.4, 30 -30 99.4, 0 30 99.4"), ACROSS_A_MAIN))
                .containsExactly("meets P-1 to U-1: 19.2 in; crossing at station 0+20.0");
    }

    @Test
    void withoutItsInvertsThePipesHeightIsNotKnownAndWhatIsMissingIsNamed() {
        assertThat(check(mainAndPipe("LINESTRING (0 -20, 0 20)", "invert_up = 98 ft"), ACROSS_A_MAIN))
                .containsExactly("cannot_tell P-1 to U-1; lacks invert_down of pipe P-1; crossing at station 0+20.0");
        assertThat(check(MAIN.with(PIPE, "P-1", "LINESTRING (0 -20, 0 20)"), ACROSS_A_MAIN))
                .containsExactly(
                        "cannot_tell P-1 to U-1; lacks invert_up, invert_down and diameter of pipe P-1; crossing at station 0+20.0");
    }

    @Test
    void aUtilityOfUnknownKindThatIsCrossedCloselyLeavesItOpen() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-9 0, 9 0)", "diameter = 12 in", "top = 97 ft")
                .with(PIPE, "P-1", "LINESTRING Z (0 -20 98, 0 20 98)", "outside_diameter = 6 in");

        assertThat(check(plan, ACROSS_A_MAIN))
                .containsExactly(
                        "cannot_tell P-1 to U-1: 12.0 in; lacks kind of utility U-1; crossing at station 0+20.0");
    }

    @Test
    void aPipeThatDoesNotCrossHasNoHeightToMeasure() {
        assertThat(check(mainAndPipe("LINESTRING Z (0 2 98, 60 2 98)"), ACROSS_A_MAIN))
                .isEmpty();
    }
}
