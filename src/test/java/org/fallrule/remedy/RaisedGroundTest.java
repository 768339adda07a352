package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.remedy.KindsOfChangeTest.least;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

/** Ground raised beside a house of 40 by 30 ft: 6 in of fall within the first 10 ft, after IRC R401.3. Lots are invented. */
class RaisedGroundTest {
    private static final String RULE = "ground-falls-from-house";
    private static final String HOUSE = "POLYGON ((0 0, 40 0, 40 30, 0 30, 0 0))";

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

    private static PlanInFeet lot(String house) {
        return PlanInFeet.plan()
                .with(Role.LOT, "L-1", "POLYGON ((-60 -60, 100 -60, 100 90, -60 90, -60 -60))", "own = true")
                .with(Role.BUILDING, "B-1", house, "kind = house")
                .empty(Role.WALK)
                .empty(Role.DRIVE);
    }

    /** Ground at 10 ft at the walls, and so high 20 ft out. */
    private static PlanInFeet house(double twentyOut) {
        return lot(HOUSE).spots(ring(0, 10)).spots(ring(20, twentyOut));
    }

    private static String says(PlanInFeet plan) {
        return least(plan, new RaisedGround(), RULE, any -> true)
                .least()
                .change()
                .says();
    }

    /**
     * 3 in of 6 in are there. Along the walls 140 ft x 10 ft x 0.25 ft / 2 = 6.5 cu yd, at each corner two triangles of 35 sq ft
     * with a third of 0.25 ft, 0.9 cu yd: 7.4 cu yd in all, by hand.
     */
    @Test
    void groundThatFallsTooLittleIsRaisedByWhatIsMissed() {
        assertThat(says(house(9.5)))
                .isEqualTo(
                        "raise the ground beside building B-1 along 40.00 ft of its south side by 0.25 ft, 30.00 ft of its"
                                + " east side by 0.25 ft, 40.00 ft of its north side by 0.25 ft and 30.00 ft of its west side by"
                                + " 0.25 ft at the wall, graded evenly to nothing 10.00 ft out: about 7.4 cu yd of fill; see that"
                                + " siding and sill stay as far above it as the code asks");
    }

    @Test
    void groundThatFallsExactlyAsAskedNeedsNothing() {
        assertThat(Drains.remedies(house(9), RULE)).isEmpty();
    }

    @Test
    void groundThatFallsMoreNeedsNothing() {
        assertThat(Drains.remedies(house(8), RULE)).isEmpty();
    }

    @Test
    void onlyTheSideThatFallsShortIsRaised() {
        PlanInFeet plan = lot(HOUSE)
                .spots(ring(0, 10))
                .spots("-20 -20 9.4, 60 -20 9.4, 60 50 8, -20 50 8, 0 -20 9.4, 40 -20 9.4, -20 0 8, 60 0 8");

        assertThat(says(plan))
                .startsWith(
                        "raise the ground beside building B-1 along 40.00 ft of its south side by 0.20 ft at the wall,"
                                + " graded evenly to nothing 10.00 ft out: about ")
                .doesNotContain("north");
    }

    /** The outer corners of both walls and the inner corner between them are one stretch. */
    @Test
    void aHouseWithAnInnerCornerIsRaisedAllAround() {
        PlanInFeet plan = lot("POLYGON ((0 0, 40 0, 40 15, 20 15, 20 30, 0 30, 0 0))")
                .spots(ring(5, 10))
                .spots(ring(25, 10))
                .spots("20 15 10, 30 22 10");

        assertThat(Drains.remedy(plan, RULE).proved()).isTrue();
    }

    @Test
    void onALotLineTheGroundIsGradedNoFartherThanThere() {
        PlanInFeet plan = house(9.5)
                .without(Role.LOT, "L-1")
                .with(Role.LOT, "L-1", "POLYGON ((-60 -6, 100 -6, 100 90, -60 90, -60 -6))", "own = true");
        Change change =
                least(plan, new RaisedGround(), RULE, any -> true).least().change();

        assertThat(change.says()).contains("0.15 ft").contains("graded evenly to nothing 6.00 ft to 10.00 ft out");
        assertThat(change.gradedAnew(plan.site()).getEnvelopeInternal().getMinY() / 0.3048)
                .isCloseTo(-6, Offset.offset(1e-6));
    }

    @Test
    void whatIsPavedThereIsToldAsLaidAnew() {
        PlanInFeet plan = house(9.9)
                .with(Role.WALK, "W-1", "POLYGON ((-60 -3, 100 -3, 100 -60, -60 -60, -60 -3))", "access = private");

        assertThat(says(plan)).contains("south side by 0.15 ft").contains(", the walk there laid anew on it");
    }

