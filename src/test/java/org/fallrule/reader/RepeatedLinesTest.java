package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.UTILITY;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class RepeatedLinesTest {
    private final List<Fault> problems = new ArrayList<>();

    private List<String> once(PlanInFeet plan) {
        return RepeatedLines.once(UTILITY, plan.site().features(UTILITY), problems).stream()
                .map(Feature::id)
                .toList();
    }

    @Test
    void aLineDrawnTwiceCountsOnceWhicheverWayItIsDrawn() {
        assertThat(once(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = gas", "depth = 24 in")
                        .with(UTILITY, "U-2", "LINESTRING (60 0, 0 0)", "kind = gas", "depth = 24 in")))
                .containsExactly("U-1");
        assertThat(problems)
                .extracting(Fault::says)
                .containsExactly("is drawn where U-1 lies, and counts once with it");
    }

    @Test
    void whereThePlanSaysOtherwiseOfTheSecondBothCount() {
        assertThat(once(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = gas", "depth = 24 in")
                        .with(UTILITY, "U-2", "LINESTRING (0 0, 60 0)", "kind = gas", "depth = 36 in")))
                .containsExactly("U-1", "U-2");
        assertThat(problems)
                .extracting(Fault::says)
                .containsExactly("is drawn where U-1 lies, of which the plan says otherwise; both count: keep the one"
                        + " that is right");
    }

    @Test
    void twoKindsInOneTrenchAreTwoLines() {
        assertThat(once(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = gas")
                        .with(UTILITY, "U-2", "LINESTRING (0 0, 60 0)", "kind = electric")))
                .containsExactly("U-1", "U-2");
        assertThat(problems).isEmpty();
    }
}
