package org.fallrule.check.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.TREE;
import static org.fallrule.site.Role.UTILITY;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class ClearanceTest {
    private static final String PUBLIC_WALK_5_FT = """
            from: outfall
            to: walk
            to_where: access = 'public'
            at_least: 5 ft""";
    private static final String OWN_LOT_LINE_5_FT = """
            from: outfall
            to: lot
            to_where: own = true
            at_least: 5 ft""";

    /** A walk whose near edge is the line y = 0. */
    private static final String WALK_BELOW = "POLYGON ((-50 0, 50 0, 50 -4, -50 -4, -50 0))";

    private static final String LOT_100_FT = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Clearance(), terms);
    }

    private static PlanInFeet outfallAbovePublicWalk(String feet) {
        return plan().with(WALK, "W-1", WALK_BELOW, "access = public").with(OUTFALL, "OF-1", "POINT (0 " + feet + ")");
    }

    @Test
    void anOutfallTooNearToAPublicWalkFails() {
        assertThat(check(outfallAbovePublicWalk("3.5"), PUBLIC_WALK_5_FT))
                .containsExactly("fails OF-1 to W-1: 3.50 ft");
    }

    @Test
    void anOutfallExactlyOnTheLimitMeetsIt() {
        assertThat(check(outfallAbovePublicWalk("5"), PUBLIC_WALK_5_FT)).containsExactly("meets OF-1 to W-1: 5.00 ft");
    }

    /** Common practice without a published source: counties ask about 5 ft, and 7 to 8 ft pass. */
    @Test
    void anOutfallSevenAndAHalfFeetFromTheWalkMeetsTheUsualFive() {
        assertThat(check(outfallAbovePublicWalk("7.5"), PUBLIC_WALK_5_FT))
                .containsExactly("meets OF-1 to W-1: 7.50 ft");
    }

    @Test
    void anOutfallOnTheWalkHasNoDistanceToIt() {
        assertThat(check(outfallAbovePublicWalk("0"), PUBLIC_WALK_5_FT)).containsExactly("fails OF-1 to W-1: 0.00 ft");
        assertThat(check(outfallAbovePublicWalk("-2"), PUBLIC_WALK_5_FT)).containsExactly("fails OF-1 to W-1: 0.00 ft");
    }

    @Test
    void aPrivateWalkDoesNotCount() {
        PlanInFeet plan =
                plan().with(WALK, "W-1", WALK_BELOW, "access = private").with(OUTFALL, "OF-1", "POINT (0 1)");

        assertThat(check(plan, PUBLIC_WALK_5_FT)).isEmpty();
    }

    @Test
    void aNearWalkOfUnknownAccessLeavesItOpen() {
        PlanInFeet plan = plan().with(WALK, "W-1", WALK_BELOW).with(OUTFALL, "OF-1", "POINT (0 4)");

        assertThat(check(plan, PUBLIC_WALK_5_FT))
                .containsExactly("cannot_tell OF-1 to W-1: 4.00 ft; lacks access of walk W-1");
    }

    @Test
    void aFarWalkOfUnknownAccessDoesNotMatter() {
        PlanInFeet plan = plan().with(WALK, "W-1", WALK_BELOW).with(OUTFALL, "OF-1", "POINT (0 6)");

        assertThat(check(plan, PUBLIC_WALK_5_FT))
                .containsExactly(
                        "meets OF-1 to W-1: 6.00 ft; access of walk W-1 is not given, but it is far enough away");
    }

    @Test
    void aPublicWalkTooNearOutweighsAWalkOfUnknownAccessStillNearer() {
        PlanInFeet plan = plan().with(WALK, "W-1", WALK_BELOW)
                .with(WALK, "W-2", "POLYGON ((-50 6, 50 6, 50 9, -50 9, -50 6))", "access = public")
                .with(OUTFALL, "OF-1", "POINT (0 2)");

        assertThat(check(plan, PUBLIC_WALK_5_FT)).containsExactly("fails OF-1 to W-2: 4.00 ft");
    }

    @Test
    void theNearestOfSeveralWalksCounts() {
        PlanInFeet plan = outfallAbovePublicWalk("9")
                .with(WALK, "W-2", "POLYGON ((-50 16, 50 16, 50 20, -50 20, -50 16))", "access = public")
                .with(WALK, "W-3", "POLYGON ((30 0, 34 0, 34 20, 30 20, 30 0))", "access = public");

        assertThat(check(plan, PUBLIC_WALK_5_FT)).containsExactly("meets OF-1 to W-2: 7.00 ft");
    }

    @Test
    void eachOutfallIsHeldAgainstTheWalk() {
        PlanInFeet plan = outfallAbovePublicWalk("9").with(OUTFALL, "OF-2", "POINT (20 1)");

        assertThat(check(plan, PUBLIC_WALK_5_FT))
                .containsExactly("meets OF-1 to W-1: 9.00 ft", "fails OF-2 to W-1: 1.00 ft");
    }

    @Test
    void anOutfallOfUnknownKindLeavesARuleForPopUpsOpen() {
        String popUps = PUBLIC_WALK_5_FT + "\nfrom_where: kind = 'pop_up'";

        assertThat(check(outfallAbovePublicWalk("3"), popUps))
                .containsExactly("cannot_tell OF-1; lacks kind of outfall OF-1");
    }

    @Test
    void theDistanceIsShownFromTheOutfallToTheEdgeOfTheWalk() {
        var seen = outfallAbovePublicWalk("10")
                .observe(new Clearance(), PUBLIC_WALK_5_FT)
                .get(0);

        assertThat(seen.where().orElseThrow().getLength()).isCloseTo(3.048, within(1e-9));
    }

    @Test
    void fromInsideOfTheOwnLotTheDistanceToItsLineIsPositive() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (50 8)");

        assertThat(check(plan, OWN_LOT_LINE_5_FT)).containsExactly("meets OF-1 to L-1: 8.00 ft");
    }

    @Test
    void fromOutsideOfTheOwnLotTheDistanceToItsLineIsNegative() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (50 -8)");

        assertThat(check(plan, OWN_LOT_LINE_5_FT)).containsExactly("fails OF-1 to L-1: -8.00 ft");
    }

    @Test
    void onTheLineOfTheOwnLotThereIsNoDistance() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (50 0)");

        assertThat(check(plan, OWN_LOT_LINE_5_FT)).containsExactly("fails OF-1 to L-1: 0.00 ft");
    }

    @Test
    void fromOutsideOfANeighboursLotTheDistanceToItsLineIsPositive() {
        PlanInFeet plan = plan().with(LOT, "L-2", LOT_100_FT, "own = false").with(OUTFALL, "OF-1", "POINT (50 -8)");

        assertThat(check(plan, "from: outfall\nto: lot\nat_least: 5 ft")).containsExactly("meets OF-1 to L-2: 8.00 ft");
    }

    @Test
    void outsideOfALotThatMayBeTheOwnOneNothingCanBeTold() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT)
                .with(LOT, "L-2", "POLYGON ((0 -100, 100 -100, 100 0, 0 0, 0 -100))")
                .with(OUTFALL, "OF-1", "POINT (50 -20)");

        assertThat(check(plan, "from: outfall\nto: lot\nat_least: 5 ft"))
                .containsExactly("cannot_tell OF-1 to L-1: -20.00 ft; lacks own of lot L-1");
    }

    @Test
    void theLotLineIsMeasuredAlikeFromTheLot() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (50 -8)");

        assertThat(check(plan, "from: lot\nto: outfall\nat_least: 0 ft"))
                .containsExactly("fails L-1 to OF-1: -8.00 ft");
    }

    @Test
    void insideOfAHoleTheDistanceIsToTheEdgeOfTheHole() {
        PlanInFeet plan = plan().with(
                        WALK,
                        "W-1",
                        "POLYGON ((-50 -50, 50 -50, 50 50, -50 50, -50 -50), (-9 -9, -9 9, 9 9, 9 -9, -9 -9))",
                        "access = public")
                .with(OUTFALL, "OF-1", "POINT (3 0)");

        assertThat(check(plan, PUBLIC_WALK_5_FT)).containsExactly("meets OF-1 to W-1: 6.00 ft");
    }

    @Test
    void aPipeReachesHalfItsOutsideDiameterFromItsCentreline() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", "POLYGON ((0 0, 20 0, 20 -20, 0 -20, 0 0))")
                .with(PIPE, "P-1", "LINESTRING (-10 5, 30 5)", "outside_diameter = 6 in");

        assertThat(check(plan, "from: pipe\nto: building\nat_least: 4.75 ft"))
                .containsExactly("meets P-1 to B-1: 4.75 ft");
        assertThat(check(plan, "from: pipe\nto: building\nat_least: 5 ft"))
                .containsExactly("fails P-1 to B-1: 4.75 ft");
    }

    @Test
    void betweenTwoPipesBothHalfDiametersCount() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 3, 30 3)", "outside_diameter = 6 in")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 30 0)", "outside_diameter = 12 in");

        assertThat(check(plan, "from: pipe\nto: utility\nat_least: 2 ft")).containsExactly("meets P-1 to U-1: 2.25 ft");
    }

    @Test
    void aPipeJustOutsideOfTheOwnLotReachesBeyondItsLine() {
        PlanInFeet plan = plan().with(LOT, "L-1", LOT_100_FT, "own = true")
                .with(PIPE, "P-1", "LINESTRING (10 -0.1, 90 -0.1)", "outside_diameter = 6 in");

        assertThat(check(plan, "from: pipe\nto: lot\nat_least: 0 ft")).containsExactly("fails P-1 to L-1: -0.35 ft");
    }

    @Test
    void aPipeOfUnknownSizeNeverMeetsADistanceFromItsCentreline() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", "POLYGON ((0 0, 20 0, 20 -20, 0 -20, 0 0))")
                .with(PIPE, "P-1", "LINESTRING (-10 5.05, 30 5.05)");

        assertThat(check(plan, "from: pipe\nto: building\nat_least: 5 ft"))
                .containsExactly("cannot_tell P-1 to B-1: 5.05 ft; lacks diameter of pipe P-1");
        assertThat(check(plan, "from: pipe\nto: building\nat_least: 6 ft"))
                .containsExactly("fails P-1 to B-1: 5.05 ft");
    }

    @Test
    void aPipeOfUnknownSizeMeetsWhereEvenTheWidestPipeOfThePlanWould() {
        PlanInFeet plan = plan().with(BUILDING, "B-1", "POLYGON ((0 0, 20 0, 20 -20, 0 -20, 0 0))")
                .with(PIPE, "P-1", "LINESTRING (-10 5.25, 30 5.25)")
                .with(PIPE, "P-2", "LINESTRING (-10 50, 30 50)", "outside_diameter = 4 in")
                .with(PIPE, "P-3", "LINESTRING (-10 60, 30 60)", "outside_diameter = 6 in");

        assertThat(check(plan, "from: pipe\nto: building\nat_least: 5 ft"))
                .startsWith("meets P-1 to B-1: 5.00 ft; diameter of pipe P-1 is not given;"
                        + " counted as wide as the widest pipe of the plan, 6.0 in");
        assertThat(check(plan, "from: pipe\nto: building\nat_least: 5.01 ft"))
                .startsWith("cannot_tell P-1 to B-1: 5.25 ft; lacks diameter of pipe P-1");
        assertThat(check(plan, "from: pipe\nto: building\nat_least: 6 ft")).startsWith("fails P-1 to B-1: 5.25 ft");
    }

    @Test
    void aUtilityOfUnknownSizeIsNotCountedAsAPipe() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 30 0)", "outside_diameter = 6 in")
                .with(UTILITY, "U-1", "LINESTRING (0 90, 30 90)");

        assertThat(check(plan, "from: utility\nto: pipe\nat_least: 5 ft"))
                .containsExactly("cannot_tell U-1 to P-1: 89.75 ft; lacks diameter of utility U-1");
    }

    @Test
    void withinTheAccuracyOfTheSurveyOnEitherSideOfTheLimitItIsBorderline() {
        assertThat(check(outfallAbovePublicWalk("4.85").surveyedTo(0.1, 0), PUBLIC_WALK_5_FT))
                .containsExactly("fails OF-1 to W-1: 4.85 ft");
        assertThat(check(outfallAbovePublicWalk("4.95").surveyedTo(0.1, 0), PUBLIC_WALK_5_FT))
                .containsExactly("borderline OF-1 to W-1: 4.95 ft");
        assertThat(check(outfallAbovePublicWalk("5.05").surveyedTo(0.1, 0), PUBLIC_WALK_5_FT))
                .containsExactly("borderline OF-1 to W-1: 5.05 ft");
        assertThat(check(outfallAbovePublicWalk("5.15").surveyedTo(0.1, 0), PUBLIC_WALK_5_FT))
                .containsExactly("meets OF-1 to W-1: 5.15 ft");
    }

    @Test
    void anOutfallThatIsBuiltIsItselfSurveyed() {
        PlanInFeet plan = plan().with(WALK, "W-1", WALK_BELOW, "access = public")
                .with(OUTFALL, "OF-1", "POINT (0 5.12)", "status = as_built")
                .surveyedTo(0.1, 0);

        assertThat(check(plan, PUBLIC_WALK_5_FT)).containsExactly("borderline OF-1 to W-1: 5.12 ft");
    }

    @Test
    void aFeatureIsNotHeldAgainstItself() {
        PlanInFeet plan = plan().with(TREE, "T-1", "POINT (0 0)").with(TREE, "T-2", "POINT (12 0)");

        assertThat(check(plan, "from: tree\nto: tree\nat_least: 10 ft"))
                .containsExactly("meets T-1 to T-2: 12.00 ft", "meets T-2 to T-1: 12.00 ft");
    }

    @Test
    void underALimitThatIsNotAskedNothingIsObserved() {
        String curbsFree = """
                from: outfall
                to: walk
                at_least: none when kind = 'curb'
                at_least: 5 ft""";
        PlanInFeet plan = plan().with(WALK, "W-1", WALK_BELOW)
                .with(OUTFALL, "OF-1", "POINT (0 1)", "kind = curb")
                .with(OUTFALL, "OF-2", "POINT (0 1)", "kind = daylight")
                .with(OUTFALL, "OF-3", "POINT (0 1)");

        assertThat(check(plan, curbsFree))
                .containsExactly(
                        "fails OF-2 to W-1: 1.00 ft",
                        "cannot_tell OF-3; lacks kind of outfall OF-3, on which the limit depends");
    }

    @Property
    void everyWholeNumberOfFeetExactlyOnItsLimitMeetsIt(@ForAll @IntRange(min = 1, max = 400) int feet) {
        String asked = "from: outfall\nto: walk\nat_least: " + feet + " ft";

        assertThat(outfallAbovePublicWalk(String.valueOf(feet)).observe(new Clearance(), asked))
                .allMatch(seen -> seen.outcome() == Outcome.MEETS);
    }

    @Property(tries = 200)
    void turningThePlanChangesNoDistance(
            @ForAll @DoubleRange(min = 0, max = 6.3) double angle,
            @ForAll @DoubleRange(min = -40, max = 140) double y) {
        PlanInFeet plan =
                plan().with(LOT, "L-1", LOT_100_FT, "own = true").with(OUTFALL, "OF-1", "POINT (50 " + y + ")");
        var turn = org.locationtech.jts.geom.util.AffineTransformation.rotationInstance(angle);

        double straight = distance(plan);
        double turned = distance(plan.reshaped(turn::transform));

        assertThat(straight).isCloseTo(0.3048 * Math.min(y, 100 - y), within(1e-9));
        assertThat(turned).isCloseTo(straight, within(1e-9));
    }

    private static double distance(PlanInFeet plan) {
        return plan.observe(new Clearance(), OWN_LOT_LINE_5_FT)
                .get(0)
                .measured()
                .orElseThrow()
                .value()
                .si();
    }

    // at most: near enough to one of them

    private static final String CLEANOUT_WITHIN_5_FT = """
            from: inlet
            to: cleanout
            at_most: 5 ft""";

    private static PlanInFeet downspoutAndCleanout(String... cleanouts) {
        PlanInFeet plan = plan().with(Role.INLET, "DS-1", "POINT (0 0)", "kind = downspout");
        for (String place : cleanouts) {
            plan = plan.with(Role.CLEANOUT, "CO-" + place.charAt(0), "POINT (" + place + ")");
        }
        return plan;
    }

    @Test
    void nearEnoughMeetsExactlyAtTheLimitTooAndFartherFails() {
        assertThat(check(downspoutAndCleanout("4 0"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("meets DS-1 to CO-4: 4.00 ft");
        assertThat(check(downspoutAndCleanout("3 4"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("meets DS-1 to CO-3: 5.00 ft");
        assertThat(check(downspoutAndCleanout("6 0"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("fails DS-1 to CO-6: 6.00 ft");
        assertThat(check(downspoutAndCleanout("0 0"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("meets DS-1 to CO-0: 0.00 ft");
    }

    @Test
    void oneThatIsNearEnoughWillDo() {
        assertThat(check(downspoutAndCleanout("9 0", "2 0", "7 0"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("meets DS-1 to CO-2: 2.00 ft");
        assertThat(check(downspoutAndCleanout("9 0", "7 0"), CLEANOUT_WITHIN_5_FT))
                .containsExactly("fails DS-1 to CO-7: 7.00 ft");
    }

    @Test
    void whereThereIsNoneOfTheKindNoneIsNear() {
        assertThat(check(
                        plan().with(OUTFALL, "OF-1", "POINT (0 3)").with(WALK, "W-1", WALK_BELOW, "access = private"),
                        PUBLIC_WALK_5_FT.replace("at_least", "at_most")))
                .containsExactly("fails OF-1; the plan has no walk with access = 'public'");
    }

    @Test
    void oneThatMayNotBeOfTheKindLeavesItOpenOnlyWhereItIsNearEnough() {
        String atMost = PUBLIC_WALK_5_FT.replace("at_least", "at_most");
        PlanInFeet walk = plan().with(WALK, "W-1", WALK_BELOW);

        assertThat(check(walk.with(OUTFALL, "OF-1", "POINT (0 3)"), atMost))
                .containsExactly("cannot_tell OF-1 to W-1: 3.00 ft; lacks access of walk W-1");
        assertThat(check(walk.with(OUTFALL, "OF-1", "POINT (0 8)"), atMost))
                .containsExactly("fails OF-1 to W-1: 8.00 ft");
    }

    @Test
    void theCentrelineOfAPipeOfUnknownSizeCanBeNearEnoughButNotTooFar() {
        String pipeWithin5 = "from: outfall\nto: pipe\nat_most: 5 ft";
        PlanInFeet pipe = plan().with(PIPE, "P-1", "LINESTRING (-9 0, 9 0)");

        assertThat(check(pipe.with(OUTFALL, "OF-1", "POINT (0 4)"), pipeWithin5))
                .containsExactly("meets OF-1 to P-1: 4.00 ft");
        assertThat(check(pipe.with(OUTFALL, "OF-1", "POINT (0 6)"), pipeWithin5))
                .containsExactly("cannot_tell OF-1 to P-1: 6.00 ft; lacks diameter of pipe P-1");
    }

    @Test
    void bothLimitsAreHeldEachOnItsOwn() {
        assertThat(check(downspoutAndCleanout("1 0", "9 0"), CLEANOUT_WITHIN_5_FT + "\nat_least: 2 ft"))
                .containsExactly("fails DS-1 to CO-1: 1.00 ft", "meets DS-1 to CO-1: 1.00 ft");
    }
}
