package org.fallrule.check.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.STREET;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Observation;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** Ground that falls to the south; the outfall stands at (20, 60) and its water runs straight down. */
class FlowPathTest {
    private static final String TO_WALK = """
            from: outfall
            to: walk
            to_where: access = 'public'
            until: street
            within: 100 ft""";
    private static final String TO_NEIGHBOUR = """
            from: outfall
            to: lot
            to_where: own = false
            until: street
            within: 25 ft""";
    private static final String OWN = "POLYGON ((-30 20, 70 20, 70 90, -30 90, -30 20))";

    /** A plane that falls 2 % to the south. */
    private static PlanInFeet slope() {
        return outfall(plan().spots("-40 -40 9.6, 80 -40 9.6, 80 100 12.4, -40 100 12.4"))
                .empty(WALK)
                .empty(DRIVE)
                .empty(STREET);
    }

    private static PlanInFeet outfall(PlanInFeet plan) {
        return plan.with(OUTFALL, "OF-1", "POINT (20 60)", "kind = daylight");
    }

    /** A strip across the water's way, between two distances north of the origin. */
    private static String strip(double from, double to) {
        return "POLYGON ((-40 " + from + ", 80 " + from + ", 80 " + to + ", -40 " + to + ", -40 " + from + "))";
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new FlowPath(), terms);
    }

    private static String told(PlanInFeet plan, String terms) {
        List<String> lines = check(plan, terms);
        assertThat(lines).hasSize(1);
        return lines.get(0);
    }

    private static String clause(PlanInFeet plan, String terms) {
        return plan.observe(new FlowPath(), terms).get(0).told().orElse("");
    }

    @Test
    void waterThatRunsAcrossAPublicWalkFails() {
        PlanInFeet plan = slope().with(WALK, "W-1", strip(25, 30), "access = public");

        assertThat(told(plan, TO_WALK)).isEqualTo("fails OF-1 to W-1: 30.00 ft; over lawn, falling 2.00 %");
        assertThat(clause(plan, TO_WALK))
                .isEqualTo("water from outfall OF-1 reaches the walk W-1 after 30.00 ft of its way;"
                        + " the rule looks 100 ft along it");
    }

    @Test
    void whereTheStretchHangsOnWhatThePlanDoesNotSayThatIsWhatItLacks() {
        String terms = TO_WALK.replace("100 ft", "100 ft when ground_cover = 'grass'");

        assertThat(told(slope(), terms))
                .startsWith("cannot_tell OF-1; lacks ground_cover of outfall OF-1, on which the limit depends");
    }

    @Test
    void withoutAStretchTheWholeWayCounts() {
        String anywhere = TO_WALK.replace("within: 100 ft", "");
        PlanInFeet walk = slope().with(WALK, "W-1", strip(-35, -30), "access = public");
        PlanInFeet street = slope().with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(walk, anywhere)).startsWith("fails OF-1 to W-1: 90.00 ft");
        assertThat(clause(walk, anywhere))
                .isEqualTo("water from outfall OF-1 reaches the walk W-1 after 90.00 ft of its way");
        assertThat(told(street, anywhere)).startsWith("meets OF-1: 50.00 ft");
        assertThat(clause(street, anywhere))
                .isEqualTo("water from outfall OF-1 is taken in by the street ST-1 after 50.00 ft of its way");
        assertThat(told(slope(), anywhere))
                .startsWith("cannot_tell OF-1; lacks the ground that the water comes to after 9");
    }

    @Test
    void thePlaceIsTheWayOfTheWater() {
        PlanInFeet plan = slope().with(WALK, "W-1", strip(25, 30), "access = public");
        Observation seen = plan.observe(new FlowPath(), TO_WALK).get(0);
        Coordinate[] way = seen.where().orElseThrow().getCoordinates();

        assertThat(way[0].y / 0.3048).isCloseTo(60, within(1e-6));
        assertThat(way[way.length - 1].x / 0.3048).isCloseTo(20, within(1e-6));
        assertThat(way[way.length - 1].y / 0.3048).isCloseTo(30, within(1e-6));
    }

    @Test
    void aWalkBesideTheWayIsNotReached() {
        PlanInFeet plan = slope().with(WALK, "W-1", "POLYGON ((25 0, 30 0, 30 60, 25 60, 25 0))", "access = public")
                .with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(plan, TO_WALK)).isEqualTo("meets OF-1: 50.00 ft; over lawn, falling 2.00 %");
    }

    @Test
    void aWalkBeyondTheStreetIsNotReached() {
        PlanInFeet plan =
                slope().with(WALK, "W-1", strip(-20, -15), "access = public").with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(plan, TO_WALK)).startsWith("meets OF-1: 50.00 ft");
    }

    @Test
    void aWalkThatBeginsWhereTheStreetDoesIsReached() {
        PlanInFeet plan =
                slope().with(WALK, "W-1", strip(0, 10), "access = public").with(STREET, "ST-1", strip(0, 10));

        assertThat(told(plan, TO_WALK)).startsWith("fails OF-1 to W-1: 50.00 ft");
    }

    @Test
    void onlyWhatTheRuleNamesTakesTheWaterIn() {
        String untilPublic = TO_NEIGHBOUR
                .replace("until: street", "until: walk\nuntil_where: access = 'public'")
                .replace("25 ft", "100 ft");
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true").with(LOT, "L-2", strip(-40, 20), "own = false");

        assertThat(told(plan.with(WALK, "W-1", strip(40, 45), "access = private"), untilPublic))
                .startsWith("fails OF-1 to L-2: 40.00 ft");
        assertThat(told(plan.with(WALK, "W-1", strip(40, 45), "access = public"), untilPublic))
                .startsWith("meets OF-1: 15.00 ft");
    }

    @Test
    void whatLiesSideBySideIsNamedOnce() {
        PlanInFeet plan = slope().with(WALK, "W-1", strip(30, 45), "access = private")
                .with(WALK, "W-2", strip(20, 30), "access = private")
                .with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(plan, TO_WALK)).isEqualTo("meets OF-1: 50.00 ft; over lawn, walk, lawn, falling 2.00 %");
    }

    @Test
    void anOutfallOnTheWalkHasReachedIt() {
        PlanInFeet plan = slope().with(WALK, "W-1", strip(55, 65), "access = public");

        assertThat(told(plan, TO_WALK)).startsWith("fails OF-1 to W-1: 0.00 ft");
    }

    @Test
    void aPrivateWalkDoesNotCountAndOneOfUnknownAccessLeavesItOpen() {
        PlanInFeet street = slope().with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(street.with(WALK, "W-1", strip(25, 30), "access = private"), TO_WALK))
                .isEqualTo("meets OF-1: 50.00 ft; over lawn, walk, lawn, falling 2.00 %");
        assertThat(told(street.with(WALK, "W-1", strip(25, 30)), TO_WALK))
                .startsWith("cannot_tell OF-1 to W-1: 30.00 ft; lacks access of walk W-1");
    }

    @Test
    void beyondTheSurveyedGroundItCannotBeTold() {
        assertThat(told(slope(), TO_WALK))
                .startsWith("cannot_tell OF-1; lacks the ground that the water comes to after 9")
                .endsWith("; over lawn, falling 2.00 %");
    }

    @Test
    void aNeighbourExactlyAsFarAsAskedMeets() {
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true").with(LOT, "L-2", strip(-30, 35), "own = false");

        assertThat(told(plan, TO_NEIGHBOUR)).startsWith("meets OF-1 to L-2: 25.00 ft");
    }

    @Test
    void aNeighbourNearerThanAskedFails() {
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true").with(LOT, "L-2", strip(-30, 36), "own = false");

        assertThat(told(plan, TO_NEIGHBOUR)).startsWith("fails OF-1 to L-2: 24.00 ft");
    }

    @Test
    void theFirstOfManyNeighboursCounts() {
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true")
                .with(LOT, "L-2", strip(-30, 30), "own = false")
                .with(LOT, "L-3", strip(30, 45), "own = false");

        assertThat(told(plan, TO_NEIGHBOUR)).startsWith("fails OF-1 to L-3: 15.00 ft");
    }

    @Test
    void waterThatHasRunAsFarAsAskedMeetsThoughTheGroundEnds() {
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true").with(LOT, "L-2", strip(-90, -80), "own = false");

        assertThat(told(plan, TO_NEIGHBOUR)).startsWith("meets OF-1: 9");
        assertThat(clause(plan, TO_NEIGHBOUR))
                .startsWith("water from outfall OF-1 comes to no lot with own = false on the first 9")
                .endsWith(" ft of its way; the rule looks 25 ft along it");
    }

    @Test
    void whereThePlanShowsNoOtherLotItCannotBeToldWhoseItIs() {
        String near = "POLYGON ((-30 50, 70 50, 70 90, -30 90, -30 50))";

        assertThat(told(slope().with(LOT, "L-1", near, "own = true"), TO_NEIGHBOUR))
                .startsWith("cannot_tell OF-1; lacks whose lot the water comes to after 10.00 ft");
        assertThat(told(slope().with(LOT, "L-1", OWN, "own = true"), TO_NEIGHBOUR))
                .startsWith("meets OF-1: 40.00 ft");
        assertThat(told(slope().with(LOT, "L-1", near, "own = true").with(STREET, "ST-1", strip(0, 49)), TO_NEIGHBOUR))
                .startsWith("meets OF-1: 11.00 ft");
    }

    @Test
    void withinTheAccuracyOfTheSurveyItIsBorderline() {
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true")
                .with(LOT, "L-2", strip(-30, 35.2), "own = false")
                .surveyedTo(0.5, 0.05);

        assertThat(told(plan, TO_NEIGHBOUR)).startsWith("borderline OF-1 to L-2: 24.80 ft");
    }

    @Test
    void inAValleyItRunsAlongTheBottom() {
        // both sides fall 5 % to the line x = 20, which falls 1 % to the south
        PlanInFeet valley = outfall(
                        plan().spots("20 -40 9, 20 100 10.4, -40 -40 12, -40 100 13.4, 80 -40 12, 80 100 13.4"))
                .empty(WALK)
                .empty(DRIVE)
                .with(BUILDING, "B-1", "POLYGON ((15 0, 25 0, 25 10, 15 10, 15 0))")
                .with(OUTFALL, "OF-2", "POINT (50 60)", "kind = daylight");

        assertThat(check(
                        valley, TO_WALK.replace("to: walk", "to: building").replace("to_where: access = 'public'", "")))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).startsWith("fails").contains("to B-1"));
    }

    @Test
    void anOutfallInAHollowIsTold() {
        PlanInFeet bowl = outfall(plan().spots("18 58 9, 22 58 9, 22 62 9, 18 62 9"))
                .spots("10 50 10, 30 50 10, 30 70 10, 10 70 10, -40 -40 6, 80 -40 6, 80 100 9.5, -40 100 9.5")
                .empty(WALK)
                .empty(DRIVE)
                .with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(bowl, TO_WALK + "\npond_deeper_than: 1 in"))
                .contains("it comes out in a hollow 1")
                .endsWith("which must fill before any of it runs on");
    }

    @Test
    void whereTheGroundAtTheOutfallIsNotKnownItCannotBeTold() {
        PlanInFeet plan = plan().spots("0 0 1, 40 0 1, 40 40 2, 0 40 2").with(OUTFALL, "OF-1", "POINT (60 60)");

        assertThat(told(plan.empty(WALK), TO_WALK)).isEqualTo("cannot_tell OF-1; lacks the ground at outfall OF-1");
    }

    @Test
    void theOwnLotIsNoneThatTheWaterMustNotComeTo() {
        String anyLot = TO_NEIGHBOUR.replace("to_where: own = false\n", "");
        PlanInFeet plan = slope().with(LOT, "L-1", OWN, "own = true").with(LOT, "L-2", strip(-40, 20), "own = false");

        assertThat(told(plan, anyLot)).startsWith("meets OF-1 to L-2: 40.00 ft");
        assertThat(told(plan, anyLot.replace("25 ft", "50 ft"))).startsWith("fails OF-1 to L-2: 40.00 ft");
    }

    @Test
    void ofSeveralThingsThatItComesToTheOneThatFailsAndThenTheNearestIsTold() {
        PlanInFeet plan = slope().with(WALK, "W-1", strip(5, 10), "access = public")
                .with(WALK, "W-2", strip(25, 30), "access = public")
                .with(WALK, "W-3", strip(15, 20), "access = public");

        assertThat(told(plan, TO_WALK)).startsWith("fails OF-1 to W-2: 30.00 ft");
    }

    @Test
    void aHollowElsewhereIsNotTheOutfalls() {
        PlanInFeet plan = slope().spots("48 58 9, 52 58 9, 52 62 9, 48 62 9").with(STREET, "ST-1", strip(-10, 10));

        assertThat(told(plan, TO_WALK + "\npond_deeper_than: 1 in")).doesNotContain("hollow");
    }

    @Test
    void whereItRunsOverNothingFartherItSaysWhatItRunsOverButNoSlope() {
        PlanInFeet plan = slope().with(STREET, "ST-1", strip(50, 70));

        assertThat(told(plan, TO_WALK)).isEqualTo("meets OF-1: 0.00 ft");
    }
}
