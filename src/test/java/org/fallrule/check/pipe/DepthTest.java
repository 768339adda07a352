package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** Depths are worked out by hand; a greatest depth of a yard drain is common practice and has no published source. */
class DepthTest {
    private static final String AT_MOST_5_FT = "at_most: 5 ft";

    /** Ground at 10 ft, flat. */
    private static final String FLAT = "-20 -20 10, 120 -20 10, 120 20 10, -20 20 10";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Depth(), terms);
    }

    private static PlanInFeet pipe(String up, String down, String... more) {
        String[] attributes = Stream.concat(
                        Stream.of("diameter = 4 in", "invert_up = " + up + " ft", "invert_down = " + down + " ft"),
                        Stream.of(more))
                .toArray(String[]::new);
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", attributes)
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .empty(DRIVE)
                .empty(WALK);
    }

    @Test
    void aTrenchShallowerThanTheLimitMeetsIt() {
        assertThat(check(pipe("7", "6").spots(FLAT), AT_MOST_5_FT))
                .containsExactly("meets P-1: 4.00 ft; at station 1+00.0");
    }

    @Test
    void aTrenchExactlyAsDeepAsTheLimitMeetsIt() {
        assertThat(check(pipe("7", "5").spots(FLAT), AT_MOST_5_FT))
                .containsExactly("meets P-1: 5.00 ft; at station 1+00.0");
    }

    @Test
    void aDeeperTrenchFailsWhereItIsDeepest() {
        assertThat(check(pipe("7", "4.5").spots(FLAT), AT_MOST_5_FT))
                .containsExactly("fails P-1: 5.50 ft; at station 1+00.0");
    }

    @Test
    void beddingIsDugBelowThePipe() {
        assertThat(check(pipe("7", "5").spots(FLAT), "at_most: 5 ft\nbedding: 6 in"))
                .containsExactly("fails P-1: 5.50 ft; at station 1+00.0");
    }

    /** 4.5 in outside around 4 in nominal: the wall of a quarter inch lies below the invert. */
    @Test
    void theWallOfThePipeLiesBelowItsInvert() {
        assertThat(check(pipe("7", "5", "outside_diameter = 4.5 in").spots(FLAT), "at_most: 60 in"))
                .containsExactly("fails P-1: 60.3 in; at station 1+00.0");
    }

    @Test
    void aPipeThatComesOutOfTheGroundHasLessThanNoDepth() {
        assertThat(check(pipe("9", "11").spots(FLAT), "at_least: 6 in"))
                .containsExactly("fails P-1: -12.0 in; at station 1+00.0");
    }

    @Test
    void theDeepestPlaceMayLieUnderAHillBetweenTheEnds() {
        String hill = "-20 -20 10, 120 -20 10, 120 20 10, -20 20 10, 40 -20 13, 40 20 13";

        assertThat(check(pipe("8", "8").spots(hill), AT_MOST_5_FT))
                .containsExactly("meets P-1: 5.00 ft; at station 0+40.0");
        assertThat(check(pipe("8", "7").spots(hill), AT_MOST_5_FT))
                .containsExactly("fails P-1: 5.40 ft; at station 0+40.0");
    }

    @Test
    void eachSurfaceIsHeldAgainstItsOwnLimit() {
        PlanInFeet plan =
                pipe("7", "6").spots(FLAT).with(DRIVE, "D-1", "POLYGON ((40 -10, 60 -10, 60 10, 40 10, 40 -10))");

        assertThat(check(plan, "at_most: 3 ft when above = 'drive'\nat_most: 5 ft"))
                .containsExactly("meets P-1: 4.00 ft; at station 1+00.0", "fails P-1: 3.60 ft; at station 0+60.0");
    }

    @Test
    void whereNothingIsAskedNothingIsSaid() {
        assertThat(check(pipe("7", "1").spots(FLAT), "at_most: none")).isEmpty();
    }

    @Test
    void withoutAnInvertItCannotBeTold() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "diameter = 4 in", "invert_up = 7 ft")
                .spots(FLAT);

        assertThat(check(plan, AT_MOST_5_FT))
                .containsExactly("cannot_tell P-1; lacks the downstream invert of pipe P-1");
    }

    @Test
    void withoutADiameterItCannotBeTold() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "invert_up = 7 ft", "invert_down = 6 ft")
                .spots(FLAT);

        assertThat(check(plan, AT_MOST_5_FT)).containsExactly("cannot_tell P-1; lacks diameter of pipe P-1");
    }

    @Test
    void whereTheGroundIsNotKnownItCannotBeTold() {
        PlanInFeet plan = pipe("7", "6").spots("-20 -20 10, 80 -20 10, 80 20 10, -20 20 10");

        assertThat(check(plan, AT_MOST_5_FT))
                .containsExactly(
                        "meets P-1: 3.80 ft; at station 0+80.0",
                        "cannot_tell P-1; lacks ground above pipe P-1 from station 0+80.0 to 1+00.0");
    }

    @Test
    void withinTheAccuracyOfTheSurveyOfTheLimitItIsBorderline() {
        assertThat(check(pipe("7", "5.02").spots(FLAT).surveyedTo(0.1, 0.05), AT_MOST_5_FT))
                .containsExactly("borderline P-1: 4.98 ft; at station 1+00.0");
    }

    @Property(tries = 20)
    void movingAndTurningThePlanChangesNothing(@ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
        PlanInFeet plan = pipe("7", "4.5").spots(FLAT);

        assertThat(check(plan.moved(place -> turned(place, turn)), AT_MOST_5_FT))
                .isEqualTo(check(plan, AT_MOST_5_FT));
    }

    private static Coordinate turned(Coordinate place, double turn) {
        return new Coordinate(
                120 + place.x * Math.cos(turn) - place.y * Math.sin(turn),
                -40 + place.x * Math.sin(turn) + place.y * Math.cos(turn),
                place.getZ());
    }
}