    @Test
    void theGroundIsGradedToABasinAndNotOverIt() {
        PlanInFeet plan = house(9.5).with(Role.INLET, "CB-1", "POINT (20 -5)", "kind = basin", "rim = 9.875 ft");
        Remedied remedied = Drains.remedy(plan, RULE);

        assertThat(remedied.says())
                .contains("graded evenly to nothing 5.00 ft to 10.00 ft out")
                .doesNotContain("rim");
        assertThat(remedied.proved()).isTrue();
    }

    @Test
    void aCoverThatIsBuriedGoesUpWithTheGround() {
        PlanInFeet plan = house(9.5).with(Role.CLEANOUT, "CO-1", "POINT (20 -4)", "rim = 9.9 ft");
        Remedied remedied = Drains.remedy(plan, RULE);
        Feature cover =
                remedied.change().orElseThrow().site().features(Role.CLEANOUT).get(0);

        assertThat(remedied.says()).contains(", the rim of cleanout CO-1 0.15 ft higher with it");
        assertThat(cover.get(Attribute.RIM).orElseThrow().metres() / 0.3048).isCloseTo(10.05, Offset.offset(1e-6));
    }

    @Test
    void aCoverThatIsThereAlreadyIsNotMovedAndThatIsTheTradeOff() {
        PlanInFeet plan = house(9.5).with(Role.CLEANOUT, "CO-1", "POINT (20 -4)", "rim = 9.9 ft", "status = existing");
        Remedied remedied = Drains.remedy(plan, RULE);

        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.TRADE_OFF);
        assertThat(remedied.says()).endsWith("but then cleanout CO-1 lies 0.15 ft below the ground");
    }

    @Test
    void aNeighboursGroundIsNotMadeWorse() {
        PlanInFeet plan = house(9.5)
                .spots(ring(40, 9))
                .with(Role.BUILDING, "B-2", "POLYGON ((52 0, 66 0, 66 30, 52 30, 52 0))", "kind = garage");

        assertThat(Drains.remedies(plan, RULE)).hasSize(2).allMatch(each -> each.kind() != Remedied.Kind.NONE);
    }

    @Test
    void withoutGroundThereIsNothingToRaise() {
        assertThat(Drains.findings(lot(HOUSE), RULE)).containsOnly(Outcome.CANNOT_TELL);
        assertThat(Drains.remedies(lot(HOUSE), RULE)).isEmpty();
    }

    @Test
    void moreThanAWallIsMadeForIsNotOffered() {
        Remedied remedied = Drains.remedy(house(14), RULE);

        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.NONE);
        assertThat(remedied.says()).startsWith("the ground beside the wall has to be raised, or cut away from it");
    }

    @Test
    void proposedGroundThatIsDrawnAsTrianglesIsLeftAsItIs() {
        PlanInFeet plan =
                house(9.5).with(Role.PROPOSED_GROUND, "T-1", "POLYGON Z ((80 80 9, 90 80 9, 90 85 9, 80 80 9))");

        assertThat(Drains.remedy(plan, RULE).kind()).isEqualTo(Remedied.Kind.NONE);
    }

    /** Uneven ground: what is offered passes in a plan that is made anew, one step less does not, and no triangle covers another. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theLeastRaiseIsFoundOnUnevenGround(int seed) {
        Random random = new Random(seed);
        PlanInFeet plan =
                lot(seed % 2 == 0 ? HOUSE : "POLYGON ((0 0, 40 0, 40 12, 24 12, 24 30, 6 30, 6 18, 0 18, 0 0))");
        StringBuilder spots = new StringBuilder();
        for (int x = -30; x <= 70; x += 10) {
            for (int y = -30; y <= 60; y += 10) {
                spots.append(spots.isEmpty() ? "" : ", ")
                        .append(String.format(
                                Locale.ROOT,
                                "%.2f %.2f %.3f",
                                x + random.nextDouble() * 3,
                                y + random.nextDouble() * 3,
                                100 + 0.02 * x + random.nextDouble() * 0.3));
            }
        }
        PlanInFeet uneven = plan.spots(spots.toString());
        Change change =
                least(uneven, new RaisedGround(), RULE, any -> true).least().change();
        List<Feature> triangles = change.site().features(Role.PROPOSED_GROUND);
        Geometry all = change.gradedAnew(uneven.site());

        assertThat(triangles.stream()
                        .mapToDouble(each -> each.geometry().getArea())
                        .sum())
                .isCloseTo(all.getArea(), Offset.offset(0.02));
        assertThat(all.intersection(uneven.site().features(Role.BUILDING).get(0).geometry())
                        .getArea())
                .isLessThan(0.01);
    }
}
