package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** IPC 1101.3 and UPC 1101.3: no storm water into a sewer meant for sewage alone. */
class NotJoinedTest {
    private static final String TERMS = """
            from: utility
            from_where: kind = 'sanitary'
            within: 3 in
            size_if_unknown: 24 in""";

    private static final String SIX_INCHES = "outside_diameter = 6 in";

    /** A lateral of 6 in outside along the x axis from 0 to 60 ft. */
    private static final PlanInFeet LATERAL =
            plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = sanitary", SIX_INCHES);

    private static List<String> check(PlanInFeet plan) {
        return plan.check(new NotJoined(), TERMS);
    }

    @Test
    void aPipeThatEndsOnTheSewerIsJoinedToIt() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 0)")))
                .containsExactly("fails P-1 to U-1; it is joined to sanitary U-1 in plan");
    }

    @Test
    void aPipeThatEndsAtTheSewersOutsideIsJoinedToo() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 0.25)")))
                .containsExactly("fails P-1 to U-1; it is joined to sanitary U-1 in plan");
    }

    @Test
    void exactlyTheReachCountsAsJoinedAndABitMoreDoesNot() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 0.5)"))
                        .get(0))
                .startsWith("fails");
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 0.51)", SIX_INCHES)))
                .containsExactly("meets U-1; no part of the drain is joined to it");
    }

    @Test
    void aPipeThatCrossesInPassingIsNotJoined() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 -40)", SIX_INCHES)))
                .containsExactly("meets U-1; no part of the drain is joined to it");
    }

    @Test
    void aSewerThatEndsOnThePipeIsJoined() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (60 40, 60 -40)")))
                .containsExactly("fails P-1 to U-1; it is joined to sanitary U-1 in plan");
    }

    @Test
    void anInletOrOutfallOnTheSewerIsJoined() {
        PlanInFeet plan = LATERAL.with(PIPE, "P-1", "LINESTRING (30 40, 30 20)")
                .with(INLET, "IN-1", "POINT (10 0.1)")
                .with(OUTFALL, "OF-1", "POINT (20 0)");

        assertThat(check(plan))
                .containsExactly(
                        "fails IN-1 to U-1; it is joined to sanitary U-1 in plan",
                        "fails OF-1 to U-1; it is joined to sanitary U-1 in plan");
    }

    @Test
    void aUtilityOfAnotherKindMayBeJoined() {
        assertThat(check(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = storm")
                        .with(PIPE, "P-1", "LINESTRING (30 40, 30 0)")))
                .isEmpty();
    }

    @Test
    void aUtilityOfUnknownKindLeavesItOpen() {
        assertThat(check(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)")
                        .with(PIPE, "P-1", "LINESTRING (30 40, 30 0)")))
                .containsExactly(
                        "cannot_tell P-1 to U-1; lacks kind of utility U-1; it is joined to utility U-1 in plan;"
                                + " size of utility U-1 is not given and taken from the rule");
    }

    @Test
    void aSewerThatClosesOnItselfHasNoEnds() {
        assertThat(check(
                        plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0, 30 30, 0 0)", "kind = sanitary", SIX_INCHES)
                                .with(PIPE, "P-1", "LINESTRING (100 40, 100 -40)", SIX_INCHES)))
                .containsExactly("meets U-1; no part of the drain is joined to it");
    }

    @Test
    void theSizeOfTheRuleCountsForASewerWithoutOneAndIsSaid() {
        PlanInFeet sewer = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = sanitary");

        assertThat(check(sewer.with(PIPE, "P-1", "LINESTRING (30 40, 30 1.25)")))
                .containsExactly("fails P-1 to U-1; it is joined to sanitary U-1 in plan;"
                        + " size of sanitary U-1 is not given and taken from the rule");
        assertThat(check(sewer.with(PIPE, "P-1", "LINESTRING (30 40, 30 1.26)", SIX_INCHES)))
                .containsExactly("meets U-1; no part of the drain is joined to it;"
                        + " size of sanitary U-1 is not given and taken from the rule");
    }

    @Test
    void aPipeOfUnknownSizeCountsAsWideAsTheWidest() {
        PlanInFeet plan = LATERAL.with(PIPE, "P-1", "LINESTRING (100 40, 100 20)", "outside_diameter = 12 in");

        assertThat(check(plan.with(PIPE, "P-2", "LINESTRING (60.75 40, 60.75 -40)")))
                .containsExactly("cannot_tell U-1; lacks diameter of pipe P-2;"
                        + " pipes whose diameter is not given are counted 12.0 in wide");
        assertThat(check(plan.with(PIPE, "P-2", "LINESTRING (60.76 40, 60.76 -40)")))
                .containsExactly("meets U-1; no part of the drain is joined to it;"
                        + " pipes whose diameter is not given are counted 12.0 in wide");
    }

    @Test
    void whereNoPipeHasASizeTheRulesCounts() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (61.25 40, 61.25 -40)")))
                .containsExactly("cannot_tell U-1; lacks diameter of pipe P-1;"
                        + " pipes whose diameter is not given are counted 24.0 in wide");
    }

    @Test
    void aSewerThatEndsAtThePipesOutsideIsJoinedAndABitFartherIsNot() {
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (60.5 40, 60.5 -40)", SIX_INCHES)))
                .containsExactly("fails P-1 to U-1; it is joined to sanitary U-1 in plan");
        assertThat(check(LATERAL.with(PIPE, "P-1", "LINESTRING (60.51 40, 60.51 -40)", SIX_INCHES)))
                .containsExactly("meets U-1; no part of the drain is joined to it");
    }
}
