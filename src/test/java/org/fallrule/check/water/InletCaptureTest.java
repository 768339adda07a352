package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRAINAGE_AREA;
import static org.fallrule.site.Role.INLET;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/** HEC-22, third edition, equations 4-26 and 4-27 (from memory), by hand for a grate of 1 by 1 ft. */
class InletCaptureTest {
    private static final String[] GRATE = {
        "kind = basin", "grate_length = 12 in", "grate_width = 12 in", "grate_open_area = 0.5 sq ft"
    };

    private static PlanInFeet yard(double squareFeet, String... basin) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(INLET, "CB-1", "POINT (0 0)", basin)
                .with(
                        DRAINAGE_AREA,
                        "DA-1",
                        "POLYGON ((0 0, " + squareFeet + " 0, " + squareFeet + " 1, 0 1, 0 0))",
                        "drains_to = CB-1",
                        "surface = drive");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new InletCapture(), terms);
    }

    @Test
    void aLittleWaterComesOverTheEdgesOfTheGrate() {
        // weir over 4 ft: (0.2 / (3 x 4))^(2/3) = 0.0652 ft
        assertThat(check(yard(1440, GRATE), "at_most: 3 in\nclogged: 0"))
                .containsExactly("meets CB-1: 0.8 in; design flow 0.200 cfs");
    }

    @Test
    void muchWaterIsHeldBackByTheOpenings() {
        // half clogged: 0.25 sq ft open, (1 / (0.67 x 0.25))^2 / 64.35 = 0.554 ft
        assertThat(check(yard(7200, GRATE), "at_most: 3 in\nclogged: 0.5"))
                .containsExactly("fails CB-1: 6.6 in; design flow 1.000 cfs");
    }

    @Test
    void aDepthOfExactlyWhatIsAllowedMeets() {
        double feet = 3 / 12.0;
        double flow = 0.67 * 0.25 * Math.sqrt(2 * 32.174 * feet);
        assertThat(check(yard(7200 * flow, GRATE), "at_most: 3 in\nclogged: 0.5"))
                .singleElement()
                .asString()
                .startsWith("meets CB-1: 3.0 in");
    }

    @Test
    void aGrateThatIsAllCloggedTakesNothingIn() {
        assertThat(check(yard(1440, GRATE), "at_most: 3 in\nclogged: 1"))
                .containsExactly("fails CB-1; design flow 0.200 cfs");
    }

    @Test
    void whatThePlanDoesNotSayOfTheGrateIsNamed() {
        assertThat(check(yard(1440, "kind = basin", "grate_length = 1 ft"), "at_most: 3 in\nclogged: 0"))
                .containsExactly("cannot_tell CB-1; lacks width of the grate, of inlet CB-1; lacks clear area of all"
                        + " openings of the grate together, as its maker states it, of inlet CB-1");
    }

    @Test
    void openingsLargerThanTheGrateAreAskedAbout() {
        assertThat(check(
                        yard(
                                1440,
                                "kind = basin",
                                "grate_length = 12 in",
                                "grate_width = 12 in",
                                "grate_open_area = 50 sq ft"),
                        "at_most: 3 in\nclogged: 0"))
                .singleElement()
                .asString()
                .startsWith("cannot_tell CB-1; lacks the clear area of the grate of inlet CB-1");
    }

    @Test
    void aFrameWithoutBarsIsOpenAllOver() {
        // weir over 22 in, (0.2 / (3 x 1.8333))^(2/3) = 0.1097 ft; 4 in by 7 in are a hair less than 28 sq in by
        // computer
        assertThat(check(
                        yard(
                                1440,
                                "kind = basin",
                                "grate_length = 4 in",
                                "grate_width = 7 in",
                                "grate_open_area = 28 sq in"),
                        "at_most: 3 in\nclogged: 0"))
                .containsExactly("meets CB-1: 1.3 in; design flow 0.200 cfs");
    }

    /** Ground that falls to the basin from a square of 40 ft, of which the plan draws only a strip. */
    @Test
    void whereThePlanDrawsLessThanTheGroundDrainsTheReaderIsTold() {
        PlanInFeet bowl = yard(144, GRATE)
                .spots("-20 -20 101, 20 -20 101, 20 20 101, -20 20 101, 0 0 100, -60 -60 99,"
                        + " 60 -60 99, 60 60 99, -60 60 99");

        assertThat(check(bowl, "at_most: 3 in\nclogged: 0"))
                .singleElement()
                .asString()
                .matches("meets CB-1: 0[.]2 in; counted are the 144 sq ft that the plan draws for it; over the ground"
                        + " given 1[456]\\d\\d sq ft drain to it; design flow 0[.]020 cfs");
    }

    @Test
    void downspoutsHaveNoGrate() {
        assertThat(check(yard(1440, "kind = downspout"), "at_most: 3 in\nclogged: 0"))
                .isEmpty();
    }
}
