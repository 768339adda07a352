package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/** 0.2 ft3/s out of a 4 in pipe of n 0.011 that falls 4 ft in 100. */
class OutletProtectionTest {
    private static final String GRASS =
            "at_most: 4 ft/s when ground_cover = 'grass'\nat_most: 2 ft/s\napron: by_discharge";

    private static PlanInFeet outfall(String... outfall) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, 1440 0, 1440 1, 0 1, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout")
                .with(OUTFALL, "OF-1", "POINT (0 -101)", outfall)
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 95)", "diameter = 4 in", "material = pvc_sdr35");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new OutletProtection(), terms);
    }

    @Test
    void waterFasterThanTheGroundStandsFailsWithoutStoneAndIsToldWhatWouldHoldIt() {
        // Dane County: 1.7 x 0.2 / (1/3)^1.5 + 8/3 = 4.43 ft
        assertThat(check(outfall("kind = daylight", "ground_cover = grass"), GRASS))
                .containsExactly("fails OF-1: 5.00 ft/s; no stone apron is shown; one 4.43 ft long would hold it"
                        + " (apron_by_discharge)");
    }

    @Test
    void groundThatStandsTheVelocityNeedsNoStone() {
        assertThat(check(outfall("kind = daylight"), "at_most: 5.1 ft/s\napron: by_discharge"))
                .containsExactly("meets OF-1: 5.00 ft/s");
    }

    @Test
    void aVelocityOfExactlyWhatTheGroundStandsMeets() {
        // drowned, the pipe runs full: 0.2 ft3/s through 0.08727 sq ft
        assertThat(check(
                        outfall("kind = daylight", "tailwater = 99 ft"), "at_most: 2.291831 ft/s\napron: by_discharge"))
                .singleElement()
                .asString()
                .startsWith("meets OF-1: 2.29");
        assertThat(check(outfall("kind = daylight", "tailwater = 99 ft"), "at_most: 2.28 ft/s\napron: by_discharge"))
                .singleElement()
                .asString()
                .startsWith("fails OF-1: 2.29 ft/s");
    }

    @Test
    void anApronThatIsLongEnoughHoldsIt() {
        assertThat(check(outfall("kind = daylight", "ground_cover = grass", "apron_length = 4.44 ft"), GRASS))
                .singleElement()
                .asString()
                .startsWith("meets OF-1: 4.44 ft; the water leaves it at 5.00 ft/s");
        assertThat(check(outfall("kind = daylight", "ground_cover = grass", "apron_length = 4 ft"), GRASS))
                .singleElement()
                .asString()
                .startsWith("fails OF-1: 4.00 ft");
    }

    @Test
    void anApronExactlyAsLongAsAskedMeets() {
        // HEC-14 table 10.1, class 1: four diameters, 16 in
        String culvert = "at_most: 2 ft/s\napron: by_culvert";
        assertThat(check(outfall("kind = daylight", "apron_length = 1.34 ft"), culvert))
                .singleElement()
                .asString()
                .startsWith("meets OF-1: 1.34 ft");
        assertThat(check(outfall("kind = daylight", "apron_length = 1.3 ft"), culvert))
                .singleElement()
                .asString()
                .startsWith("fails OF-1: 1.30 ft");
    }

    @Test
    void aGroundCoverThatIsNotGivenLeavesTheLimitOpen() {
        assertThat(check(outfall("kind = daylight"), GRASS))
                .containsExactly("cannot_tell OF-1; lacks ground_cover of outfall OF-1, on which the limit depends");
    }

    @Test
    void aCurbOutfallRunsOntoPavement() {
        assertThat(check(outfall("kind = curb"), GRASS)).isEmpty();
    }

    @Test
    void anOutfallThatNoPipeLeadsToCannotBeTold() {
        PlanInFeet plan = outfall("kind = curb").with(OUTFALL, "OF-2", "POINT (300 0)", "kind = daylight");
        assertThat(check(plan, "at_most: 2 ft/s\napron: by_culvert"))
                .containsExactly("cannot_tell OF-2; lacks the pipe that leads to outfall OF-2");
    }

    @Test
    void aPipeThatNoInletOfThePlanDrainsToIsNotTakenAsDry() {
        PlanInFeet plan = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 95)", "diameter = 4 in", "material = pvc_sdr35");

        assertThat(check(plan, "at_most: 2 ft/s\napron: by_discharge"))
                .containsExactly("cannot_tell OF-1; lacks how fast the water leaves outfall OF-1 (no inlet of the plan"
                        + " drains there)");
    }
}
