package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.junit.jupiter.api.Test;

/** 45 degrees are those of 22 CCR 64572(d). */
class CrossingAngleTest {
    private static final String TERMS = """
            from: utility
            from_where: kind = 'water_main'
            at_least: 45 deg""";

    private static final PlanInFeet MAIN =
            plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)", "kind = water_main");

    private static List<String> check(String wkt) {
        return MAIN.with(PIPE, "P-1", wkt).check(new CrossingAngle(), TERMS);
    }

    @Test
    void aFlatterCrossingFails() {
        assertThat(check("LINESTRING (-20 -10, 20 10)"))
                .containsExactly("fails P-1 to U-1: 26.6 deg; crossing at station 0+22.4");
    }

    @Test
    void exactlyTheAngleMeetsWhicheverWayEitherIsDrawn() {
        assertThat(check("LINESTRING (-20 -20, 20 20)"))
                .containsExactly("meets P-1 to U-1: 45.0 deg; crossing at station 0+28.3");
        assertThat(check("LINESTRING (20 -20, -20 20)"))
                .containsExactly("meets P-1 to U-1: 45.0 deg; crossing at station 0+28.3");
        assertThat(check("LINESTRING (20 20, -20 -20)"))
                .containsExactly("meets P-1 to U-1: 45.0 deg; crossing at station 0+28.3");
    }

    @Test
    void aSquareCrossingMeets() {
        assertThat(check("LINESTRING (0 -20, 0 20)"))
                .containsExactly("meets P-1 to U-1: 90.0 deg; crossing at station 0+20.0");
    }

    @Test
    void aPipeThatLiesOnTheLineHasNoAngle() {
        assertThat(check("LINESTRING (0 0, 20 0)"))
                .allSatisfy(line -> assertThat(line).startsWith("fails P-1 to U-1: 0.0 deg"));
    }

    @Test
    void aPipeThatDoesNotCrossHasNothingToMeasure() {
        assertThat(check("LINESTRING (0 1, 20 1)")).isEmpty();
    }

    @Test
    void aFlatCrossingWithAUtilityOfUnknownKindLeavesItOpen() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)")
                .with(PIPE, "P-1", "LINESTRING (-20 -10, 20 10)");

        assertThat(plan.check(new CrossingAngle(), TERMS))
                .containsExactly(
                        "cannot_tell P-1 to U-1: 26.6 deg; lacks kind of utility U-1; crossing at station 0+22.4");
    }

    @Test
    void aSquareCrossingMeetsWhateverIsCrossed() {
        PlanInFeet plan =
                plan().with(UTILITY, "U-1", "LINESTRING (-100 0, 200 0)").with(PIPE, "P-1", "LINESTRING (0 -20, 0 20)");

        assertThat(plan.check(new CrossingAngle(), TERMS))
                .containsExactly("meets P-1 to U-1: 90.0 deg; crossing at station 0+20.0");
    }

    /** The angle of two lines through one place is the difference of their directions, folded into a right angle. */
    @Property(tries = 200)
    void theAngleIsTheDifferenceOfTheDirections(
            @ForAll @DoubleRange(min = 0, max = 360) double one,
            @ForAll @DoubleRange(min = 0, max = 360) double other) {
        double between = Math.abs(one - other) % 180;
        double folded = Math.min(between, 180 - between);
        net.jqwik.api.Assume.that(folded > 1 && Math.abs(folded - 45) > 0.01);

        Outcome outcome = plan().with(UTILITY, "U-1", through(one), "kind = water_main")
                .with(PIPE, "P-1", through(other))
                .observe(new CrossingAngle(), TERMS)
                .get(0)
                .outcome();

        assertThat(outcome).isEqualTo(folded >= 45 ? Outcome.MEETS : Outcome.FAILS);
    }

    private static String through(double degrees) {
        double x = 30 * Math.cos(Math.toRadians(degrees));
        double y = 30 * Math.sin(Math.toRadians(degrees));
        return "LINESTRING (" + -x + " " + -y + ", " + x + " " + y + ")";
    }
}
