package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.CLEANOUT;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/**
 * A level full pipe by hand. 1,800 sq ft of roof in 6 in/h bring 0.25 ft3/s, in a 4 in pipe 2.8648 ft/s with a velocity head of
 * 0.1276 ft. Friction by HEC-22 equation 7-1 with n 0.011: Sf = (0.25 x 0.011 / (0.46319 x (1/3)^(8/3)))^2 = 0.01235, 1.235 ft
 * in 100 ft. Exit loss 1, entrance loss 0.5 of the velocity head.
 */
class GradeLineFreeboardTest {
    private static final double RISE = 1.235 + 1.5 * 0.1276;

    private static PlanInFeet drain(String rim, String tailwater) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, 1800 0, 1800 1, 0 1, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout", rim)
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight", tailwater)
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 95, 0 -101 95)", "diameter = 4 in", "material = pvc_sdr35");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new GradeLineFreeboard(), terms);
    }

    @Test
    void theWaterStandsAboveATailwaterByFrictionAndLosses() {
        assertThat(check(drain("rim = 99 ft", "tailwater = 97 ft"), "at_least: 0 in"))
                .containsExactly(
                        "meets DS-1: 6.9 in; grade line at 98.43 ft; the water stands above the mouth of the pipe below it");
    }

    @Test
    void waterAboveTheRimFails() {
        assertThat(check(drain("rim = 98 ft", "tailwater = 97 ft"), "at_least: 0 in"))
                .containsExactly(
                        "fails DS-1: -5.1 in; grade line at 98.43 ft; the water stands above the mouth of the pipe below it");
    }

    @Test
    void aFreeboardOfExactlyWhatIsAskedMeets() {
        String rim = "rim = " + (97 + RISE + 1) + " ft";
        assertThat(check(drain(rim, "tailwater = 97 ft"), "at_least: 1 ft"))
                .singleElement()
                .asString()
                .startsWith("meets DS-1: 1.00 ft");
    }

    @Test
    void withoutARimTheGroundCounts() {
        PlanInFeet plan =
                drain("status = proposed", "tailwater = 97 ft").spots("-50 20 99, 50 20 99, -50 -120 99, 50 -120 99");
        assertThat(check(plan, "at_least: 0 in")).singleElement().asString().startsWith("meets DS-1: 6.9 in");
        assertThat(check(drain("status = proposed", "tailwater = 97 ft"), "at_least: 0 in"))
                .containsExactly("cannot_tell DS-1; lacks the rim of inlet DS-1");
    }

    @Test
    void aStructureThatNoWaterComesToIsDry() {
        PlanInFeet plan = drain("rim = 99 ft", "status = proposed")
                .with(CLEANOUT, "CO-1", "POINT (200 -1)", "rim = 99 ft")
                .with(OUTFALL, "OF-2", "POINT (200 -101)", "kind = daylight")
                .with(PIPE, "P-2", "LINESTRING Z (200 -1 96, 200 -101 95)", "diameter = 4 in", "material = pvc_sdr35");
        assertThat(check(plan, "at_least: 0 in").get(1)).isEqualTo("meets CO-1; no water stands in it");
    }

    @Test
    void aPipeWithoutInvertsLeavesItOpen() {
        PlanInFeet plan = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, 1800 0, 1800 1, 0 1, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout", "rim = 99 ft")
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING (0 -1, 0 -101)", "diameter = 4 in", "material = pvc_sdr35");
        assertThat(check(plan, "at_least: 0 in"))
                .containsExactly(
                        "cannot_tell DS-1; lacks how high the water stands in inlet DS-1 (the inverts of pipe P-1"
                                + " are not given)");
    }
}
