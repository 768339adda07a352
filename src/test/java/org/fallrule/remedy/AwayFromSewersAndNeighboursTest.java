package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.remedy.KindsOfChangeTest.least;

import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Drains that are joined to a sewer, and water that runs to a neighbour. Lots are invented, limits those of saltmeadow. */
class AwayFromSewersAndNeighboursTest {
    private static final String JOINED = "drain-not-joined-to-sanitary";
    private static final String FLOW = "outfall-flow-to-neighbour";

    /** The ground falls 3 % to the east, 1.2 ft over the inverts; the outfall stands at it. */
    private static PlanInFeet plain() {
        return Drains.plain().spots("-60 -60 101.8, 140 -60 95.8, 140 60 95.8, -60 60 101.8");
    }

    private static PlanInFeet sewer(PlanInFeet plan, double east) {
        return plan.with(
                Role.UTILITY,
                "U-1",
                "LINESTRING (" + east + " -50, " + east + " 50)",
                "kind = sanitary",
                "diameter = 4 in",
                "depth = 60 in");
    }

    private static PlanInFeet withoutOutfall() {
        return sewer(plain(), 100).without(Role.OUTFALL, "OF-1");
    }

    @Test
    void anOutfallThatComesOutOverASewerEndsBesideIt() {
        LeastChange.Candidate least = least(sewer(plain(), 100), new EarlierEnd(), JOINED, any -> true);

        // half of 4.5 in and 3 in are 0.44 ft
        assertThat(least.least().change().says()).startsWith("end pipe P-2 0.50 ft earlier, at station 0+49.5");
    }

    @Test
    void asFarAsAskedOrFartherItIsNotJoined() {
        assertThat(Drains.findings(sewer(plain(), 100.5), JOINED)).containsOnly(Outcome.MEETS);
        assertThat(Drains.remedies(sewer(plain(), 103), JOINED)).isEmpty();
    }

    @Test
    void whereNothingIsMarkedNothingIsOffered() {
        assertThat(Drains.remedies(plain().empty(Role.UTILITY), JOINED)).isEmpty();
    }

    @Test
    void aCleanoutOnASewerIsMovedBesideIt() {
        PlanInFeet plan = sewer(plain(), 50);

        assertThat(least(plan, new JunctionAside(), JOINED, any -> true)
                        .least()
                        .change()
                        .says())
                .isEqualTo("move cleanout CO-1, with the pipes that meet there, 0.50 ft to the east");
        assertThat(Drains.remedies(plan, JOINED)).hasSize(3).allMatch(Remedied::proved);
    }

    @Test
    void aDrainWhoseOnlyOutletIsTheSewerIsTurnedToAnOutfallInTheOpen() {
        Remedied remedied = Drains.remedy(withoutOutfall(), JOINED);
        Change change = remedied.change().orElseThrow();
        Feature outfall = change.site().features(Role.OUTFALL).get(0);

        assertThat(remedied.says()).startsWith("turn pipe P-2 to an outfall in the open at a place ");
        assertThat(outfall.get(Attribute.KIND)).contains("daylight");
    }

