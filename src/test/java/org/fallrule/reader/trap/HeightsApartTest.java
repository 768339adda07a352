package org.fallrule.reader.trap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeightsApartTest {
    private static final PlanInFeet GROUND = plan().spots("0 0 640, 40 0 639.5, 80 0 639");

    private static PlanInFeet pipe(double up, double down) {
        return GROUND.with(
                Role.PIPE,
                "P-1",
                "LINESTRING (0 0, 80 0)",
                "invert_up = " + up + " ft",
                "invert_down = " + down + " ft");
    }

    @Test
    void ellipsoidHeightsAmongThoseOfTheDatumAreTold() {
        assertThat(Read.says(new HeightsApart(), pipe(531, 530)))
                .containsExactly(
                        "pipe.shp: its inverts and rims lie about 109 ft below the ground of the plan: is one of the"
                                + " two in ellipsoid heights, as a GNSS receiver gives them, or do depths stand where elevations"
                                + " should? Bring both to one datum, and say datum: … where they are not");
    }

    @Test
    void metresReadAsFeetAreTold() {
        assertThat(Read.says(new HeightsApart(), pipe(194.5, 194.2)))
                .singleElement()
                .asString()
                .contains("is one of the two in metres and read in feet?");
    }

    @Test
    void depthsInPlaceOfElevationsAreTold() {
        assertThat(Read.says(new HeightsApart(), pipe(2, 2.5)))
                .singleElement()
                .asString()
                .contains("Do depths stand where elevations should?");
    }

    @ParameterizedTest(name = "inverts of {0} ft under ground at 640 ft are silent")
    @ValueSource(doubles = {638, 620, 641})
    void aDrainInTheGroundIsSilent(double invert) {
        assertThat(Read.says(new HeightsApart(), pipe(invert, invert - 1))).isEmpty();
    }

    @Test
    void withoutGroundOrHeightsItIsSilent() {
        assertThat(Read.says(new HeightsApart(), GROUND.with(Role.PIPE, "P-1", "LINESTRING (0 0, 80 0)")))
                .isEmpty();
        assertThat(Read.says(
                        new HeightsApart(),
                        plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 80 0)", "invert_up = 12 ft")))
                .isEmpty();
    }
}
