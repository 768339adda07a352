package org.fallrule.check.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.EASEMENT;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class WithinTest {
    private static final String OUTFALL_ON_OWN_LOT = """
            subject: outfall
            area: lot
            area_where: own = true
            reach_at_most: 0 ft""";
    private static final String LOT_100_FT = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))";

    private static PlanInFeet ownLotAndOutfallAt(String place) {
        return plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (" + place + ")");
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Within(), terms);
    }

    @Test
    void anOutfallInsideOfTheLotMeets() {
        assertThat(check(ownLotAndOutfallAt("50 20"), OUTFALL_ON_OWN_LOT))
                .containsExactly("meets OF-1 to L-1: 0.00 ft");
    }

    @Test
    void anOutfallOnTheEdgeOfTheLotMeets() {
        assertThat(check(ownLotAndOutfallAt("50 0"), OUTFALL_ON_OWN_LOT)).containsExactly("meets OF-1 to L-1: 0.00 ft");
        assertThat(check(ownLotAndOutfallAt("100 100"), OUTFALL_ON_OWN_LOT))
                .containsExactly("meets OF-1 to L-1: 0.00 ft");
    }

    @Test
    void anOutfallOutsideOfTheLotFailsByItsDistance() {
        assertThat(check(ownLotAndOutfallAt("50 -3"), OUTFALL_ON_OWN_LOT))
                .containsExactly("fails OF-1 to L-1: 3.00 ft");
    }

    @Test
    void anOutfallInAHoleOfTheLotIsOutside() {
        PlanInFeet plan = plan().with(
                        LOT,
                        "L-1",
                        "POLYGON ((0 0, 90 0, 90 90, 0 90, 0 0), (40 40, 40 50, 50 50, 50 40, 40 40))",
                        "own = true")
                .with(OUTFALL, "OF-1", "POINT (45 42)");

        assertThat(check(plan, OUTFALL_ON_OWN_LOT)).containsExactly("fails OF-1 to L-1: 2.00 ft");
    }

    @Test
    void aReachExactlyAtItsLimitMeets() {
        String threeFeet = OUTFALL_ON_OWN_LOT.replace("0 ft", "3 ft");

        assertThat(check(ownLotAndOutfallAt("50 -2"), threeFeet)).containsExactly("meets OF-1 to L-1: 2.00 ft");
        assertThat(check(ownLotAndOutfallAt("50 -3"), threeFeet)).containsExactly("meets OF-1 to L-1: 3.00 ft");
        assertThat(check(ownLotAndOutfallAt("50 -4"), threeFeet)).containsExactly("fails OF-1 to L-1: 4.00 ft");
    }

    @Test
    void nearerToTheEdgeThanTheSurveyIsAccurateItIsBorderline() {
        assertThat(check(ownLotAndOutfallAt("50 0.05").surveyedTo(0.1, 0), OUTFALL_ON_OWN_LOT))
                .containsExactly("borderline OF-1 to L-1: 0.00 ft");
        assertThat(check(ownLotAndOutfallAt("50 -0.05").surveyedTo(0.1, 0), OUTFALL_ON_OWN_LOT))
                .containsExactly("borderline OF-1 to L-1: 0.05 ft");
        assertThat(check(ownLotAndOutfallAt("50 0.15").surveyedTo(0.1, 0), OUTFALL_ON_OWN_LOT))
                .containsExactly("meets OF-1 to L-1: 0.00 ft");
        assertThat(check(ownLotAndOutfallAt("50 -0.15").surveyedTo(0.1, 0), OUTFALL_ON_OWN_LOT))
                .containsExactly("fails OF-1 to L-1: 0.15 ft");
    }

    @Test
    void aReachNearItsLimitIsBorderlineHoweverFarTheEdge() {
        String threeFeet = OUTFALL_ON_OWN_LOT.replace("0 ft", "3 ft");

        assertThat(check(ownLotAndOutfallAt("50 -2.95").surveyedTo(0.1, 0), threeFeet))
                .containsExactly("borderline OF-1 to L-1: 2.95 ft");
        assertThat(check(ownLotAndOutfallAt("50 -3.05").surveyedTo(0.1, 0), threeFeet))
                .containsExactly("borderline OF-1 to L-1: 3.05 ft");
    }

    @Test
    void aNeighboursLotDoesNotCount() {
        PlanInFeet plan = ownLotAndOutfallAt("50 -20")
                .with(LOT, "L-2", "POLYGON ((0 -100, 100 -100, 100 0, 0 0, 0 -100))", "own = false");

        assertThat(check(plan, OUTFALL_ON_OWN_LOT)).containsExactly("fails OF-1 to L-1: 20.00 ft");
    }

    @Test
    void aLotThatMayOrMayNotBeTheOwnOneLeavesItOpen() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT).with(OUTFALL, "OF-1", "POINT (50 20)");

        assertThat(check(plan, OUTFALL_ON_OWN_LOT))
                .containsExactly("cannot_tell OF-1 to L-1: 0.00 ft; lacks own of lot L-1");
    }

    @Test
    void itNeedsToKnowTheOwnLotWhereTheAreaIsALot() {
        assertThat(new Within().needs(PlanInFeet.terms(new Within(), OUTFALL_ON_OWN_LOT)))
                .containsExactly(new Need.OfLayer(OUTFALL), new Need.OfLayer(LOT), new Need.OfOwnLot());
    }

    @Test
    void oneOfSeveralAreasIsEnough() {
        PlanInFeet plan = plan().with(EASEMENT, "E-1", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))")
                .with(EASEMENT, "E-2", "POLYGON ((20 0, 30 0, 30 10, 20 10, 20 0))")
                .with(OUTFALL, "OF-1", "POINT (25 5)");

        assertThat(check(plan, "subject: outfall\narea: easement\nreach_at_most: 0 ft"))
                .containsExactly("meets OF-1 to E-2: 0.00 ft");
    }

    @Test
    void outsideOfSeveralAreasTheNearestIsNamed() {
        PlanInFeet plan = plan().with(EASEMENT, "E-1", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))")
                .with(EASEMENT, "E-2", "POLYGON ((20 0, 30 0, 30 10, 20 10, 20 0))")
                .with(OUTFALL, "OF-1", "POINT (18 5)");

        assertThat(check(plan, "subject: outfall\narea: easement\nreach_at_most: 0 ft"))
                .containsExactly("fails OF-1 to E-2: 2.00 ft");
    }

    @Test
    void whereNoAreaIsOfTheKindAskedForNothingLiesInsideOfOne() {
        PlanInFeet plan = plan().with(LOT, "L-2", LOT_100_FT, "own = false").with(OUTFALL, "OF-1", "POINT (50 20)");

        assertThat(check(plan, OUTFALL_ON_OWN_LOT)).containsExactly("fails OF-1; the plan has no lot with own = true");
    }

    @Test
    void aSubjectOfAnotherKindIsNotObserved() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true")
                .with(OUTFALL, "OF-1", "POINT (50 -20)", "kind = curb")
                .with(OUTFALL, "OF-2", "POINT (50 -20)");

        assertThat(check(plan, OUTFALL_ON_OWN_LOT + "\nsubject_where: kind = 'daylight'"))
                .containsExactly("cannot_tell OF-2; lacks kind of outfall OF-2");
    }

    @Test
    void aPipeReachesAsFarAsItsFarthestEnd() {
        PlanInFeet plan =
                plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(PIPE, "P-1", "LINESTRING (50 50, 50 -2, 80 -7)");

        assertThat(check(plan, "subject: pipe\narea: lot\nreach_at_most: 0 ft"))
                .containsExactly("fails P-1 to L-1: 7.00 ft");
    }

    @Test
    void aPipeThatLeavesAnLShapedLotAndComesBackReachesOutInBetween() {
        PlanInFeet plan = plan().with(
                        LOT,
                        "L-1",
                        "POLYGON ((0 0, 100 0, 100 100, 80 100, 80 20, 20 20, 20 100, 0 100, 0 0))",
                        "own = true")
                .with(PIPE, "P-1", "LINESTRING (10 50, 90 50)");

        assertThat(check(plan, "subject: pipe\narea: lot\nreach_at_most: 0 ft"))
                .containsExactly("fails P-1 to L-1: 30.00 ft");
    }

    @Test
    void aBuildingOverAHoleOfTheAreaReachesOutInItsMiddle() {
        PlanInFeet plan = plan().with(
                        LOT,
                        "L-1",
                        "POLYGON ((0 0, 90 0, 90 90, 0 90, 0 0), (40 40, 40 50, 50 50, 50 40, 40 40))",
                        "own = true")
                .with(BUILDING, "B-1", "POLYGON ((30 30, 60 30, 60 60, 30 60, 30 30))");

        assertThat(check(plan, "subject: building\narea: lot\nreach_at_most: 0 ft"))
                .containsExactly("fails B-1 to L-1: 5.00 ft");
    }
}
