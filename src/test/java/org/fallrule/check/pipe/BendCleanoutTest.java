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

/** Over 45 degrees as in IPC 708.1, read in pages about it; 135 degrees together as in UPC 719, read in an adoption. */
class BendCleanoutTest {
    private static final String OPENED = """
            opened_at: inlet
            opened_at_where: kind = 'basin'
            within: 2 ft
            """;
    private static final String SINGLE = OPENED + "bend_at_most: 45 deg";
    private static final String TOGETHER = OPENED + "bends_together_at_most: 135 deg";

    private static PlanInFeet drain(String line) {
        return plan().with(PIPE, "P-1", "LINESTRING (" + line + ")")
                .absent(CLEANOUT)
                .absent(INLET);
    }

    private static List<String> check(PlanInFeet plan, String rule) {
        return plan.check(new BendCleanout(), rule);
    }

    @Test
    void aStraightPipeHasNoBend() {
        assertThat(check(drain("0 0, 100 0"), SINGLE)).containsExactly("meets P-1: 0.0 deg");
    }

    @Test
    void aBendOfExactlyTheLimitMeetsIt() {
        assertThat(check(drain("0 0, 50 0, 80 30"), SINGLE)).containsExactly("meets P-1: 45.0 deg");
    }

    @Test
    void aSharperBendFails() {
        assertThat(check(drain("0 0, 50 0, 50 30"), SINGLE)).containsExactly("fails P-1: 90.0 deg");
    }

    @Test
    void aCleanoutAtTheBendServesIt() {
        PlanInFeet at =
                plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0, 50 30)").with(CLEANOUT, "CO-1", "POINT (49 1)");
        PlanInFeet off =
                plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0, 50 30)").with(CLEANOUT, "CO-1", "POINT (40 0)");
        assertThat(check(at.absent(INLET), SINGLE)).containsExactly("meets P-1: 0.0 deg");
        assertThat(check(off.absent(INLET), SINGLE)).containsExactly("fails P-1: 90.0 deg");
    }

    @Test
    void theTurnFromOnePipeIntoTheNextIsABend() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (50 30)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)")
                .with(PIPE, "P-2", "LINESTRING (50 0, 50 30)")
                .absent(CLEANOUT);
        PlanInFeet basin = plan.with(INLET, "B-1", "POINT (50 0)", "kind = basin");
        assertThat(check(plan.absent(INLET), SINGLE)).containsExactly("meets P-1: 0.0 deg", "fails P-2: 90.0 deg");
        assertThat(check(basin, SINGLE)).containsExactly("meets P-1: 0.0 deg", "meets P-2: 0.0 deg");
    }

    @Test
    void bendsAddUpToExactlyTheLimit() {
        assertThat(check(drain("0 0, 50 0, 50 30, 80 60"), TOGETHER)).containsExactly("meets P-1: 135.0 deg");
        assertThat(check(drain("0 0, 50 0, 50 30, 80 30, 100 50"), TOGETHER)).containsExactly("fails P-1: 225.0 deg");
    }

    @Test
    void anOpeningBetweenBendsBeginsTheSumAnew() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0, 50 30, 80 30)")
                .with(CLEANOUT, "CO-1", "POINT (50 15)")
                .absent(INLET);
        assertThat(check(plan, TOGETHER)).containsExactly("meets P-1: 90.0 deg");
    }

    @Test
    void bendsAddUpOverPipes() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0, 50 30)")
                .with(PIPE, "P-2", "LINESTRING (50 30, 80 30)")
                .with(OUTFALL, "OF-1", "POINT (80 30)")
                .absent(CLEANOUT)
                .absent(INLET);
        assertThat(check(plan, TOGETHER)).containsExactly("meets P-1: 90.0 deg", "fails P-2: 180.0 deg");
    }

    @Test
    void aCleanoutLayerThatIsNotSuppliedLeavesOpenWhatWouldFail() {
        PlanInFeet plan =
                plan().with(PIPE, "P-1", "LINESTRING (0 0, 50 0, 50 30)").absent(INLET);
        assertThat(check(plan, SINGLE)).containsExactly("cannot_tell P-1: 90.0 deg; lacks the plan's cleanouts");
    }
}
