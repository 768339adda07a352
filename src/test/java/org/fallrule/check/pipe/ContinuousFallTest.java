package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** That a drain must fall all the way is common practice without a published limit; depths are worked out by hand. */
class ContinuousFallTest {
    private static final String NO_BELLY = "belly_at_most: 0 in\nends_agree_within: 0.05 ft";
    private static final String NO_STEP_UP = "step_up_at_most: 0 in\nends_agree_within: 0.05 ft";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new ContinuousFall(), terms);
    }

    private static PlanInFeet surveyed(String points, String... attributes) {
        return plan().with(PIPE, "P-1", "LINESTRING Z (" + points + ")", attributes)
                .with(OUTFALL, "OF-1", "POINT (100 0)");
    }

    @Test
    void aPipeThatFallsFromPointToPointMeets() {
        assertThat(check(surveyed("0 0 10, 40 0 9.5, 100 0 9"), NO_BELLY)).containsExactly("meets P-1: -6.0 in");
    }

    @Test
    void aLevelPieceHoldsNoWaterAndMeets() {
        assertThat(check(surveyed("0 0 10, 40 0 9, 100 0 9"), NO_BELLY)).containsExactly("meets P-1: 0.0 in");
    }

    /** From 10 down to 9 and up again to 9.25: 3 in of water, which begins where the pipe comes down to 9.25. */
    @Test
    void aBellyFailsAndSaysWhereAndHowDeepTheWaterStands() {
        assertThat(check(surveyed("0 0 10, 40 0 9, 100 0 9.25"), NO_BELLY))
                .containsExactly("fails P-1: 3.0 in; deepest at station 0+40.0; from station 0+30.0 to 1+00.0");
    }

    @Test
    void aBellyExactlyAsDeepAsIsAllowedMeets() {
        assertThat(check(surveyed("0 0 10, 40 0 9, 100 0 9.25"), "belly_at_most: 3 in\nends_agree_within: 0.05 ft"))
                .containsExactly("meets P-1: 3.0 in; deepest at station 0+40.0; from station 0+30.0 to 1+00.0");
    }

    @Test
    void eachBellyIsTold() {
        assertThat(check(surveyed("0 0 10, 20 0 8, 40 0 9, 60 0 7, 80 0 7.5, 100 0 6"), NO_BELLY))
                .containsExactly(
                        "fails P-1: 12.0 in; deepest at station 0+20.0; from station 0+10.0 to 0+40.0",
                        "fails P-1: 6.0 in; deepest at station 0+60.0; from station 0+55.0 to 0+80.0");
    }

    @Test
    void aRidgeUnderWaterDoesNotPartABelly() {
        assertThat(check(surveyed("0 0 10, 20 0 7, 40 0 8, 60 0 7.5, 80 0 9, 100 0 6"), NO_BELLY))
                .containsExactly("fails P-1: 24.0 in; deepest at station 0+20.0; from station 0+06.7 to 0+80.0");
    }

    @Test
    void whereThePipeIsDrawnAgainstItsFlowStationsStillRunWithIt() {
        assertThat(check(surveyed("100 0 9.25, 40 0 9, 0 0 10"), NO_BELLY))
                .containsExactly("fails P-1: 3.0 in; deepest at station 0+40.0; from station 0+30.0 to 1+00.0");
    }

    @Test
    void aPipeKnownOnlyAtItsEndsHasNoBellyToBeSeen() {
        assertThat(check(surveyed("0 0 10, 100 0 9"), NO_BELLY)).isEmpty();
    }

    @Test
    void bendsWithoutHeightLeaveThePipeStraight() {
        PlanInFeet plan = plan().with(
                        PIPE, "P-1", "LINESTRING (0 0, 40 5, 100 0)", "invert_up = 10 ft", "invert_down = 9 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)");

        assertThat(check(plan, NO_BELLY)).isEmpty();
    }

    @Test
    void heightsExactlyAsFarFromTheInvertsAsAgreesAreTakenForThem() {
        String[] inverts = {"invert_up = 10 ft", "invert_down = 9 ft"};

        assertThat(check(surveyed("0 0 10.05, 40 0 9.5, 100 0 9.05", inverts), NO_BELLY))
                .containsExactly("meets P-1: -6.0 in");
        assertThat(check(surveyed("0 0 10.06, 40 0 9.5, 100 0 9.05", inverts), NO_BELLY))
                .singleElement()
                .asString()
                .startsWith("cannot_tell P-1");
    }

    @Test
    void heightsThatAreNotInvertsAreNotTakenForThem() {
        assertThat(check(surveyed("0 0 0, 40 0 0, 100 0 0", "invert_up = 10 ft", "invert_down = 9 ft"), NO_BELLY))
                .containsExactly("cannot_tell P-1; lacks inverts of pipe P-1 between its ends: Z at its ends is not the"
                        + " invert given there");
    }

    @Test
    void heightsThatAgreeWithTheInvertsGivenAreTaken() {
        assertThat(check(
                        surveyed("0 0 10.01, 40 0 9, 100 0 9.24", "invert_up = 10 ft", "invert_down = 9.25 ft"),
                        NO_BELLY))
                .containsExactly("fails P-1: 3.0 in; deepest at station 0+40.0; from station 0+30.0 to 1+00.0");
    }

    @Test
    void withoutAnInvertAtAnEndItCannotBeTold() {
        assertThat(check(surveyed("0 0 NaN, 40 0 9, 100 0 9"), NO_BELLY))
                .containsExactly("cannot_tell P-1; lacks the upstream invert of pipe P-1");
    }

    @Test
    void aPipeAsBuiltIsKnownOnlyAsWellAsItWasSurveyed() {
        PlanInFeet built = surveyed("0 0 10, 40 0 9, 100 0 9.02", "status = as_built");

        assertThat(check(built.surveyedTo(0.1, 0.05), NO_BELLY))
                .containsExactly("borderline P-1: 0.2 in; deepest at station 0+40.0; from station 0+39.2 to 1+00.0");
        assertThat(check(
                        surveyed("0 0 10, 40 0 9.5, 100 0 9", "status = as_built")
                                .surveyedTo(0.1, 0.05),
                        NO_BELLY))
                .containsExactly("meets P-1: -6.0 in");
    }

    private static PlanInFeet junction(String in, String out) {
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0)", "invert_up = 10 ft", "invert_down = " + in + " ft")
                .with(PIPE, "P-2", "LINESTRING (50 0, 100 0)", "invert_up = " + out + " ft", "invert_down = 8 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)");
    }

    @Test
    void aStepDownToTheNextPipeMeets() {
        assertThat(check(junction("9.5", "9.25"), NO_STEP_UP)).containsExactly("meets P-1 to P-2: -3.0 in");
    }

    @Test
    void invertsThatMatchMeet() {
        assertThat(check(junction("9.3", "9.3"), NO_STEP_UP)).containsExactly("meets P-1 to P-2: 0.0 in");
    }

    @Test
    void aStepUpAgainstTheFlowFails() {
        assertThat(check(junction("9.25", "9.5"), NO_STEP_UP)).containsExactly("fails P-1 to P-2: 3.0 in");
    }

    @Test
    void aStepUpExactlyAsHighAsIsAllowedMeets() {
        assertThat(check(junction("9.25", "9.5"), "step_up_at_most: 3 in\nends_agree_within: 0.05 ft"))
                .containsExactly("meets P-1 to P-2: 3.0 in");
    }

    @Test
    void withoutAnInvertAtTheJunctionItCannotBeTold() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0)", "invert_up = 10 ft")
                .with(PIPE, "P-2", "LINESTRING (50 0, 100 0)", "invert_down = 8 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)");

        assertThat(check(plan, NO_STEP_UP))
                .containsExactly("cannot_tell P-1 to P-2; lacks the downstream invert of pipe P-1; lacks the upstream"
                        + " invert of pipe P-2");
    }

    @Test
    void everyPipeThatComesInIsHeldAgainstTheOneThatGoesOut() {
        PlanInFeet plan = junction("9.5", "9.25")
                .with(PIPE, "P-3", "LINESTRING (50 30, 50 0)", "invert_up = 10 ft", "invert_down = 9 ft");

        assertThat(check(plan, NO_STEP_UP)).containsExactly("meets P-1 to P-2: -3.0 in", "fails P-3 to P-2: 3.0 in");
    }

    @Test
    void theLastPipeHasNothingToStepUpTo() {
        assertThat(check(surveyed("0 0 10, 100 0 9"), NO_STEP_UP)).isEmpty();
    }

    /** Water rises to the sill, so that a point lowered by so much has so much more water above it. */
    @Property(tries = 100)
    void theWaterIsAsDeepAsThePointLiesBelowTheSill(@ForAll @DoubleRange(min = 0.1, max = 8) double low) {
        double depth = plan().with(PIPE, "P-1", "LINESTRING Z (0 0 10, 40 0 " + (9 - low) + ", 70 0 9, 100 0 8.5)")
                        .with(OUTFALL, "OF-1", "POINT (100 0)")
                        .observe(new ContinuousFall(), NO_BELLY)
                        .get(0)
                        .measured()
                        .orElseThrow()
                        .value()
                        .si()
                / 0.3048;

        assertThat(depth).isCloseTo(low, within(1e-9));
    }
}
