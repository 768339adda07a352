package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class RepeatedFeaturesTest {
    private static List<String> told(Role role, PlanInFeet plan) {
        List<Fault> problems = new ArrayList<>();
        RepeatedFeatures.tell(role, plan.site().drawn(role), problems);
        return problems.stream().map(Fault::toString).toList();
    }

    @Test
    void aPipeDrawnTwiceIsToldWhicheverWayItIsDrawn() {
        assertThat(told(
                        Role.PIPE,
                        plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 60 0)")
                                .with(Role.PIPE, "P-2", "LINESTRING (60 0, 0 0)")))
                .containsExactly(
                        "pipe.geojson: P-2: is drawn where P-1 lies (P-1); both count: take one out, or move it to"
                                + " where it is");
    }

    @Test
    void pipesSideBySideAndRepeatedSpotsAreSilent() {
        assertThat(told(
                        Role.PIPE,
                        plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 60 0)")
                                .with(Role.PIPE, "P-2", "LINESTRING (0 0.1, 60 0.1)")))
                .isEmpty();
        assertThat(told(Role.SPOT, plan().spots("0 0 640, 0 0 640"))).isEmpty();
    }

    @Test
    void aPipeLaidWhereAnAbandonedOneLiesIsNoRepetition() {
        assertThat(told(
                        Role.PIPE,
                        plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 60 0)", "status = abandoned")
                                .with(Role.PIPE, "P-2", "LINESTRING (0 0, 60 0)")))
                .isEmpty();
    }
}
