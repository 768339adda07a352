package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.WALK;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Observation;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.AffineTransformation;

class CoverTest {
    private static final String LEVEL_PIPE = "LINESTRING Z (0 0 98, 100 0 98)";
    private static final String BY_SURFACE = """
            at_least: 12 in when above = 'drive'
            at_least: 9 in when above = 'walk'
            at_least: 6 in""";

    /** The last ten feet of pipe before a daylight outfall need no cover; common practice without a published source. */
    private static final String LAST_RUN_FREE = """
            at_least: none when to_outfall_ft <= 10
            at_least: 6 in""";

    /** Ground from x = -10 to x = 110, level across, at the given height at either end, without walks and drives. */
    private static PlanInFeet ground(String from, String to) {
        return plan().absent(WALK)
                .absent(DRIVE)
                .spots("-10 -20 %1$s, -10 20 %1$s, 110 -20 %2$s, 110 20 %2$s".formatted(from, to));
    }

    private static PlanInFeet levelGround(String feet) {
        return ground(feet, feet);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Cover(), terms);
    }

    /** A pipe of 12 in outside with its top at 99 ft, and ground at the given height. */
    private static PlanInFeet pipeUnder(String ground) {
        return levelGround(ground).with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");
    }

    @Test
    void lessCoverThanAskedFails() {
        assertThat(check(pipeUnder("99.4"), "at_least: 6 in")).containsExactly("fails P-1: 4.8 in; at station 0+00.0");
    }

    @Test
    void coverExactlyAtTheLimitMeetsIt() {
        assertThat(check(pipeUnder("99.5"), "at_least: 6 in")).containsExactly("meets P-1: 6.0 in; at station 0+00.0");
    }

    @Test
    void moreCoverThanAskedMeets() {
        assertThat(check(pipeUnder("101"), "at_least: 6 in")).containsExactly("meets P-1: 24.0 in; at station 0+00.0");
    }

    @Test
    void aPipeThatStandsOutOfTheGroundHasLessThanNoCover() {
        assertThat(check(pipeUnder("98.5"), "at_least: 6 in")).containsExactly("fails P-1: -6.0 in; at station 0+00.0");
    }

    @Test
    void moreCoverThanTheGreatestFails() {
        assertThat(check(pipeUnder("103"), "at_most: 4 ft")).containsExactly("meets P-1: 4.00 ft; at station 0+00.0");
        assertThat(check(pipeUnder("104"), "at_most: 4 ft")).containsExactly("fails P-1: 5.00 ft; at station 0+00.0");
    }

    /** Outside 4.215 in, inside 4 in: the wall of 0.1075 in lies under the invert, and the top 4.1075 in above it. */
    @Test
    void coverIsToTheOutsideTopOfThePipe() {
        PlanInFeet plan = levelGround("99").with(PIPE, "P-1", LEVEL_PIPE, "diameter = 4 in", "material = pvc_sdr35");

        assertThat(check(plan, "at_least: 6 in")).containsExactly("meets P-1: 7.9 in; at station 0+00.0");
    }

    @Test
    void whereTheGroundFallsTheLeastCoverIsAtItsLowEnd() {
        PlanInFeet plan = ground("102", "99").with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        // at x = 100 the ground stands at 102 - 3 * 110 / 120 = 99.25
        assertThat(check(plan, "at_least: 6 in")).containsExactly("fails P-1: 3.0 in; at station 1+00.0");
    }

    @Test
    void aSwaleBetweenTheSpotsAtTheEndsIsFound() {
        PlanInFeet plan = levelGround("102")
                .spots("30 -20 99.2, 30 20 99.2")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, "at_least: 6 in")).containsExactly("fails P-1: 2.4 in; at station 0+30.0");
    }

    /** The ground falls toward y = -20, and the pipe dips that way at its bend, far from any spot. */
    @Test
    void theLeastCoverAtABendBetweenSpotsIsFound() {
        PlanInFeet plan = plan().absent(WALK)
                .absent(DRIVE)
                .spots("-10 -20 99, -10 20 103, 110 -20 99, 110 20 103")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 10, 40 -17, 100 10)",
                        "outside_diameter = 12 in",
                        "invert_up = 98 ft",
                        "invert_down = 98 ft");

        // at the bend the ground stands at 99 + 4 * 3 / 40 = 99.3; it is sqrt(40^2 + 27^2) = 48.3 ft along
        assertThat(check(plan, "at_least: 6 in")).containsExactly("fails P-1: 3.6 in; at station 0+48.3");
    }

    @Test
    void eachSurfaceAboveHasItsOwnLimit() {
        PlanInFeet plan = ground("100.2", "99")
                .with(DRIVE, "D-1", "POLYGON ((20 -10, 30 -10, 30 10, 20 10, 20 -10))")
                .with(WALK, "W-1", "POLYGON ((60 -10, 64 -10, 64 10, 60 10, 60 -10))")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        // the ground falls by 0.01 ft to the foot from 100.1 at x = 0
        assertThat(check(plan, BY_SURFACE))
                .containsExactly(
                        "fails P-1: 1.2 in; at station 1+00.0", // lawn
                        "fails P-1: 9.6 in; at station 0+30.0", // the low edge of the drive
                        "fails P-1: 5.5 in; at station 0+64.0"); // the low edge of the walk
    }

    @Test
    void theSurfaceIsNamed() {
        PlanInFeet plan = pipeUnder("101").with(DRIVE, "D-1", "POLYGON ((20 -10, 30 -10, 30 10, 20 10, 20 -10))");

        assertThat(plan.observe(new Cover(), BY_SURFACE))
                .extracting(seen -> seen.measured().orElseThrow().of())
                .containsExactly("cover under lawn", "cover under drive");
    }

    @Test
    void aDriveNarrowerThanAnyStepIsNotMissed() {
        PlanInFeet plan = pipeUnder("99.8").with(DRIVE, "D-1", "POLYGON ((20 -9, 20.1 -9, 20.1 9, 20 9, 20 -9))");

        assertThat(check(plan, BY_SURFACE))
                .containsExactly("meets P-1: 9.6 in; at station 0+00.0", "fails P-1: 9.6 in; at station 0+20.0");
    }

    @Test
    void aHoleInADriveIsLawn() {
        PlanInFeet plan = pipeUnder("99.8")
                .with(
                        DRIVE,
                        "D-1",
                        "POLYGON ((-5 -10, 105 -10, 105 10, -5 10, -5 -10), (40 -5, 40 5, 60 5, 60 -5, 40 -5))");

        assertThat(check(plan, BY_SURFACE))
                .containsExactly("fails P-1: 9.6 in; at station 0+00.0", "meets P-1: 9.6 in; at station 0+40.0");
    }

    @Test
    void withoutAWalkLayerWhatLiesAboveIsNotKnown() {
        PlanInFeet plan = plan().absent(DRIVE)
                .spots("-10 -20 101, -10 20 101, 110 -20 101, 110 20 101")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, BY_SURFACE))
                .containsExactly("cannot_tell P-1; lacks what lies above pipe P-1 from station 0+00.0 to 1+00.0");
        assertThat(plan.observe(new Cover(), BY_SURFACE).get(0).missing().get(0).settledBy())
                .isEqualTo("supply the walk layer, or list walk under absent in site.yaml if there is none");
    }

    @Test
    void withoutAWalkLayerTheDriveIsKnownAllTheSame() {
        PlanInFeet plan = plan().with(DRIVE, "D-1", "POLYGON ((20 -10, 30 -10, 30 10, 20 10, 20 -10))")
                .spots("-10 -20 101, -10 20 101, 110 -20 101, 110 20 101")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, BY_SURFACE))
                .containsExactly(
                        "cannot_tell P-1; lacks what lies above pipe P-1 from station 0+00.0 to 0+20.0, 0+30.0 to 1+00.0",
                        "meets P-1: 24.0 in; at station 0+20.0");
    }

    @Test
    void underOneLimitForAllSurfacesAMissingWalkLayerDoesNotMatter() {
        PlanInFeet plan = plan().spots("-10 -20 101, -10 20 101, 110 -20 101, 110 20 101")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, "at_least: 6 in")).containsExactly("meets P-1: 24.0 in; at station 0+00.0");
    }

    @Test
    void aLimitOnTheMaterialIsOpenWhereTheMaterialIs() {
        String byMaterial = """
                at_least: 24 in when material = 'hdpe_single_wall'
                at_least: 12 in""";

        assertThat(check(pipeUnder("101"), byMaterial))
                .containsExactly("cannot_tell P-1; lacks material of pipe P-1, on which the limit depends");
    }

    @Test
    void whereTheGroundIsNotKnownTheStationsAreNamed() {
        PlanInFeet plan = plan().absent(WALK)
                .absent(DRIVE)
                .spots("-10 -20 101, -10 20 101, 60 -20 101, 60 20 101")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, "at_least: 6 in"))
                .containsExactly(
                        "meets P-1: 24.0 in; at station 0+00.0",
                        "cannot_tell P-1; lacks ground above pipe P-1 from station 0+60.0 to 1+00.0");
    }

    @Test
    void unknownGroundAtBothEndsIsNotTakenForTheMiddle() {
        PlanInFeet plan = plan().absent(WALK)
                .absent(DRIVE)
                .spots("20 -20 101, 20 20 101, 60 -20 101, 60 20 101")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, "at_least: 6 in"))
                .containsExactly(
                        "cannot_tell P-1; lacks ground above pipe P-1 from station 0+00.0 to 0+20.0, 0+60.0 to 1+00.0",
                        "meets P-1: 24.0 in; at station 0+20.0");
    }

    /** The ground falls to 99 ft at the outfall, so that the pipe comes out of it. */
    private static PlanInFeet daylighting(String... ofOutfall) {
        return ground("101.2", "98.9")
                .with(OUTFALL, "OF-1", "POINT (100 0)", ofOutfall)
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");
    }

    @Test
    void theLastRunBeforeADaylightOutfallNeedsNoCoverUnderALimitThatAsksNone() {
        // 10 ft before its end the ground stands at 101.2 - 2.3 * 100 / 120 = 99.283
        assertThat(check(daylighting("kind = daylight"), LAST_RUN_FREE))
                .containsExactly("fails P-1: 3.4 in; at station 0+90.0");
        assertThat(check(daylighting("kind = daylight"), "at_least: none when to_outfall_ft <= 30\nat_least: 6 in"))
                .containsExactly("meets P-1: 8.0 in; at station 0+70.0");
    }

    @Test
    void theLastRunIsCountedAlongThePipesThatFollow() {
        PlanInFeet plan = ground("101.2", "98.9")
                .with(OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 98, 95 0 98)", "outside_diameter = 12 in")
                .with(PIPE, "P-2", "LINESTRING Z (95 0 98, 100 0 98)", "outside_diameter = 12 in");

        assertThat(check(plan, LAST_RUN_FREE)).containsExactly("fails P-1: 3.4 in; at station 0+90.0");
    }

    @Test
    void aPopUpOutfallExcusesNoRunFromItsCover() {
        // at the end the ground stands at 101.2 - 2.3 * 110 / 120 = 99.092
        assertThat(check(daylighting("kind = pop_up"), LAST_RUN_FREE))
                .containsExactly("fails P-1: 1.1 in; at station 1+00.0");
    }

    @Test
    void anOutfallOfUnknownKindLeavesTheLastRunOpenAndNoMore() {
        assertThat(check(daylighting(), LAST_RUN_FREE))
                .containsExactly(
                        "fails P-1: 3.4 in; at station 0+90.0",
                        "cannot_tell P-1; lacks kind of outfall OF-1, on which the limit depends");
    }

    @Test
    void aLineThatComesToNoOutfallHasNoLastRun() {
        PlanInFeet plan = ground("101.2", "98.9").with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, LAST_RUN_FREE)).containsExactly("fails P-1: 1.1 in; at station 1+00.0");
    }

    /** The drive begins at station 89.5 and the last ten feet at station 90, both within one step of the search. */
    @Test
    void aChangeOfLimitCloseToTheEdgeOfASurfaceIsFound() {
        String free = """
                at_least: none when to_outfall_ft <= 10
                at_least: 12 in when above = 'drive'
                at_least: 6 in""";
        PlanInFeet plan = levelGround("99.6")
                .with(OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight")
                .with(DRIVE, "D-1", "POLYGON ((89.5 -9, 105 -9, 105 9, 89.5 9, 89.5 -9))")
                .with(PIPE, "P-1", LEVEL_PIPE, "outside_diameter = 12 in");

        assertThat(check(plan, free))
                .containsExactly("meets P-1: 7.2 in; at station 0+00.0", "fails P-1: 7.2 in; at station 0+89.5");
    }

    @Test
    void withoutADiameterOrAnInvertThereIsNoCoverToMeasure() {
        PlanInFeet plan = levelGround("101");

        assertThat(check(plan.with(PIPE, "P-1", LEVEL_PIPE), "at_least: 6 in"))
                .containsExactly("cannot_tell P-1; lacks diameter of pipe P-1");
        assertThat(check(
                        plan.with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "diameter = 4 in", "invert_up = 98 ft"),
                        "at_least: 6 in"))
                .containsExactly("cannot_tell P-1; lacks the downstream invert of pipe P-1");
    }

    @Test
    void aPipeWithoutLengthInPlanIsNotPassedOver() {
        PlanInFeet plan = levelGround("101")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING (9 0, 9 0)",
                        "diameter = 4 in",
                        "invert_up = 98 ft",
                        "invert_down = 98 ft");

        assertThat(check(plan, "at_least: 6 in"))
                .containsExactly("cannot_tell P-1; lacks a length in plan of pipe P-1");
    }

    @Test
    void withinTheAccuracyOfTheGroundItIsBorderline() {
        assertThat(check(pipeUnder("99.46").surveyedTo(0, 0.05), "at_least: 6 in"))
                .containsExactly("borderline P-1: 5.5 in; at station 0+00.0");
        assertThat(check(pipeUnder("99.54").surveyedTo(0, 0.05), "at_least: 6 in"))
                .containsExactly("borderline P-1: 6.5 in; at station 0+00.0");
        assertThat(check(pipeUnder("99.44").surveyedTo(0, 0.05), "at_least: 6 in"))
                .containsExactly("fails P-1: 5.3 in; at station 0+00.0");
        assertThat(check(pipeUnder("99.56").surveyedTo(0, 0.05), "at_least: 6 in"))
                .containsExactly("meets P-1: 6.7 in; at station 0+00.0");
    }

    @Property(tries = 100)
    void movingAndTurningThePlanChangesNoCover(
            @ForAll @Size(9) List<@DoubleRange(min = 99, max = 103) Double> heights,
            @ForAll @DoubleRange(min = 0, max = 6.3) double angle,
            @ForAll @DoubleRange(min = -500, max = 500) double away) {
        AffineTransformation move = AffineTransformation.rotationInstance(angle).translate(away, -away / 3);

        assertSameCovers(hilly(heights), hilly(heights).reshaped(move::transform));
    }

    @Property(tries = 100)
    void doublingTheVerticesOfThePipeChangesNoCover(
            @ForAll @Size(9) List<@DoubleRange(min = 99, max = 103) Double> heights) {
        assertSameCovers(hilly(heights), hilly(heights).reshaped(CoverTest::doubled));
    }

    @Property(tries = 100)
    void drawingThePipeBackwardsChangesNoCover(
            @ForAll @Size(9) List<@DoubleRange(min = 99, max = 103) Double> heights) {
        assertSameCovers(
                hilly(heights),
                hilly(heights).reshaped(geometry -> geometry instanceof LineString ? geometry.reverse() : geometry));
    }

    /** Nine spots on a skewed grid, a bent pipe that falls to a daylight outfall, and a drive over a part of it. */
    private static PlanInFeet hilly(List<Double> heights) {
        PlanInFeet plan = plan().absent(WALK)
                .with(DRIVE, "D-1", "POLYGON ((40 -50, 55 -45, 50 50, 38 50, 40 -50))")
                .with(OUTFALL, "OF-1", "POINT (90 20)", "kind = daylight");
        for (int i = 0; i < 9; i++) {
            int row = i / 3;
            int column = i % 3;
            double x = -13 + 57.3 * column + 3.1 * row;
            double y = -41 + 43.7 * row - 2.3 * column;
            plan = plan.spots(x + " " + y + " " + heights.get(i));
        }
        return plan.with(
                PIPE,
                "P-1",
                "LINESTRING (2 -18, 31 9, 62 -7, 90 20)",
                "outside_diameter = 6 in",
                "invert_up = 99 ft",
                "invert_down = 97 ft");
    }

    private static void assertSameCovers(PlanInFeet one, PlanInFeet other) {
        String terms = """
                at_least: none when to_outfall_ft <= 10
                at_least: 12 in when above = 'drive'
                at_least: 6 in""";
        List<Observation> before = one.observe(new Cover(), terms);
        List<Observation> after = other.observe(new Cover(), terms);
        assertThat(after).hasSameSizeAs(before).hasSize(2);
        for (int i = 0; i < before.size(); i++) {
            assertThat(cover(after.get(i))).isCloseTo(cover(before.get(i)), within(1e-4));
        }
    }

    private static double cover(Observation seen) {
        return seen.measured().orElseThrow().value().si();
    }

    /** A line with one more vertex in the middle of each segment; other geometry as it is. */
    private static Geometry doubled(Geometry geometry) {
        if (!(geometry instanceof LineString)) {
            return geometry;
        }
        Coordinate[] places = geometry.getCoordinates();
        List<Coordinate> more = new ArrayList<>(List.of(places[0]));
        for (int i = 1; i < places.length; i++) {
            more.add(new Coordinate((places[i - 1].x + places[i].x) / 2, (places[i - 1].y + places[i].y) / 2));
            more.add(places[i]);
        }
        return geometry.getFactory().createLineString(more.toArray(Coordinate[]::new));
    }
}
