package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/** By hand, HEC-22 equation 7-1: a 4 in pipe of n 0.011 at 1 % runs full at 0.5897/0.011 x (1/3)^(2/3) x 0.1 = 2.58 ft/s. */
class FlowVelocityTest {
    private static PlanInFeet drain(double roof, double down) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, " + roof + " 0, " + roof + " 1, 0 1, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout")
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING Z (0 -1 99, 0 -101 " + (99 - down) + ")",
                        "diameter = 4 in",
                        "material = pvc_sdr35");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new FlowVelocity(), terms);
    }

    @Test
    void aPipeThatRunsFullFastEnoughMeets() {
        assertThat(check(drain(100, 1), "at_least: 2 ft/s")).containsExactly("meets P-1: 2.58 ft/s");
    }

    @Test
    void aPipeThatRunsFullTooSlowlyFails() {
        assertThat(check(drain(100, 0.5), "at_least: 2 ft/s")).containsExactly("fails P-1: 1.82 ft/s");
    }

    @Test
    void aPipeThatRunsFullAtExactlyTheLeastVelocityMeets() {
        double slope = Math.pow(2 * 0.011 / (0.58975 * Math.pow(1 / 3.0, 2 / 3.0)), 2);
        assertThat(check(drain(100, 100 * slope), "at_least: 2 ft/s")).containsExactly("meets P-1: 2.00 ft/s");
    }

    @Test
    void aPipeThatDoesNotFallStandsStill() {
        assertThat(check(drain(100, 0), "at_least: 2 ft/s")).containsExactly("fails P-1: 0.00 ft/s");
    }

    @Test
    void theDesignFlowOfASteepPipeMayRunTooFast() {
        assertThat(check(drain(1440, 25), "at_most: 8 ft/s")).containsExactly("fails P-1: 9.73 ft/s");
        assertThat(check(drain(1440, 25), "at_most: 15 ft/s")).containsExactly("meets P-1: 9.73 ft/s");
    }

    @Test
    void aFlowThatFillsThePipeIsHeldByItsBore() {
        // 0.5 ft3/s through 0.0873 sq ft
        assertThat(check(drain(3600, 1), "at_most: 5 ft/s")).containsExactly("fails P-1: 5.73 ft/s");
    }

    @Test
    void onlyTheGreatestVelocityNeedsAStorm() {
        FlowVelocity check = new FlowVelocity();
        assertThat(check.needs(PlanInFeet.terms(check, "at_least: 2 ft/s"))).containsExactly(new Need.OfLayer(PIPE));
        assertThat(check.needs(PlanInFeet.terms(check, "at_most: 9 ft/s")))
                .containsExactly(new Need.OfLayer(PIPE), new Need.OfStorm());
    }

    @Test
    void withoutADiameterItCannotBeTold() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 98)", "material = pvc_sdr35");
        assertThat(check(plan, "at_least: 2 ft/s"))
                .containsExactly(
                        "cannot_tell P-1; lacks the velocity running full in pipe P-1 (the diameter of pipe P-1"
                                + " is not given)");
    }
}
