package org.fallrule.check.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** 6 in within the first 10 ft, and 2 % over hard surfaces, after IRC R401.3. */
class GroundFallTest {
    private static final String SIX_INCHES = """
            around: building
            fall_at_least: 6 in
            over: 10 ft
            spacing: 2 ft""";
    private static final String BY_SURFACE = """
            around: building
            fall_at_least: 2.4 in when above IN ('walk', 'drive')
            fall_at_least: 6 in
            over: 10 ft
            spacing: 2 ft""";

    private static final String HOUSE = "POLYGON ((0 0, 40 0, 40 30, 0 30, 0 0))";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new GroundFall(), terms);
    }

    /** A house of 40 by 30 ft with the ground at 10 ft all along its walls. */
    private static PlanInFeet house() {
        return plan().with(BUILDING, "B-1", HOUSE)
                .spots(ring(0, 10))
                .empty(WALK)
                .empty(DRIVE);
    }

    /** Spots so far out from the corners of the house, all of one height: between two rings the ground is straight. */
    private static String ring(double out, double height) {
        return String.format(
                Locale.ROOT,
                "%1$f %1$f %3$f, %2$f %1$f %3$f, %2$f %4$f %3$f, %1$f %4$f %3$f",
                -out,
                40 + out,
                height,
                30 + out);
    }

    /** Only the start of a line: on even ground every side is as bad as the next. */
    private static String told(PlanInFeet plan, String terms) {
        List<String> lines = check(plan, terms);
        assertThat(lines).hasSize(1);
        return lines.get(0).replaceAll("; worst on its .* side", "");
    }

    @Test
    void groundThatFallsMoreThanIsAskedMeets() {
        assertThat(told(house().spots(ring(20, 8)), SIX_INCHES)).isEqualTo("meets B-1: 12.0 in");
    }

    @Test
    void groundThatFallsExactlySixInchesInTenFeetMeets() {
        assertThat(told(house().spots(ring(20, 9)), SIX_INCHES)).isEqualTo("meets B-1: 6.0 in");
    }

    @Test
    void groundThatFallsLessFailsAllAround() {
        assertThat(told(house().spots(ring(20, 9.5)), SIX_INCHES))
                .isEqualTo("fails B-1: 3.0 in; 100 % of the wall falls short");
    }

    @Test
    void groundThatRisesFromTheHouseFailsByHowMuchItRises() {
        assertThat(told(house().spots(ring(20, 10.5)), SIX_INCHES))
                .isEqualTo("fails B-1: -3.0 in; 100 % of the wall falls short");
    }

    @Test
    void aSwaleWithinTheFirstTenFeetCountsToItsBottom() {
        assertThat(told(house().spots(ring(6, 9.5)).spots(ring(20, 10)), SIX_INCHES))
                .isEqualTo("meets B-1: 6.0 in");
    }

    @Test
    void whatLiesBeyondABankDoesNotCount() {
        assertThat(told(house().spots(ring(2, 10.25)).spots(ring(12, 7)), SIX_INCHES))
                .startsWith("fails B-1: ")
                .endsWith("100 % of the wall falls short");
    }

    /** The lower side falls 3 in, the three others 6 in: 20 of the 70 samples, 40 of the 140 ft of wall. */
    @Test
    void theWorstSideIsNamedWithItsShare() {
        PlanInFeet plan =
                house().spots("-20 -20 9.5, 60 -20 9.5, 60 50 9, -20 50 9, 0 -20 9.5, 40 -20 9.5, -20 0 9, 60 0 9");

        assertThat(check(plan, SIX_INCHES))
                .containsExactly("fails B-1: 3.0 in; worst on its south side; 29 % of the wall falls short");
    }

    /** In 10 ft it falls 4 in to the south, which is drawn first, 3 in to the west and 6 in to the north and east. */
    @Test
    void ofSeveralSidesThatFallShortTheOneThatFallsLeastIsTold() {
        PlanInFeet plan = house().spots("0 -20 9.3333333333, 40 -20 9.3333333333, 60 -20 9, 60 0 9, 60 30 9, 60 50 9,"
                + " 40 50 9, 0 50 9, -20 50 9, -20 30 9.5, -20 0 9.5, -20 -20 9.3333333333");

        assertThat(check(plan, SIX_INCHES))
                .singleElement()
                .asString()
                .startsWith("fails B-1: 3.0 in; worst on its west side");
    }

    /** To the west 1.2 in are lacking in 4 ft, on the other sides 2 in in 10 ft: less of slope, though more of height. */
    @Test
    void aShortWayIsComparedWithLongOnesByItsSlope() {
        PlanInFeet plan = house().with(LOT, "L-1", "POLYGON ((-4 -50, 90 -50, 90 80, -4 80, -4 -50))", "own = true")
                .spots("-20 -20 9.5, -20 50 9.5, -20 0 9.5, -20 30 9.5, 60 -20 9.3333333333, 60 50 9.3333333333,"
                        + " 0 -20 9.3333333333, 0 50 9.3333333333");

        assertThat(check(plan, SIX_INCHES))
                .containsExactly(
                        "fails B-1: 1.2 in; worst on its west side; only 4 ft to the lot line; 100 % of the wall"
                                + " falls short");
    }

    @Test
    void aLevelShelfAtTheWallIsNoBank() {
        assertThat(told(house().spots(ring(2, 10)).spots(ring(20, 8)), SIX_INCHES))
                .startsWith("meets B-1: 10.");
    }

    @Test
    void aLotLineNearerThanTenFeetIsHeldAgainstTheSameSlope() {
        String lot = "POLYGON ((-4 -50, 90 -50, 90 80, -4 80, -4 -50))";
        PlanInFeet steady = house().with(LOT, "L-1", lot, "own = true").spots(ring(20, 9));
        PlanInFeet flat = house().with(LOT, "L-1", lot, "own = true")
                .spots("-20 -20 9.5, -20 50 9.5, -20 0 9.5, -20 30 9.5, 60 -20 9, 60 50 9, 0 -20 9, 0 50 9");

        assertThat(told(steady, SIX_INCHES)).startsWith("meets B-1: ");
        assertThat(check(flat, SIX_INCHES))
                .containsExactly(
                        "fails B-1: 1.2 in; worst on its west side; only 4 ft to the lot line; 21 % of the wall"
                                + " falls short");
    }

    @Test
    void aWallAgainstAnotherBuildingIsLeftOut() {
        PlanInFeet plan = house().with(BUILDING, "B-2", "POLYGON ((40 0, 60 0, 60 30, 40 30, 40 0))", "kind = garage")
                .spots(
                        "-20 -20 9, 80 -20 9, 80 50 9, -20 50 9, 40 -20 9, 40 50 9, 60 0 10, 60 30 10, 60 -20 9, 60 50 9,"
                                + " 0 -20 9, 0 50 9, -20 0 9, -20 30 9, 80 0 9, 80 30 9");

        assertThat(told(plan, SIX_INCHES + "\naround_where: kind <> 'garage'")).isEqualTo("meets B-1: 6.0 in");
        assertThat(told(plan, SIX_INCHES.replace("6 in", "7 in") + "\naround_where: kind <> 'garage'"))
                .as("the wall that it stands against is no part of the whole")
                .isEqualTo("cannot_tell B-1: 6.0 in; lacks kind of building B-1; 100 % of the wall falls short");
    }

    /** The house's right wall has 3 ft of ground of its own, which must fall 1.8 in. */
    @Test
    void betweenTwoBuildingsEachWallDrainsToTheMiddle() {
        PlanInFeet plan = house().with(BUILDING, "B-2", "POLYGON ((46 0, 60 0, 60 30, 46 30, 46 0))", "kind = shed")
                .spots("-20 -20 9, -20 50 9, 0 -20 9, 0 50 9, -20 0 9, -20 30 9, 40 -20 9, 40 50 9, 70 -20 9, 70 50 9,"
                        + " 46 0 10, 46 30 10, 46 -20 9, 46 50 9");
        String house = SIX_INCHES + "\naround_where: kind <> 'shed'";

        assertThat(told(plan.spots("43 0 9.85, 43 30 9.85"), house)).startsWith("meets B-1");
        assertThat(told(plan.spots("43 0 9.9, 43 30 9.9"), house))
                .startsWith("cannot_tell B-1: 1.2 in; lacks kind of building B-1; only 3 ft to where another wall is as"
                        + " near; 21 % of the wall falls short");
    }

    @Test
    void aBumpBesideTheWallIsNoBank() {
        PlanInFeet plan = house().spots(ring(0.2, 10.02)).spots(ring(20, 8));

        assertThat(told(plan, SIX_INCHES)).startsWith("fails B-1");
        assertThat(told(plan, SIX_INCHES + "\nbank_from: 0.5 in")).startsWith("meets B-1");
    }

    @Test
    void aBuildingOfUnknownKindThatWouldFailLeavesItOpen() {
        assertThat(told(house().spots(ring(20, 9.5)), SIX_INCHES + "\naround_where: kind = 'house'"))
                .isEqualTo("cannot_tell B-1: 3.0 in; lacks kind of building B-1; 100 % of the wall falls short");
    }

    @Test
    void aWallNearerToTheLotLineThanTheShortestIsLeftOut() {
        PlanInFeet plan = house().with(
                        LOT, "L-1", "POLYGON ((-0.9 -50, 90 -50, 90 80, -0.9 80, -0.9 -50))", "own = true")
                .spots(ring(20, 9));

        assertThat(told(plan, SIX_INCHES + "\nshortest: 1 ft"))
                .isEqualTo(
                        "meets B-1: 6.0 in; 21 % of the wall stands too near to another wall or to the lot line to tell");
        assertThat(told(plan, SIX_INCHES + "\nshortest: 0.9 ft")).doesNotContain("too near");
    }

    @Test
    void hardSurfacesMayBeFlatter() {
        PlanInFeet flatter = house().spots(ring(20, 9.6));
        PlanInFeet paved = flatter.with(
                DRIVE, "D-1", "POLYGON ((-10 -10, 50 -10, 50 40, -10 40, -10 -10), (0 0, 40 0, 40 30, 0 30, 0 0))");

        assertThat(told(flatter, BY_SURFACE)).isEqualTo("fails B-1: 2.4 in; 100 % of the wall falls short");
        assertThat(told(paved, BY_SURFACE)).isEqualTo("meets B-1: 2.4 in");
    }

    @Test
    void theSurfaceThatCoversMostOfTheWayCounts() {
        String four = "POLYGON ((-10 -4, 50 -4, 50 0, -10 0, -10 -4))";
        String six = "POLYGON ((-10 -6, 50 -6, 50 0, -10 0, -10 -6))";
        PlanInFeet flatter = house().spots(ring(20, 9.6));

        assertThat(told(flatter.with(WALK, "W-1", four), BY_SURFACE)).contains("100 % of the wall falls short");
        assertThat(told(flatter.with(WALK, "W-1", six), BY_SURFACE)).contains("71 % of the wall falls short");
    }

    @Test
    void whereThePlanDoesNotSayWhatTheSurfaceIsItCannotBeTold() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", HOUSE).spots(ring(0, 10)).spots(ring(20, 9));

        assertThat(check(plan, BY_SURFACE))
                .containsExactly(
                        "cannot_tell B-1; lacks what covers the ground beside building B-1; 100 % of the wall cannot be told");
        assertThat(plan.observe(new GroundFall(), BY_SURFACE).get(0).missing())
                .extracting(Missing::settledBy)
                .containsExactly(
                        "supply the drive and walk layers, or list them under absent in site.yaml if there are none");
    }

    @Test
    void whereTheGroundIsNotKnownItSaysOnWhichSide() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", HOUSE)
                .spots("0 0 10, 40 0 10, 40 30 10, 0 30 10, -20 -20 9, -20 50 9, 40 -20 9, 40 50 9, 0 -20 9, 0 50 9,"
                        + " -20 0 9, -20 30 9");

        assertThat(check(plan, SIX_INCHES))
                .containsExactly("cannot_tell B-1; lacks the ground beside building B-1 on its east side; 21 % of the"
                        + " wall cannot be told");
    }

    @Test
    void whereSomeOfItFailsTheUnknownRestDoesNotHideIt() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", HOUSE)
                .spots("0 0 10, 40 0 10, 40 30 10, 0 30 10, -20 -20 9.5, -20 50 9.5, 40 -20 9, 40 50 9, 0 -20 9, 0 50"
                        + " 9, -20 0 9.5, -20 30 9.5");

        assertThat(check(plan, SIX_INCHES))
                .containsExactly("fails B-1: 3.0 in; worst on its west side; 21 % of the wall falls short; 21 % of the"
                        + " wall cannot be told");
    }

    @Test
    void aNeighboursHouseIsNotLookedAt() {
        PlanInFeet plan = house().with(LOT, "L-1", "POLYGON ((50 -20, 90 -20, 90 60, 50 60, 50 -20))", "own = true")
                .spots(ring(20, 10));

        assertThat(check(plan, SIX_INCHES)).isEmpty();
    }

    @Test
    void withinTheAccuracyOfTheSurveyItIsBorderline() {
        assertThat(told(house().spots(ring(20, 9.05)).surveyedTo(0.1, 0.05), SIX_INCHES))
                .isEqualTo("borderline B-1: 5.7 in; 100 % of the wall is too near to the limit to tell");
    }

    /** On a plane the fall along a wall's normal is that of the plane; the low side has it, the high side rises by as much. */
    @Property(tries = 40)
    void movingAndTurningThePlanChangesNothing(
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn,
            @ForAll @DoubleRange(min = 0, max = 1.9) double drop) {
        PlanInFeet plan = house().spots(ring(20, 10 - drop))
                .moved(place -> new Coordinate(
                        500 + place.x * Math.cos(turn) - place.y * Math.sin(turn),
                        -70 + place.x * Math.sin(turn) + place.y * Math.cos(turn),
                        place.getZ()));
        Measured seen =
                plan.observe(new GroundFall(), SIX_INCHES).get(0).measured().orElseThrow();

        assertThat(seen.value().si() / 0.3048).isCloseTo(drop / 2, within(1e-6));
    }

    @Test
    void whereEveryWallStandsTooNearToOthersItSaysSo() {
        PlanInFeet plan = house().spots(ring(20, 9))
                .with(LOT, "L-1", "POLYGON ((-1 -1, 41 -1, 41 31, -1 31, -1 -1))", "own = true");

        assertThat(check(plan, SIX_INCHES + "\nshortest: 3 ft"))
                .containsExactly("not_applicable B-1; every wall stands too near to another wall or to the lot line to"
                        + " tell");
    }

    @Test
    void theMapShowsTheUnknownSideAlone() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", HOUSE)
                .spots("0 0 10, 40 0 10, 40 30 10, 0 30 10, -20 -20 9, -20 50 9, 40 -20 9, 40 50 9, 0 -20 9, 0 50 9,"
                        + " -20 0 9, -20 30 9");
        Coordinate[] shown = plan.observe(new GroundFall(), SIX_INCHES)
                .get(0)
                .where()
                .orElseThrow()
                .getCoordinates();

        assertThat(shown).allSatisfy(place -> assertThat(place.x / 0.3048).isGreaterThan(40 - 1e-6));
    }
}
