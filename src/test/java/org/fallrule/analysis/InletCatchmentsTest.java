package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.fallrule.check.PlanInFeet;
import org.fallrule.measure.Unit;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class InletCatchmentsTest {

    /** A V-valley 40 ft wide and 60 ft long: sides fall 5 % to the middle, the valley falls 2 % to the south. */
    private static final String VALLEY = "-20 60 11.2, 0 60 10.2, 20 60 11.2, -20 0 10, 0 0 9, 20 0 10";

    private static InletCatchments.Catchment of(PlanInFeet plan, String inlet) {
        return InletCatchments.of(plan.analysis()).entrySet().stream()
                .filter(entry -> entry.getKey().id().equals(inlet))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBasinInAValleyTakesInTheValleyAboveIt() {
        PlanInFeet plan = PlanInFeet.plan().spots(VALLEY).with(Role.INLET, "CB-1", "POINT (0 20)", "kind = basin");

        // geometry: water runs down the sides at 2 : 5 southward, so that what reaches the valley above y = 20 ft, 40
        // ft of it
        // on each side, lies above a line that climbs 8 ft from the basin to each edge of the valley
        double closedForm = 2 * (40 * 20 - 0.5 * 20 * 8);

        assertThat(of(plan, "CB-1").overGround().orElseThrow().in(Unit.SQUARE_FOOT))
                .isCloseTo(closedForm, within(0.1 * closedForm));
        assertThat(of(plan, "CB-1").ofRoof()).isEmpty();
    }

    @Test
    void theBasinFurtherDownGetsOnlyWhatTheUpperOneLeaves() {
        PlanInFeet plan = PlanInFeet.plan()
                .spots(VALLEY)
                .with(Role.INLET, "UP", "POINT (0 40)", "kind = basin")
                .with(Role.INLET, "DOWN", "POINT (0 20)", "kind = basin");

        assertThat(of(plan, "DOWN").overGround().orElseThrow().in(Unit.SQUARE_FOOT))
                .isCloseTo(2 * 20 * 20.0, within(0.1 * 2 * 20 * 20));
    }

    @Test
    void downspoutsShareTheRoofOfTheBuildingThatTheyStandNearestTo() {
        PlanInFeet plan = PlanInFeet.plan()
                .with(Role.BUILDING, "B-1", "POLYGON ((0 0, 40 0, 40 30, 0 30, 0 0))")
                .with(Role.BUILDING, "B-2", "POLYGON ((60 0, 70 0, 70 10, 60 10, 60 0))")
                .with(Role.INLET, "DS-1", "POINT (0 -1)", "kind = downspout")
                .with(Role.INLET, "DS-2", "POINT (40 31)", "kind = downspout")
                .with(Role.INLET, "DS-3", "POINT (59 5)", "kind = downspout");

        assertThat(of(plan, "DS-1").ofRoof().orElseThrow().in(Unit.SQUARE_FOOT)).isCloseTo(600, within(1e-6));
        assertThat(of(plan, "DS-2").ofRoof().orElseThrow().in(Unit.SQUARE_FOOT)).isCloseTo(600, within(1e-6));
        assertThat(of(plan, "DS-3").ofRoof().orElseThrow().in(Unit.SQUARE_FOOT)).isCloseTo(100, within(1e-6));
        assertThat(of(plan, "DS-1").overGround()).isEmpty();
    }

    @Test
    void withoutGroundOrKindNothingIsClaimed() {
        PlanInFeet plan = PlanInFeet.plan()
                .with(Role.INLET, "CB-1", "POINT (0 20)", "kind = basin")
                .with(Role.INLET, "I-2", "POINT (5 20)");

        assertThat(InletCatchments.of(plan.analysis())).isEmpty();
    }
}