    @Test
    void whereNoPlaceIsLowEnoughTheDrainHasToEndElsewhere() {
        PlanInFeet low = Drains.plain()
                .spots("-60 -60 104, 140 -60 104, 140 60 104, -60 60 104")
                .without(Role.OUTFALL, "OF-1");
        Remedied remedied = Drains.remedy(sewer(low, 100), JOINED);

        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.TRADE_OFF);
        assertThat(remedied.says())
                .startsWith("end pipe P-2 0.50 ft earlier")
                .contains("but then pipe P-2 comes out nowhere: the drain has to end elsewhere, in the open");
    }

    @Test
    void anOutfallDeepInTheGroundIsNoneBesideTheSewerEither() {
        PlanInFeet deep = Drains.plain().spots("-60 -60 104, 140 -60 104, 140 60 104, -60 60 104");
        Remedied remedied = Drains.remedy(sewer(deep, 100), JOINED);

        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.TRADE_OFF);
        assertThat(remedied.says()).contains("comes out nowhere");
    }

    @Test
    void whatIsThereAlreadyStays() {
        PlanInFeet existing = sewer(plain(), 100)
                .without(Role.PIPE, "P-2")
                .with(
                        Role.PIPE,
                        "P-2",
                        "LINESTRING (50 0, 100 0)",
                        "diameter = 4 in",
                        "status = existing",
                        "invert_up = 97.5 ft",
                        "invert_down = 97 ft")
                .without(Role.OUTFALL, "OF-1")
                .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight", "status = existing");

        assertThat(Drains.remedies(existing, JOINED)).isNotEmpty().allMatch(each -> each.kind() == Remedied.Kind.NONE);
    }

    private static PlanInFeet beside(String neighbour, String street) {
        return plain().without(Role.LOT, "L-1")
                .with(Role.LOT, "L-1", "POLYGON ((-50 -50, 108 -50, 108 50, -50 50, -50 -50))", "own = true")
                .with(Role.LOT, "L-2", neighbour, "own = false")
                .with(Role.STREET, "ST-1", street);
    }

    /** A neighbour's lot of 12 ft square below the outfall. */
    private static PlanInFeet smallLotBelow() {
        return beside(
                "POLYGON ((110 -6, 122 -6, 122 6, 110 6, 110 -6))",
                "POLYGON ((130 -60, 140 -60, 140 60, 130 60, 130 -60))");
    }

    @Test
    void waterIsLedPastALotByTheNearestPlaceThatPasses() {
        Remedied remedied = Drains.remedy(smallLotBelow(), FLOW, "pipe-never-uphill");

        assertThat(remedied.proved()).isTrue();
        assertThat(remedied.says()).startsWith("end pipe P-2 15.00 ft earlier, at station 0+35.0");
    }

    @Test
    void placesOnTheOtherSideOfTheLotAreTriedToo() {
        assertThat(Drains.candidates(smallLotBelow(), new OutfallElsewhere(), FLOW))
                .isNotEmpty()
                .allMatch(each -> each.least().change().says().startsWith("turn pipe P-2 to outfall OF-1 at a place "))
                .allMatch(
                        each -> Drains.meets(smallLotBelow(), FLOW, each.least().change()));
    }

    @Test
    void aLotThatTheWaterRunsBesideNeedsNothing() {
        PlanInFeet beside = beside(
                "POLYGON ((110 1, 122 1, 122 6, 110 6, 110 1))",
                "POLYGON ((130 -60, 140 -60, 140 60, 130 60, 130 -60))");

        assertThat(Drains.remedies(beside, FLOW)).isEmpty();
    }

    @Test
    void theStretchThatTheRuleLooksAlongIsEnoughExactly() {
        PlanInFeet far = beside(
                "POLYGON ((125 -60, 128 -60, 128 60, 125 60, 125 -60))",
                "POLYGON ((130 -60, 140 -60, 140 60, 130 60, 130 -60))");

        assertThat(Drains.findings(far, FLOW)).containsOnly(Outcome.MEETS);
    }

    /** A strip of another's lot all along the street. */
    private static PlanInFeet stripAlongTheStreet() {
        return beside(
                "POLYGON ((110 -60, 114 -60, 114 60, 110 60, 110 -60))",
                "POLYGON ((118 -60, 140 -60, 140 60, 118 60, 118 -60))");
    }

    @Test
    void thePipeIsLedToTheCurb() {
        LeastChange.Candidate least = least(stripAlongTheStreet(), new CurbOutlet(), FLOW, any -> true);
        Feature outfall = least.least().change().site().features(Role.OUTFALL).get(0);

        assertThat(least.least().change().says())
                .startsWith("lead pipe P-2 18.00 ft on to the curb, outfall OF-1 a curb outlet there, slope ");
        assertThat(outfall.get(Attribute.KIND)).contains("curb");
    }

    @Test
    void whatACountyAsksOfCurbOutletsIsTheTradeOff() {
        Change change = least(stripAlongTheStreet(), new CurbOutlet(), FLOW, any -> true)
                .least()
                .change();

        assertThat(Drains.drawback(stripAlongTheStreet(), change, "curb-outlet-permit"))
                .hasValueSatisfying(says -> assertThat(says).startsWith("outfall OF-1"));
    }

    @Test
    void aStreetFarAwayHasNoCurbForIt() {
        PlanInFeet far = beside(
                "POLYGON ((110 -60, 114 -60, 114 60, 110 60, 110 -60))",
                "POLYGON ((151 -60, 160 -60, 160 60, 151 60, 151 -60))");

        assertThat(Drains.candidates(far, new CurbOutlet(), FLOW)).isEmpty();
    }
}
