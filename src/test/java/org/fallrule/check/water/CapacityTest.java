package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.DRAINAGE_AREA;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/**
 * Design flow against capacity. By hand, HEC-22 equation 7-1: a 4 in pipe of n 0.011 at 1 % carries 0.4632/0.011 x
 * (1/3)^(8/3) x 0.1 = 0.225 ft3/s.
 */
class CapacityTest {
    private static final String PVC = "material = pvc_sdr35";

    /** A roof of so many square feet, in 6 in/h, on a 4 in pipe that falls so many feet in 100. */
    private static PlanInFeet roof(double squareFeet, double fall, String material) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, " + squareFeet + " 0, " + squareFeet + " 1, 0 1, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout")
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 " + (99 - fall) + ")", "diameter = 4 in", material);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Capacity(), terms);
    }

    @Test
    void aPipeThatCarriesMoreThanComesMeets() {
        assertThat(check(roof(720, 1, PVC), "at_most: 1"))
                .containsExactly("meets P-1: 0.44; design flow 0.100 cfs of 0.225 cfs");
    }

    @Test
    void aPipeThatCarriesLessThanComesFails() {
        assertThat(check(roof(1800, 1, PVC), "at_most: 1"))
                .containsExactly("fails P-1: 1.11; design flow 0.250 cfs of 0.225 cfs");
    }

    @Test
    void aFlowThatIsExactlyTheShareAllowedMeets() {
        double carries = 0.463186 / 0.011 * Math.pow(1 / 3.0, 8 / 3.0) * 0.1;
        assertThat(check(roof(7200 * 0.8 * carries, 1, PVC), "at_most: 0.8"))
                .containsExactly("meets P-1: 0.80; design flow 0.180 cfs of 0.225 cfs");
    }

    @Test
    void aCodeTableCanSayWhatThePipeCarries() {
        // International Plumbing Code 2018, table 1106.2 (read in a reprint): 4 in at 1/8 in/ft carries 115 gpm, 0.256
        // cfs
        assertThat(check(roof(1800, 1.05, PVC), "at_most: 1\ntable: ipc_2018"))
                .containsExactly("meets P-1: 0.98; design flow 0.250 cfs of 0.256 cfs");
    }

    @Test
    void aPipeFlatterThanTheCodeTableCannotBeTold() {
        assertThat(check(roof(720, 0.2, PVC), "at_most: 1\ntable: ipc_2018"))
                .singleElement()
                .asString()
                .startsWith("cannot_tell P-1; lacks what pipe P-1 carries (International Plumbing Code");
    }

    @Test
    void aPipeThatDoesNotFallHasNoCapacityOfItsOwn() {
        assertThat(check(roof(720, -1, PVC), "at_most: 1")).containsExactly("fails P-1");
    }

    @Test
    void withoutMaterialOrRoughnessItCannotBeTold() {
        assertThat(check(roof(720, 1, "status = proposed"), "at_most: 1"))
                .containsExactly("cannot_tell P-1; lacks what pipe P-1 carries (neither material nor roughness of pipe"
                        + " P-1 is given)");
    }

    @Test
    void aPipeThatNoInletDrainsToCannotBeTold() {
        PlanInFeet plan = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 98)", "diameter = 4 in", PVC);
        assertThat(check(plan, "at_most: 1"))
                .containsExactly(
                        "cannot_tell P-1; lacks the design flow in pipe P-1 (no inlet of the plan drains there)");
    }

    @Test
    void aRoughnessThatThePlanGivesCounts() {
        assertThat(check(roof(720, 1, "roughness = 0.022"), "at_most: 1"))
                .containsExactly("meets P-1: 0.89; design flow 0.100 cfs of 0.112 cfs");
    }

    @Test
    void anInletThatMoreMayDrainToThanTheGroundShowsLeavesItOpenUnlessItFailsAnyway() {
        PlanInFeet cut = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .absent(org.fallrule.site.Role.WALK)
                .absent(org.fallrule.site.Role.DRIVE)
                .spots("0 0 100, 0 60 100, 60 0 101, 60 60 101")
                .with(INLET, "CB-1", "POINT (3 30)", "kind = basin")
                .with(OUTFALL, "OF-1", "POINT (-97 30)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING Z (3 30 98, -97 30 97)", "diameter = 4 in", PVC);
        assertThat(check(cut, "at_most: 1"))
                .singleElement()
                .asString()
                .startsWith("cannot_tell P-1: 0.")
                .contains("lacks how much more drains to inlet CB-1 from beyond the ground given");
        assertThat(check(cut, "at_most: 0.001"))
                .singleElement()
                .asString()
                .startsWith("fails P-1")
                .contains("how much more drains to inlet CB-1 from beyond the ground given is not known");
        PlanInFeet drawn = cut.with(
                DRAINAGE_AREA, "DA-1", "POLYGON ((3 0, 60 0, 60 60, 3 60, 3 0))", "drains_to = CB-1", "surface = lawn");
        assertThat(check(drawn, "at_most: 1")).singleElement().asString().startsWith("meets P-1");
    }
}
