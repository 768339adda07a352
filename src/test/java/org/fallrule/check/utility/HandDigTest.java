package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.junit.jupiter.api.Test;

/** Zones of 18 to 30 in are usual in state one-call laws; 24 in is taken here. */
class HandDigTest {
    private static final String ZONE_24_IN = """
            from: utility
            zone: 24 in
            size_if_unknown: 2 in""";

    /** A sprinkler main of 2 in outside along the x axis from 0 to 60 ft. */
    private static final PlanInFeet SPRINKLER_MAIN =
            plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = irrigation", "outside_diameter = 2 in");

    private static PlanInFeet with3InPipe(String wkt) {
        return SPRINKLER_MAIN.with(PIPE, "P-1", wkt, "outside_diameter = 3 in");
    }

    private static List<String> check(PlanInFeet plan) {
        return plan.check(new HandDig(), ZONE_24_IN);
    }

    /** Common practice without a published source: a trench along a sprinkler main is dug by hand, and is no fault. */
    @Test
    void aTrenchAlongMostOfASprinklerMainIsDugByHandAndFailsNothing() {
        PlanInFeet plan = with3InPipe("LINESTRING (5 1.5, 55 1.5, 55 30)");

        // the last leg leaves the zone 2.208 ft from the main, 0.708 ft along
        assertThat(check(plan)).containsExactly("meets P-1 to U-1: 50.71 ft; station 0+00.0 to 0+50.7");
    }

    @Test
    void aPipeOutsideOfTheZoneIsDugAsAnyOther() {
        assertThat(check(with3InPipe("LINESTRING (5 2.22, 55 2.22)"))).isEmpty();
    }

    /** Half of 2 in, the zone of 24 in, half of 3 in: the edges touch at 2.208 ft between centrelines. */
    @Test
    void aPipeWhoseEdgeReachesIntoTheZoneIsDugByHand() {
        assertThat(check(with3InPipe("LINESTRING (5 2.20, 55 2.20)")))
                .containsExactly("meets P-1 to U-1: 50.00 ft; station 0+00.0 to 0+50.0");
    }

    @Test
    void aPipeThatCrossesIsDugByHandOnBothSides() {
        assertThat(check(with3InPipe("LINESTRING (30 -20, 30 20)")))
                .containsExactly("meets P-1 to U-1: 4.42 ft; station 0+17.8 to 0+22.2");
    }

    @Test
    void aPipeThatComesNearTwiceHasTwoReaches() {
        assertThat(check(with3InPipe("LINESTRING (10 -20, 10 20, 50 20, 50 -20)")))
                .containsExactly("meets P-1 to U-1: 8.83 ft; station 0+17.8 to 0+22.2, 0+97.8 to 1+02.2");
    }

    @Test
    void theLengthInsideIsShownOnThePlan() {
        var seen = with3InPipe("LINESTRING (30 -20, 30 20)")
                .observe(new HandDig(), ZONE_24_IN)
                .get(0);

        assertThat(seen.where().orElseThrow().getLength()).isCloseTo((4 + 2 / 12.0 + 0.25) * 0.3048, within(1e-9));
    }

    @Test
    void eachUtilityIsToldForItself() {
        PlanInFeet plan = with3InPipe("LINESTRING (30 -20, 30 20)")
                .with(UTILITY, "U-2", "LINESTRING (0 10, 60 10)", "kind = gas", "outside_diameter = 2 in");

        assertThat(check(plan))
                .containsExactly(
                        "meets P-1 to U-1: 4.42 ft; station 0+17.8 to 0+22.2",
                        "meets P-1 to U-2: 4.42 ft; station 0+27.8 to 0+32.2");
    }

    @Test
    void sizesThatAreNotGivenAreSaid() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = gas")
                .with(PIPE, "P-1", "LINESTRING (30 -20, 30 20)");

        assertThat(check(plan))
                .containsExactly(
                        "meets P-1 to U-1: 4.17 ft; station 0+17.9 to 0+22.1;"
                                + " size of gas U-1 is not given and taken from the rule; diameter of pipe P-1 is not given and not counted");
    }

    @Test
    void anUnknownKindIsDugByHandAllTheSame() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "outside_diameter = 2 in")
                .with(PIPE, "P-1", "LINESTRING (30 -20, 30 20)", "outside_diameter = 3 in");

        assertThat(plan.check(new HandDig(), ZONE_24_IN + "\nfrom_where: kind = 'gas'"))
                .containsExactly(
                        "meets P-1 to U-1: 4.42 ft; station 0+17.8 to 0+22.2; kind of utility U-1 is not given");
    }

    @Test
    void aUtilityOfAnotherKindDoesNotCount() {
        assertThat(with3InPipe("LINESTRING (30 -20, 30 20)")
                        .check(new HandDig(), ZONE_24_IN + "\nfrom_where: kind = 'gas'"))
                .isEmpty();
    }

    @Test
    void itNeverFailsHoweverNear() {
        assertThat(with3InPipe("LINESTRING (0 0, 60 0)").observe(new HandDig(), ZONE_24_IN))
                .allMatch(seen -> seen.outcome() == Outcome.MEETS)
                .hasSize(1);
    }

    @Test
    void privateLinesAreListedAsNotMarkedWhereverTheyLie() {
        PlanInFeet plan = with3InPipe("LINESTRING (5 40, 55 40)")
                .with(UTILITY, "U-2", "LINESTRING (0 99, 60 99)", "kind = gas", "private = true")
                .with(UTILITY, "U-3", "LINESTRING (0 -99, 60 -99)", "kind = gas");
        String terms = ZONE_24_IN + "\nprivate: utility\nprivate_where: private = true OR kind = 'irrigation'";

        assertThat(plan.check(new HandDig(), terms))
                .containsExactly(
                        "meets U-1; one-call does not mark it: have it located before digging",
                        "meets U-2; one-call does not mark it: have it located before digging");
    }
}
