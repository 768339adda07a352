package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class StructureFactsTest {
    private static List<StructureFacts> facts(PlanInFeet plan) {
        return StructureFacts.all(plan.analysis());
    }

    private static PlanInFeet twoPipes(String invertIn, String invertOut) {
        return plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 50 0)", "invert_up = 9 ft", "invert_down = " + invertIn)
                .with(Role.PIPE, "P-2", "LINESTRING (50 0, 100 0)", "invert_up = " + invertOut, "invert_down = 5 ft")
                .with(Role.CLEANOUT, "CO-1", "POINT (50 0)")
                .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight");
    }

    private static List<String> drops(PlanInFeet plan) {
        StructureFacts first = facts(plan).get(0);
        return first.drops().stream().map(first::spoken).toList();
    }

    @Test
    void aDropIsTheStepFromThePipeThatComesInToTheOneThatCarriesOn() {
        assertThat(drops(twoPipes("8.1 ft", "8 ft"))).containsExactly("0.10 ft from P-1 to P-2");
        assertThat(drops(twoPipes("8 ft", "8 ft"))).containsExactly("0.00 ft from P-1 to P-2");
        assertThat(drops(twoPipes("7.75 ft", "8 ft"))).containsExactly("0.25 ft up from P-1 to P-2");
    }

    @Test
    void downspoutsShareTheirRoof() {
        PlanInFeet roof = plan().with(Role.BUILDING, "B-1", "POLYGON ((0 0, 40 0, 40 30, 0 30, 0 0))")
                .with(Role.INLET, "DS-1", "POINT (0 0)", "kind = downspout")
                .with(Role.INLET, "DS-2", "POINT (40 0)", "kind = downspout")
                .with(Role.INLET, "IN-1", "POINT (80 0)");

        assertThat(facts(roof)).extracting(StructureFacts::what).containsExactly("downspout", "downspout", "inlet");
        assertThat(facts(roof).get(1).drainsRoof()).hasValue("600 sq ft");
        assertThat(facts(roof).get(2).drainsRoof()).isEmpty();
        assertThat(facts(roof).get(2).drainsGround()).isEmpty();
    }
}
