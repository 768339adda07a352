package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.junit.jupiter.api.Test;

class PipeSlopeTest {
    private static final String NEVER_UPHILL = "at_least: 0 %";

    /** International Plumbing Code, table 704.1; the figures from memory. */
    private static final String IPC_TABLE_704_1 = """
            at_least: 1/4 in/ft when diameter_in <= 2.5
            at_least: 1/8 in/ft when diameter_in < 8
            at_least: 1/16 in/ft""";

    /** A pipe of 96 ft toward an outfall at its end, with its inverts in feet. */
    private static PlanInFeet pipe(String up, String down, String... more) {
        return plan().with(OUTFALL, "OF-1", "POINT (96 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 " + up + ", 96 0 " + down + ")", more);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new PipeSlope(), terms);
    }

    @Test
    void aPipeThatRunsUphillFails() {
        assertThat(check(pipe("100", "100.96"), NEVER_UPHILL)).containsExactly("fails P-1: -1.00 %");
    }

    @Test
    void aLevelPipeDoesNotRunUphill() {
        assertThat(check(pipe("100", "100"), NEVER_UPHILL)).containsExactly("meets P-1: 0.00 %");
    }

    @Test
    void aPipeThatFallsDoesNotRunUphill() {
        assertThat(check(pipe("100", "99.04"), NEVER_UPHILL)).containsExactly("meets P-1: 1.00 %");
    }

    @Test
    void upToTwoAndAHalfInchesAQuarterInchToTheFootIsAsked() {
        assertThat(check(pipe("100", "98.0", "diameter = 2.5 in"), IPC_TABLE_704_1))
                .containsExactly("meets P-1: 2.083 %");
        assertThat(check(pipe("100", "98.1", "diameter = 2.5 in"), IPC_TABLE_704_1))
                .containsExactly("fails P-1: 1.98 %");
        assertThat(check(pipe("100", "98.1", "diameter = 63.5 mm"), IPC_TABLE_704_1))
                .containsExactly("fails P-1: 1.98 %");
    }

    @Test
    void fromThreeToSixInchesAnEighthOfAnInchToTheFootIsAsked() {
        assertThat(check(pipe("100", "99.1", "diameter = 3 in"), IPC_TABLE_704_1))
                .containsExactly("fails P-1: 0.94 %");
        assertThat(check(pipe("100", "99", "diameter = 3 in"), IPC_TABLE_704_1)).containsExactly("meets P-1: 1.042 %");
        assertThat(check(pipe("100", "99", "diameter = 6 in"), IPC_TABLE_704_1)).containsExactly("meets P-1: 1.042 %");
    }

    @Test
    void fromEightInchesASixteenthOfAnInchToTheFootIsAsked() {
        assertThat(check(pipe("100", "99.5", "diameter = 8 in"), IPC_TABLE_704_1))
                .containsExactly("meets P-1: 0.521 %");
        assertThat(check(pipe("100", "99.6", "diameter = 8 in"), IPC_TABLE_704_1))
                .containsExactly("fails P-1: 0.42 %");
        assertThat(check(pipe("100", "99.6", "diameter = 203.2 mm"), IPC_TABLE_704_1))
                .containsExactly("fails P-1: 0.42 %");
    }

    @Test
    void aSlopeExactlyAtEachLimitMeetsIt() {
        assertThat(check(pipe("100", "98", "diameter = 2 in"), IPC_TABLE_704_1)).containsExactly("meets P-1: 2.083 %");
        assertThat(check(pipe("100", "99", "diameter = 4 in"), IPC_TABLE_704_1)).containsExactly("meets P-1: 1.042 %");
        assertThat(check(pipe("100", "99.5", "diameter = 10 in"), IPC_TABLE_704_1))
                .containsExactly("meets P-1: 0.521 %");
    }

    @Test
    void withoutADiameterTheLimitIsNotKnown() {
        assertThat(check(pipe("100", "99"), IPC_TABLE_704_1))
                .containsExactly("cannot_tell P-1; lacks diameter of pipe P-1, on which the limit depends");
    }

    @Test
    void withoutInvertsTheMissingOnesAreNamed() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (96 0)");
        String axis = "LINESTRING (0 0, 96 0)";

        assertThat(check(plan.with(PIPE, "P-1", axis, "invert_down = 99 ft"), NEVER_UPHILL))
                .containsExactly("cannot_tell P-1; lacks the upstream invert of pipe P-1");
        assertThat(check(plan.with(PIPE, "P-1", axis, "invert_up = 99 ft"), NEVER_UPHILL))
                .containsExactly("cannot_tell P-1; lacks the downstream invert of pipe P-1");
        assertThat(check(plan.with(PIPE, "P-1", axis), NEVER_UPHILL))
                .containsExactly(
                        "cannot_tell P-1; lacks the upstream invert of pipe P-1; lacks the downstream invert of pipe P-1");
    }

    @Test
    void aDepthBelowGroundThatIsNotKnownLacksTheGround() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (96 0)", "invert = 98 ft")
                .with(PIPE, "P-1", "LINESTRING (0 0, 96 0)", "depth_up = 18 in");

        assertThat(check(plan, NEVER_UPHILL))
                .containsExactly(
                        "cannot_tell P-1; lacks the ground at the upstream end of pipe P-1, which its depth up is"
                                + " measured from");
    }

    @Test
    void missingInvertsAreToldOnceUnderTwoLimits() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 96 0)", "invert_up = 99 ft");

        assertThat(check(plan, "at_least: 0 %\nat_most: 20 %"))
                .containsExactly("cannot_tell P-1; lacks the downstream invert of pipe P-1");
    }

    @Test
    void aPipeWithoutLengthInPlanHasNoSlope() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 0 0)", "invert_up = 99 ft", "invert_down = 98 ft");

        assertThat(check(plan, NEVER_UPHILL)).containsExactly("cannot_tell P-1; lacks a length in plan of pipe P-1");
    }

    @Test
    void theInvertsOfAnInletAndAnOutfallCountForTheEndsOfThePipe() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)", "invert = 100 ft")
                .with(OUTFALL, "OF-1", "POINT (96 0)", "invert = 99.04 ft")
                .with(PIPE, "P-1", "LINESTRING (0 0, 96 0)");

        assertThat(check(plan, NEVER_UPHILL)).containsExactly("meets P-1: 1.00 %");
    }

    @Test
    void statedInvertsComeBeforeTheHeightsOfVertices() {
        assertThat(check(pipe("100", "99.04", "invert_down = 98.08 ft"), NEVER_UPHILL))
                .containsExactly("meets P-1: 2.00 %");
    }

    @Test
    void aPipeDrawnFromItsOutfallFallsAllTheSame() {
        PlanInFeet plan =
                plan().with(OUTFALL, "OF-1", "POINT (96 0)").with(PIPE, "P-1", "LINESTRING Z (96 0 99.04, 0 0 100)");

        assertThat(check(plan, NEVER_UPHILL)).containsExactly("meets P-1: 1.00 %");
    }

    @Test
    void slopeIsFallOverTheLengthAlongTheBends() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (30 40)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 30 0, 30 40)", "invert_up = 100 ft", "invert_down = 98.6 ft");

        assertThat(check(plan, "at_least: 2 %")).containsExactly("meets P-1: 2.00 %");
    }

    @Test
    void aPipeSteeperThanTheGreatestSlopeFails() {
        assertThat(check(pipe("100", "80.8"), "at_most: 20 %")).containsExactly("meets P-1: 20.00 %");
        assertThat(check(pipe("100", "80.7"), "at_most: 20 %")).containsExactly("fails P-1: 20.10 %");
        assertThat(check(pipe("100", "81"), "at_most: 20 %")).containsExactly("meets P-1: 19.79 %");
    }

    @Test
    void theHeightsOfADesignedPipeAreExactAndThoseOfABuiltOneAreNot() {
        assertThat(check(pipe("100", "99.02").surveyedTo(0, 0.05), "at_least: 1 %"))
                .containsExactly("meets P-1: 1.02 %");
        assertThat(check(pipe("100", "99.02", "status = as_built").surveyedTo(0, 0.05), "at_least: 1 %"))
                .containsExactly("borderline P-1: 1.02 %");
        assertThat(check(pipe("100", "98.9", "status = as_built").surveyedTo(0, 0.05), "at_least: 1 %"))
                .containsExactly("meets P-1: 1.15 %");
    }

    @Property
    void aPipeLaidExactlyAtItsLeastSlopeMeetsItAtEveryLength(@ForAll @IntRange(min = 1, max = 500) int feet) {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (" + feet + " 0)")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 0, " + feet + " 0)",
                        "diameter = 4 in",
                        "invert_up = 700 ft",
                        "invert_down = " + (700 - feet / 96.0) + " ft");

        assertThat(plan.observe(new PipeSlope(), IPC_TABLE_704_1)).allMatch(seen -> seen.outcome() == Outcome.MEETS);
    }
}
