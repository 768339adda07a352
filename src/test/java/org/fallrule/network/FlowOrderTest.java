package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class FlowOrderTest {

    private static List<String> order(PlanInFeet plan) {
        return FlowOrder.of(plan.analysis().network()).runs().stream()
                .map(PipeRun::id)
                .toList();
    }

    @Test
    void aPipeComesAfterAllThatFlowIntoIt() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "LOWER", "LINESTRING (50 0, 100 0)")
                .with(PIPE, "UPPER", "LINESTRING (20 0, 50 0)")
                .with(PIPE, "BRANCH", "LINESTRING (50 30, 50 0)")
                .with(PIPE, "TOP", "LINESTRING (0 0, 20 0)");

        assertThat(order(plan)).containsExactly("BRANCH", "TOP", "UPPER", "LOWER");
    }

    @Test
    void thePipesOfALoopAreLeftOutAndThoseBesideItAreNot() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (100 90)")
                .with(PIPE, "L-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "L-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "L-3", "LINESTRING (15 20, 0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 90, 100 90)");

        assertThat(order(plan)).containsExactly("P-1");
    }
}
