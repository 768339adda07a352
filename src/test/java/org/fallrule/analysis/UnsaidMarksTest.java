package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.Baseline;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.locality.MarkAccuracy;
import org.junit.jupiter.api.Test;

class UnsaidMarksTest {
    private static final String LINE = "LINESTRING (0 0, 60 0)";

    private static List<String> faults(PlanInFeet plan, MarkAccuracy accuracy) {
        return UnsaidMarks.in(plan.site(), accuracy).stream().map(Fault::says).toList();
    }

    @Test
    void eachLevelThatNoBookSpeaksOfIsToldOnce() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", LINE, "quality = B")
                .with(UTILITY, "U-2", LINE)
                .with(UTILITY, "U-3", LINE, "quality = D");

        assertThat(faults(plan, MarkAccuracy.UNSAID))
                .containsExactly(
                        "no rule book in force says how well a utility mark of quality B is known, so that this one is"
                                + " taken as drawn and its depth relied on; add mark_accuracy to the county's book,"
                                + " or build it on rules/baseline.yaml",
                        "no rule book in force says how well a utility mark of quality D is known, so that 2 marks are"
                                + " taken as drawn and their depths relied on; add mark_accuracy to the county's book,"
                                + " or build it on rules/baseline.yaml");
    }

    @Test
    void theBaselineSpeaksOfAllFour() {
        PlanInFeet plan = plan();
        for (String quality : List.of("A", "B", "C", "D")) {
            plan = plan.with(UTILITY, "U-" + quality, LINE, "quality = " + quality);
        }
        assertThat(faults(plan, Baseline.locality().markAccuracy())).isEmpty();
    }

    @Test
    void aMarkThatSaysItselfHowWellItIsKnownNeedsNoBook() {
        PlanInFeet plan =
                plan().with(UTILITY, "U-1", LINE, "horizontal_accuracy = 0.5 ft", "vertical_accuracy = 0.1 ft");

        assertThat(faults(plan, MarkAccuracy.UNSAID)).isEmpty();
        assertThat(faults(plan.with(UTILITY, "U-2", LINE, "horizontal_accuracy = 0.5 ft"), MarkAccuracy.UNSAID))
                .hasSize(1);
    }
}
