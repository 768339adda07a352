package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** 8 ft are those of 22 CCR 64572; nominal lengths of PVC pipe are 14 and 20 ft (common practice). */
class JointDistanceTest {
    private static final String TERMS = """
            from: utility
            from_where: kind = 'water_main'
            at_least: 8 ft
            size_if_unknown: 12 in""";

    /** A water main of 12 in outside along the x axis. */
    private static final PlanInFeet MAIN =
            plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "kind = water_main", "outside_diameter = 12 in");

    private static List<String> check(String wkt, String... attributes) {
        return MAIN.with(PIPE, "P-1", wkt, attributes).check(new JointDistance(), TERMS);
    }

    @Test
    void aWholeLengthCentredKeepsItsJointsHalfItsLengthAway() {
        // 10 ft less half of 12 in; laid from the upstream end the joint at 20 ft lies on the main
        assertThat(check("LINESTRING (0 -20, 0 30)", "laying_length = 20 ft"))
                .containsExactly("meets P-1 to U-1: 9.50 ft; with a whole length of 20 ft centred on the crossing; laid"
                        + " from the upstream end a joint comes -0.50 ft near; crossing at station 0+20.0");
    }

    @Test
    void aLengthThatIsTooShortFailsWhereverItIsLaid() {
        assertThat(check("LINESTRING (0 -20, 0 30)", "laying_length = 14 ft"))
                .containsExactly("fails P-1 to U-1: 6.50 ft; crossing at station 0+20.0");
    }

    @Test
    void exactlyTheDistanceMeets() {
        assertThat(check("LINESTRING (0 -20, 0 30)", "laying_length = 17 ft").get(0))
                .startsWith("meets P-1 to U-1: 8.00 ft");
    }

    @Test
    void theEndOfThePipeIsAJointToo() {
        assertThat(check("LINESTRING (0 -20, 0 5)", "laying_length = 20 ft"))
                .containsExactly("fails P-1 to U-1: 4.50 ft; crossing at station 0+20.0");
    }

    @Test
    void aBendIsAJointTooAndAStraightVertexIsNone() {
        assertThat(check("LINESTRING (0 -20, 0 6, 30 30)", "laying_length = 20 ft"))
                .containsExactly("fails P-1 to U-1: 5.50 ft; crossing at station 0+20.0");
        assertThat(check("LINESTRING (0 -20, 0 6, 0 30)", "laying_length = 20 ft")
                        .get(0))
                .startsWith("meets P-1 to U-1: 9.50 ft");
    }

    @Test
    void withoutALengthItCannotBeTold() {
        assertThat(check("LINESTRING (0 -20, 0 30)"))
                .containsExactly("cannot_tell P-1 to U-1: 19.50 ft; lacks length of one piece of pipe P-1;"
                        + " crossing at station 0+20.0");
    }

    @Test
    void withoutALengthAnEndThatIsTooNearFailsAllTheSame() {
        assertThat(check("LINESTRING (0 -5, 0 30)"))
                .containsExactly("fails P-1 to U-1: 4.50 ft; crossing at station 0+05.0");
    }

    @Test
    void aPipeThatDoesNotCrossHasNoJointToKeepAway() {
        assertThat(check("LINESTRING (0 2, 0 30)", "laying_length = 14 ft")).isEmpty();
    }

    @Test
    void aUtilityOfUnknownKindLeavesItOpen() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "outside_diameter = 12 in")
                .with(PIPE, "P-1", "LINESTRING (0 -5, 0 30)");

        assertThat(plan.check(new JointDistance(), TERMS))
                .containsExactly(
                        "cannot_tell P-1 to U-1: 4.50 ft; lacks kind of utility U-1;" + " crossing at station 0+05.0");
    }

    @Test
    void aPipeThatBeginsNearerThanHalfALengthHasItsFirstJointThere() {
        // 4 ft less half of 12 in, though 10 ft of the length lie beyond the crossing
        assertThat(check("LINESTRING (0 -4, 0 30)", "laying_length = 20 ft"))
                .containsExactly("fails P-1 to U-1: 3.50 ft; crossing at station 0+04.0");
    }

    @Test
    void ofALengthCentredTheEndThatABendBringsNearerCounts() {
        // the upstream half turns aside 2 ft before the main and runs beside it; less half of 12 in
        assertThat(check("LINESTRING (-30 -2, 0 -2, 0 30)", "laying_length = 20 ft"))
                .containsExactly("fails P-1 to U-1: 1.50 ft; crossing at station 0+32.0");
    }
}
