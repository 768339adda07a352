package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class SubmittedDrainTest {
    /** Two inlets whose pipes meet; the second pipe is drawn against its flow. */
    private static PlanInFeet joined() {
        return plan().with(Role.INLET, "CB-1", "POINT (0 0)")
                .with(Role.INLET, "CB-2", "POINT (50 30)")
                .with(Role.PIPE, "P-1", "LINESTRING (0 0, 30 10, 50 0)")
                .with(Role.PIPE, "P-2", "LINESTRING (50 0, 50 30)")
                .with(Role.PIPE, "P-3", "LINESTRING (50 0.1, 100 0)")
                .with(Role.OUTFALL, "OF-1", "POINT (100 0)");
    }

    private static Optional<Drain> drain(PlanInFeet plan) {
        return SubmittedDrain.of(plan.site(), plan.analysis().network());
    }

    @Test
    void everyReachRunsFromPlaceToPlaceDownToTheOutfall() {
        Drain drain = drain(joined()).orElseThrow();

        assertThat(drain.places()).hasSize(4);
        assertThat(drain.inOrder()).hasSize(3);
        assertThat(drain.leaving(drain.outfall())).isEmpty();
        assertThat(drain.places().stream()
                        .flatMap(place -> place.inlet().stream())
                        .map(Feature::id))
                .containsExactlyInAnyOrder("CB-1", "CB-2");
        assertThat(drain.reaches())
                .allMatch(reach -> reach.axis()
                                .get(0)
                                .equals2D(drain.places().get(reach.up()).place())
                        && reach.axis()
                                .get(reach.axis().size() - 1)
                                .equals2D(drain.places().get(reach.down()).place()));
    }

    @Test
    void aPlanThatLeavesAnInletUndrainedHasNoSuchDrain() {
        assertThat(drain(joined().with(Role.INLET, "CB-3", "POINT (20 -20)"))).isEmpty();
    }

    @Test
    void norHasOneThatLeadsItsWaterToTwoOutfalls() {
        PlanInFeet two = joined().with(Role.PIPE, "P-4", "LINESTRING (0 60, 40 60)")
                .with(Role.INLET, "CB-4", "POINT (0 60)")
                .with(Role.OUTFALL, "OF-2", "POINT (40 60)");

        assertThat(drain(two)).isEmpty();
    }

    @Test
    void norOneWithAPipeThatLeadsNowhere() {
        assertThat(drain(joined().with(Role.PIPE, "P-5", "LINESTRING (0 80, 40 80)")))
                .isEmpty();
    }
}
