package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** Tight joints within 10 ft of a water line are asked by ordinances of towns in Illinois and Ohio. */
class TightJointsTest {
    private static final String TERMS = """
            from: utility
            from_where: kind = 'water_main'
            within: 10 ft
            size_if_unknown: 12 in""";

    /** A water main of 12 in outside along the x axis from 0 to 60 ft. */
    private static final PlanInFeet MAIN =
            plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = water_main", "outside_diameter = 12 in");

    private static List<String> check(String wkt, String... attributes) {
        String[] more = java.util.Arrays.copyOf(attributes, attributes.length + 1);
        more[attributes.length] = "outside_diameter = 6 in";
        return MAIN.with(PIPE, "P-1", wkt, more).check(new TightJoints(), TERMS);
    }

    @Test
    void watertightJointsNearItMeet() {
        assertThat(check("LINESTRING (5 5, 55 5)", "joint_tightness = watertight"))
                .containsExactly("meets P-1 to U-1; its joints are watertight; near it from station 0+00.0 to 0+50.0");
    }

    @Test
    void otherJointsNearItFailWithTheReach() {
        // half of 12 in, 10 ft and half of 6 in: 10.75 ft between centrelines
        assertThat(check("LINESTRING (30 30, 30 3)", "joint_tightness = soil_tight"))
                .containsExactly("fails P-1 to U-1; its joints are soil-tight; near it from station 0+19.2 to 0+27.0");
    }

    @Test
    void jointsThatThePlanDoesNotNameCannotBeTold() {
        assertThat(check("LINESTRING (5 5, 55 5)"))
                .containsExactly("cannot_tell P-1 to U-1; lacks joint tightness of pipe P-1;"
                        + " near it from station 0+00.0 to 0+50.0");
    }

    @Test
    void fartherAwayNothingIsAsked() {
        assertThat(check("LINESTRING (5 10.8, 55 10.8)", "joint_tightness = open"))
                .isEmpty();
        assertThat(check("LINESTRING (5 10.7, 55 10.7)", "joint_tightness = open"))
                .hasSize(1);
    }

    @Test
    void aUtilityOfUnknownKindLeavesItOpenUnlessTheJointsAreTight() {
        PlanInFeet unknown = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "outside_diameter = 12 in");

        assertThat(unknown.with(PIPE, "P-1", "LINESTRING (5 5, 55 5)", "joint_tightness = open")
                        .check(new TightJoints(), TERMS)
                        .get(0))
                .startsWith("cannot_tell P-1 to U-1; lacks kind of utility U-1");
        assertThat(unknown.with(PIPE, "P-1", "LINESTRING (5 5, 55 5)", "joint_tightness = watertight")
                        .check(new TightJoints(), TERMS)
                        .get(0))
                .startsWith("meets P-1 to U-1")
                .doesNotContain("far enough");
    }
}
