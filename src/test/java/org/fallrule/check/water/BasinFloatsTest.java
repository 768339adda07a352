package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.SOIL;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** FEMA P-259, appendix C: weight over uplift. A box of 1 by 1 by 2 ft displaces 2 cu ft, 124.8 lb of water at 62.4 lb/ft3. */
class BasinFloatsTest {
    private static PlanInFeet basin(String weight, String holes) {
        return plan().with(
                        INLET,
                        "CB-1",
                        "POINT (0 0)",
                        "kind = basin",
                        "rim = 100 ft",
                        "invert = 98.5 ft",
                        "sump = 6 in",
                        "box_length = 12 in",
                        "box_width = 12 in",
                        "weight = " + weight,
                        "weep_hole_area = " + holes);
    }

    private static List<String> check(PlanInFeet plan) {
        return plan.check(new BasinFloats(), "at_least: 1.2");
    }

    @Test
    void aHeavyBasinStaysDown() {
        assertThat(check(basin("200 lb", "0 sq ft")))
                .containsExactly("meets CB-1: 1.60; an uplift of 124.8 lb in ground saturated up to the rim");
    }

    @Test
    void aLightOneFloats() {
        assertThat(check(basin("15 lb", "0 sq ft")))
                .containsExactly("fails CB-1: 0.12; an uplift of 124.8 lb in ground saturated up to the rim");
    }

    @Test
    void aWeightOfExactlyWhatIsAskedMeets() {
        assertThat(check(basin(1.2 * 124.856 + " lb", "0 sq ft")))
                .singleElement()
                .asString()
                .startsWith("meets CB-1: 1.20");
    }

    @Test
    void weepHolesLetTheWaterIn() {
        assertThat(check(basin("15 lb", "0.02 sq ft"))).containsExactly("meets CB-1");
    }

    @Test
    void groundWaterThatStandsDeeperLiftsLess() {
        String around = "POLYGON ((-10 -10, 10 -10, 10 10, -10 10, -10 -10))";
        assertThat(check(basin("80 lb", "0 sq ft").with(SOIL, "SL-1", around, "groundwater_depth = 1 ft")))
                .containsExactly("meets CB-1: 1.28; an uplift of 62.4 lb");
        assertThat(check(basin("15 lb", "0 sq ft").with(SOIL, "SL-1", around, "groundwater_depth = 6 ft")))
                .containsExactly("meets CB-1");
    }

    @Test
    void aBasinOfUnknownWeightCannotBeTold() {
        PlanInFeet plan = plan().with(INLET, "CB-1", "POINT (0 0)", "kind = basin", "weep_hole_area = 0 sq ft");
        assertThat(check(plan)).singleElement().asString().startsWith("cannot_tell CB-1; lacks inside length");
    }

    @Test
    void withoutAnInvertOfItsOwnTheLowestPipeEndThereCounts() {
        PlanInFeet plan = plan().with(
                        INLET,
                        "CB-1",
                        "POINT (0 0)",
                        "kind = basin",
                        "rim = 100 ft",
                        "sump = 6 in",
                        "box_length = 12 in",
                        "box_width = 12 in",
                        "weight = 200 lb",
                        "weep_hole_area = 0 sq ft");

        assertThat(check(plan)).containsExactly("cannot_tell CB-1; lacks the outgoing invert of inlet CB-1");
        assertThat(check(plan.with(
                                PIPE, "P-1", "LINESTRING (-50 0, 0 0)", "invert_up = 99.4 ft", "invert_down = 98.9 ft")
                        .with(PIPE, "P-2", "LINESTRING (0 0, 50 0)", "invert_up = 98.5 ft", "invert_down = 98 ft")
                        .with(OUTFALL, "OF-1", "POINT (50 0)")))
                .containsExactly("meets CB-1: 1.60; an uplift of 124.8 lb in ground saturated up to the rim;"
                        + " its invert is taken from the end of pipe P-2");
    }
}
