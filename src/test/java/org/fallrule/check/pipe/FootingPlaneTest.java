package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Measured;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** The plane of 45 degrees after IPC 307, IRC P2604.4 and UPC 314.1: as far away as the trench is deeper than the footing. */
class FootingPlaneTest {
    private static final String AT_45 = """
            to: building
            angle: 45 deg
            look_within: 10 ft""";

    /** A house whose lower wall is the line y = 0. */
    private static final String HOUSE = "POLYGON ((0 0, 40 0, 40 30, 0 30, 0 0))";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new FootingPlane(), terms);
    }

    private static PlanInFeet house(String... attributes) {
        return plan().with(BUILDING, "B-1", HOUSE, attributes);
    }

    /** The footing's bottom at 8 ft. */
    private static PlanInFeet house() {
        return house("footing_bottom = 8 ft");
    }

    /** A level pipe of 12 in beside the lower wall: its edge half a foot nearer than its axis, its bottom the invert. */
    private static PlanInFeet beside(PlanInFeet plan, String axis, String invert, String... more) {
        String[] attributes = Stream.concat(
                        Stream.of(
                                "diameter = 12 in", "invert_up = " + invert + " ft", "invert_down = " + invert + " ft"),
                        Stream.of(more))
                .toArray(String[]::new);
        String y = axis.startsWith("-") ? axis.substring(1) : "-" + axis;
        return plan.with(PIPE, "P-1", "LINESTRING (5 " + y + ", 35 " + y + ")", attributes)
                .with(OUTFALL, "OF-1", "POINT (35 " + y + ")");
    }

    private static String line(String outcome, String gap, String level) {
        return outcome + " P-1 to B-1: " + gap + " ft; at station 0+00.0; the trench's bottom lies " + level
                + " the footing's";
    }

    @Test
    void aTrenchFartherAwayThanItIsDeeperThanTheFootingMeets() {
        assertThat(check(beside(house(), "4.5", "5"), AT_45)).containsExactly(line("meets", "4.00", "3.00 ft below"));
    }

    @Test
    void aTrenchExactlyOnThePlaneMeets() {
        assertThat(check(beside(house(), "3.5", "5"), AT_45)).containsExactly(line("meets", "3.00", "3.00 ft below"));
    }

    @Test
    void aTrenchInsideOfThePlaneFails() {
        assertThat(check(beside(house(), "3", "5"), AT_45)).containsExactly(line("fails", "2.50", "3.00 ft below"));
    }

    /** tan 30 degrees = 0.57735: 3 ft below want 5.196 ft. */
    @Test
    void aFlatterPlaneReachesFarther() {
        String at30 = AT_45.replace("45", "30");

        assertThat(check(beside(house(), "5.6", "5"), at30)).containsExactly(line("fails", "5.10", "3.00 ft below"));
        assertThat(check(beside(house(), "5.7", "5"), at30)).containsExactly(line("meets", "5.20", "3.00 ft below"));
    }

    @Test
    void aTrenchAboveTheFootingMayTouchTheWall() {
        assertThat(check(beside(house(), "0.5", "8.25"), AT_45))
                .containsExactly(line("meets", "0.00", "0.25 ft above"));
    }

    @Test
    void aDeepPipeUnderTheBuildingFails() {
        assertThat(check(beside(house(), "-5", "6"), AT_45)).containsExactly(line("fails", "0.00", "2.00 ft below"));
    }

    @Test
    void theTrenchIsWiderAndDeeperThanThePipe() {
        assertThat(check(beside(house(), "3.5", "5"), AT_45 + "\ntrench_beside: 6 in"))
                .containsExactly(line("fails", "2.50", "3.00 ft below"));
        assertThat(check(beside(house(), "3.5", "5"), AT_45 + "\nbedding: 6 in"))
                .containsExactly(line("fails", "3.00", "3.50 ft below"));
    }

    /**
     * Past a corner 4 ft away and falling by 0.6, the margin sqrt(4^2 + s^2) - 0.6 s - ... is least at s = 4 (0.6 / 0.8) = 3 ft
     * beyond the foot of the perpendicular, where the axis is 5 ft from the corner: neither at an end nor beside the corner.
     */
    @Test
    void betweenStationsTheNearestPlaceIsFoundExactly() {
        PlanInFeet plan = house().with(
                        PIPE,
                        "P-1",
                        "LINESTRING (-5.656854249492381 0, 0 -5.656854249492381)",
                        "diameter = 12 in",
                        "invert_up = 8.4 ft",
                        "invert_down = 3.6 ft")
                .with(OUTFALL, "OF-1", "POINT (0 -5.656854249492381)");

        assertThat(check(plan, AT_45))
                .containsExactly(
                        "meets P-1 to B-1: 4.50 ft; at station 0+07.0; the trench's bottom lies 3.80 ft below the footing's");
    }

    @Test
    void aPipeThatLeavesTheWallAndDivesIsHeldWhereItIsFarthestIn() {
        PlanInFeet plan = house().with(
                        PIPE,
                        "P-1",
                        "LINESTRING (20 0, 20 -10)",
                        "diameter = 12 in",
                        "invert_up = 8 ft",
                        "invert_down = -12 ft")
                .with(OUTFALL, "OF-1", "POINT (20 -10)");

        assertThat(check(plan, AT_45))
                .containsExactly("fails P-1 to B-1: 9.50 ft; at station 0+10.0; the trench's bottom lies 20.00 ft below"
                        + " the footing's");
    }

    @Test
    void theFootingMayBeGivenByItsDepthBelowTheGroundAtTheWall() {
        String slope = "-20 -20 10, 60 -20 10, 60 50 10, -20 50 10";

        assertThat(check(beside(house("footing_depth = 24 in").spots(slope), "3.5", "5"), AT_45))
                .containsExactly(line("meets", "3.00", "3.00 ft below"));
        assertThat(check(beside(house("footing_depth = 18 in").spots(slope), "3.5", "5"), AT_45))
                .containsExactly(line("fails", "3.00", "3.50 ft below"));
    }

    @Test
    void aFootingByDepthWithoutGroundAtTheWallLeavesItOpen() {
        assertThat(check(beside(house("footing_depth = 24 in"), "3.5", "5"), AT_45))
                .containsExactly("cannot_tell P-1 to B-1; lacks ground at the edge of building B-1 beside pipe P-1");
    }

    /** Ground is given under the west end of the wall alone, up to the line from (20 -20) to (20 50). */
    @Test
    void aFootingByDepthWithGroundAtAPartOfTheWallMeetsOnlyWhereTheTrenchKeepsAwayFromTheRest() {
        PlanInFeet house = house("footing_depth = 24 in").spots("-20 -20 10, 20 -20 10, 20 50 10, -20 50 10");
        String lacks = "; lacks ground at the edge of building B-1 beside pipe P-1; at station";

        assertThat(check(beside(house, "3.5", "5"), AT_45))
                .singleElement()
                .asString()
                .startsWith("cannot_tell P-1 to B-1: 3.00 ft" + lacks);
        assertThat(check(beside(house, "3", "5"), AT_45))
                .singleElement()
                .asString()
                .startsWith("fails P-1 to B-1: 2.50 ft");
        assertThat(check(
                        house.with(
                                        PIPE,
                                        "P-1",
                                        "LINESTRING (5 -3.5, 15 -3.5)",
                                        "diameter = 12 in",
                                        "invert_up = 5 ft",
                                        "invert_down = 5 ft")
                                .with(OUTFALL, "OF-1", "POINT (15 -3.5)"),
                        AT_45))
                .containsExactly(line("meets", "3.00", "3.00 ft below"));
    }

    @Test
    void aFootingOfUnknownDepthLeavesItOpenWhereItCouldMatter() {
        assertThat(check(beside(plan().with(BUILDING, "B-1", HOUSE), "3.5", "5"), AT_45))
                .containsExactly(
                        "cannot_tell B-1; lacks how deep the footing of building B-1 lies; within 10 ft of pipe P-1");
    }

    @Test
    void exactlyAtTheDistanceToLookWithinItStillMatters() {
        assertThat(check(beside(plan().with(BUILDING, "B-1", HOUSE), "10.5", "5"), AT_45))
                .hasSize(1);
    }

    @Test
    void aFootingOfUnknownDepthFarAwayDoesNotMatter() {
        assertThat(check(beside(plan().with(BUILDING, "B-1", HOUSE), "10.6", "5"), AT_45))
                .isEmpty();
    }

    @Test
    void aDeepTrenchFailsEvenFartherAwayThanIsLookedForFootings() {
        assertThat(check(beside(house(), "12.5", "-5"), AT_45))
                .containsExactly(line("fails", "12.00", "13.00 ft below"));
    }

    @Test
    void withoutInvertsItCannotBeTold() {
        PlanInFeet plan = house().with(PIPE, "P-1", "LINESTRING (5 -3, 35 -3)", "diameter = 4 in", "invert_up = 5 ft");

        assertThat(check(plan, AT_45))
                .containsExactly("cannot_tell P-1 to B-1; lacks the downstream invert of pipe P-1");
    }

    @Test
    void onlyTheBuildingsChosenCount() {
        assertThat(check(
                        beside(house("footing_bottom = 8 ft", "kind = shed"), "1", "5"),
                        AT_45 + "\nto_where: kind <> 'shed'"))
                .isEmpty();
        assertThat(check(beside(house(), "1", "5"), AT_45 + "\nto_where: kind <> 'shed'"))
                .containsExactly("cannot_tell P-1 to B-1: 0.50 ft; lacks kind of building B-1; at station 0+00.0; the"
                        + " trench's bottom lies 3.00 ft below the footing's");
    }

    @Test
    void everyBuildingTooNearIsTold() {
        PlanInFeet plan =
                house().with(BUILDING, "B-2", "POLYGON ((0 -6, 40 -6, 40 -30, 0 -30, 0 -6))", "footing_bottom = 9 ft");

        assertThat(check(beside(plan, "3", "5"), AT_45)).hasSize(2).allMatch(line -> line.startsWith("fails P-1"));
        assertThat(check(beside(plan, "3", "7"), AT_45))
                .singleElement()
                .asString()
                .startsWith("meets P-1 to B-2");
    }

    @Test
    void withinTheAccuracyOfTheSurveyItIsBorderline() {
        assertThat(check(beside(house(), "3.55", "5").surveyedTo(0.1, 0.05), AT_45))
                .containsExactly(line("borderline", "3.05", "3.00 ft below"));
        assertThat(check(beside(house(), "0.5", "8.25").surveyedTo(0.1, 0.05), AT_45))
                .containsExactly(line("meets", "0.00", "0.25 ft above"));
    }

    /** A plane of 15 degrees reaches 3.73 ft for a foot of height, so heights that are out by little move it far. */
    @Test
    void aFlatPlaneIsAsUncertainAtTheLevelOfTheFootingAsBelow() {
        String at15 = AT_45.replace("45", "15");

        assertThat(check(beside(house(), "0.65", "8").surveyedTo(0.1, 0.05), at15))
                .containsExactly(line("borderline", "0.15", "0.00 ft above"));
        assertThat(check(beside(house(), "1.5", "8").surveyedTo(0.1, 0.05), at15))
                .containsExactly(line("meets", "1.00", "0.00 ft above"));
    }

    /** The distance asked is the depth below the footing over the tangent, wherever the plan lies and however it is turned. */
    @Property(tries = 60)
    void movingAndTurningThePlanChangesNothing(
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn, @ForAll @DoubleRange(min = 1, max = 7) double axis) {
        PlanInFeet plan = beside(house(), Double.toString(axis), "5")
                .moved(place -> new Coordinate(
                        700 + place.x * Math.cos(turn) - place.y * Math.sin(turn),
                        -90 + place.x * Math.sin(turn) + place.y * Math.cos(turn),
                        place.getZ()));
        Measured seen =
                plan.observe(new FootingPlane(), AT_45).get(0).measured().orElseThrow();

        assertThat(seen.value().si() / 0.3048).isCloseTo(axis - 0.5, within(1e-6));
        assertThat(seen.limit().orElseThrow().value().quantity().si() / 0.3048).isCloseTo(3, within(1e-6));
    }
}
