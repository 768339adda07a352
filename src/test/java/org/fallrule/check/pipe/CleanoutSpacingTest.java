package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.CLEANOUT;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** At most 100 ft apart: International Plumbing Code 708.1 as applied to storm drains by 1101.8, read in pages about it. */
class CleanoutSpacingTest {
    private static final String RULE = """
            at_most: 100 ft
            opened_at: inlet
            opened_at_where: kind = 'basin'
            within: 2 ft""";

    private static List<String> check(PlanInFeet plan) {
        return plan.check(new CleanoutSpacing(), RULE);
    }

    /** A straight drain of so many feet from a basin to an outfall. */
    private static PlanInFeet drain(String feet) {
        return plan().with(INLET, "B-1", "POINT (0 0)", "kind = basin")
                .with(OUTFALL, "OF-1", "POINT (" + feet + " 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, " + feet + " 0)");
    }

    @Test
    void aRunOfExactlyTheSpacingMeetsIt() {
        assertThat(check(drain("100").absent(CLEANOUT))).containsExactly("meets P-1: 100.00 ft");
    }

    @Test
    void aLongerRunFails() {
        assertThat(check(drain("101").absent(CLEANOUT))).containsExactly("fails P-1: 101.00 ft");
    }

    @Test
    void aCleanoutBesideTheRunPartsIt() {
        assertThat(check(drain("150").with(CLEANOUT, "CO-1", "POINT (70 2)"))).containsExactly("meets P-1: 80.00 ft");
        assertThat(check(drain("150").with(CLEANOUT, "CO-1", "POINT (40 -1)"))).containsExactly("fails P-1: 110.00 ft");
    }

    @Test
    void aCleanoutExactlyAsFarAsServesDoesSoWhereverTheRunLies() {
        PlanInFeet plan = plan().with(INLET, "B-1", "POINT (0 0.7)", "kind = basin")
                .with(OUTFALL, "OF-1", "POINT (150 0.7)")
                .with(PIPE, "P-1", "LINESTRING (0 0.7, 150 0.7)")
                .with(CLEANOUT, "CO-1", "POINT (70 2.7)");

        assertThat(check(plan)).containsExactly("meets P-1: 80.00 ft");
    }

    @Test
    void aCleanoutTooFarFromTheRunDoesNotServeIt() {
        assertThat(check(drain("150").with(CLEANOUT, "CO-1", "POINT (75 2.1)")))
                .containsExactly("fails P-1: 150.00 ft");
    }

    @Test
    void aStretchGoesOnFromPipeToPipe() {
        PlanInFeet plan = drain("60")
                .absent(CLEANOUT)
                .with(PIPE, "P-0", "LINESTRING (-50 0, 0 0)")
                .with(INLET, "D-1", "POINT (-50 0)", "kind = downspout");
        PlanInFeet withoutBasin = plan().with(OUTFALL, "OF-1", "POINT (60 0)")
                .with(INLET, "D-1", "POINT (-50 0)", "kind = downspout")
                .with(PIPE, "P-0", "LINESTRING (-50 0, 0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 60 0)")
                .absent(CLEANOUT);
        assertThat(check(plan)).containsExactlyInAnyOrder("meets P-0: 50.00 ft", "meets P-1: 60.00 ft");
        assertThat(check(withoutBasin)).containsExactly("fails P-1: 110.00 ft");
    }

    @Test
    void ofBranchesTheLongestCounts() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (60 0)")
                .with(INLET, "D-1", "POINT (-50 0)", "kind = downspout")
                .with(PIPE, "P-0", "LINESTRING (-50 0, 0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 60 0)")
                .with(PIPE, "P-2", "LINESTRING (0 20, 0 0)")
                .absent(CLEANOUT);
        assertThat(check(plan)).containsExactly("fails P-1: 110.00 ft");
    }

    @Test
    void aCleanoutLayerThatIsNotSuppliedLeavesOpenWhatWouldFail() {
        assertThat(check(drain("101"))).containsExactly("cannot_tell P-1: 101.00 ft; lacks the plan's cleanouts");
        assertThat(check(drain("99"))).containsExactly("meets P-1: 99.00 ft");
    }

    @Test
    void anInletOfUnknownKindMayBeAnOpening() {
        PlanInFeet plan = drain("60")
                .absent(CLEANOUT)
                .with(PIPE, "P-0", "LINESTRING (-50 0, 0 0)")
                .with(PIPE, "P-2", "LINESTRING (-110 0, -50 0)")
                .with(INLET, "X-1", "POINT (-50 0)");
        assertThat(check(plan))
                .containsExactlyInAnyOrder(
                        "cannot_tell P-0: 110.00 ft; lacks kind of inlet X-1", "meets P-1: 60.00 ft");
    }
}
