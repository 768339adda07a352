package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.remedy.KindsOfChangeTest.least;

import java.util.function.Predicate;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Changes of what stands on a drain, and of its size: the least that is found passes, and one step less does not. */
class BasinsOpeningsAndSizesTest {
    private static final String EVERYWHERE = "POLYGON ((-60 -60, 160 -60, 160 60, -60 60, -60 -60))";

    private static PlanInFeet basin(String... attributes) {
        return Drains.plain().without(Role.INLET, "CB-1").with(Role.INLET, "CB-1", "POINT (0 0)", attributes);
    }

    private static Predicate<String> saying(String word) {
        return says -> says.contains(word);
    }

    private static String says(LeastChange.Candidate candidate) {
        assertThat(candidate.least().steps()).isGreaterThan(1);
        return candidate.least().change().says();
    }

    /** A deep basin over soil that takes its water in slowly. */
    private static PlanInFeet standing(String weepHoles, String texture) {
        return basin(
                        "kind = basin",
                        "rim = 100 ft",
                        "invert = 98 ft",
                        "sump = 36 in",
                        "weep_hole_area = " + weepHoles,
                        "box_length = 36 in",
                        "box_width = 36 in")
                .with(Role.SOIL, "S-1", EVERYWHERE, "texture = " + texture);
    }

    @Test
    void weepHolesAreAsWideAsTheSumpNeedsToRunDry() {
        PlanInFeet tight = standing("0 sq in", "sand");

        assertThat(least(tight, new OtherBasin(), "basin-drains-down", saying("weep holes"))
                        .least()
                        .change()
                        .says())
                .startsWith("weep holes of 0.1");
    }

    @Test
    void aSumpIsAsMuchShallowerAsItHasToBe() {
        PlanInFeet slow = standing("2 sq in", "clay_loam");

        assertThat(says(least(slow, new OtherBasin(), "basin-drains-down", saying("a sump of"))))
                .isEqualTo("a sump of 3.5 in in inlet CB-1");
    }

    @Test
    void aSumpIsAsDeepAsTheRuleAsks() {
        PlanInFeet shallow = basin("kind = basin", "rim = 100 ft", "invert = 98 ft", "sump = 2 in");

        assertThat(says(least(shallow, new OtherBasin(), "basin-sump", saying("a sump of"))))
                .isEqualTo("a sump of 4 in in inlet CB-1");
    }

    @Test
    void aBasinGetsAsMuchWeightAsHoldsItDown() {
        PlanInFeet floating = Drains.plain().with(Role.SOIL, "S-1", EVERYWHERE, "groundwater_depth = 0 ft");

        assertThat(says(least(floating, new OtherBasin(), "basin-does-not-float", saying("more weight"))))
                .isEqualTo(
                        "165 lb more weight on inlet CB-1, or 285 lb of concrete around it, some of which the ground water"
                                + " bears");
    }

    @Test
    void aGrateInAWalkIsAsFineAsTheRuleAsks() {
        PlanInFeet wide = basin("kind = basin", "rim = 100 ft", "invert = 98 ft", "grate_opening = 1 in")
                .with(Role.WALK, "W-1", "POLYGON ((-5 -5, 5 -5, 5 5, -5 5, -5 -5))", "access = public");

        assertThat(says(least(wide, new OtherBasin(), "walk-grate-opening", saying("a grate"))))
                .isEqualTo("a grate on inlet CB-1 with openings of no more than 0.5 in");
    }

    /** As much water as comes off so many square feet of roof and paving. */
    private static PlanInFeet fed(PlanInFeet plan, int feet) {
        return plan.with(
                Role.DRAINAGE_AREA,
                "DA-1",
                "POLYGON ((0 0, %1$d 0, %1$d %1$d, 0 %1$d, 0 0))".formatted(feet),
                "drains_to = CB-1",
                "runoff_coefficient = 0.9",
                "concentration_time = 5 min");
    }

    @Test
    void aGrateIsAsWideAsItsWaterNeeds() {
        PlanInFeet small = fed(
                basin(
                        "kind = basin",
                        "rim = 100 ft",
                        "invert = 98 ft",
                        "grate_open_area = 4 sq in",
                        "grate_length = 12 in",
                        "grate_width = 12 in"),
                60);

        assertThat(says(least(small, new OtherBasin(), "basin-takes-its-flow-in", saying("a grate with"))))
                .isEqualTo("a grate with 53 sq in of openings on inlet CB-1");
    }

    @Test
    void aLongPipeGetsAsManyCleanoutsAsItTakes() {
        PlanInFeet plan = Drains.plain()
                .without(Role.CLEANOUT, "CO-1")
                .without(Role.PIPE, "P-2")
                .without(Role.OUTFALL, "OF-1")
                .with(
                        Role.PIPE,
                        "P-2",
                        "LINESTRING (50 0, 400 0)",
                        "diameter = 4 in",
                        "invert_up = 97.5 ft",
                        "invert_down = 93.5 ft")
                .with(Role.OUTFALL, "OF-1", "POINT (400 0)")
                .empty(Role.CLEANOUT);

        assertThat(says(least(plan, new MoreCleanouts(), "cleanout-spacing", any -> true)))
                .isEqualTo("4 cleanouts on pipe P-2 at station 0+00.0 and station 0+87.5 and station 1+75.0 and station"
                        + " 2+62.5");
    }

    @Test
    void aPipeIsMadeAsLargeAsItsWaterNeedsAndNoLarger() {
        PlanInFeet plan = fed(Drains.plain(), 130);

        assertThat(says(least(plan, new LargerPipe(), "pipe-capacity", any -> true)))
                .isEqualTo("10 in pipe from inlet CB-1 down to the outfall");
    }

    @Test
    void aPipeIsMadeAsWideAsTheOneBeforeItAndNoWider() {
        PlanInFeet plan = Drains.plain()
                .without(Role.PIPE, "P-1")
                .with(
                        Role.PIPE,
                        "P-1",
                        "LINESTRING (0 0, 50 0)",
                        "diameter = 8 in",
                        "material = pvc_sch40",
                        "invert_up = 98 ft",
                        "invert_down = 97.5 ft");

        assertThat(says(least(plan, new LargerPipe(), "pipe-not-narrower", any -> true)))
                .isEqualTo("8 in pipe from cleanout CO-1 down to the outfall");
    }
}
