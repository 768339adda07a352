package org.fallrule.check.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;

import java.util.List;
import java.util.Locale;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class LowPointTest {
    private static final String AT_THE_BOTTOM = """
            of: inlet
            of_where: kind = 'basin'
            off_at_most: 2 ft
            pond_deeper_than: 1 in
            as_low_as: 0.5 in
            look_within: 10 ft""";
    private static final String WITH_RIM = AT_THE_BOTTOM + "\nrim_at_most: 1 in";

    /** A bowl: level at 9 ft over 8 by 8 ft, rising to 10 ft on a square of 40 ft, falling again to 9.5 ft outside. */
    private static PlanInFeet bowl() {
        return plan().spots(square(16, 24, 9)).spots(square(0, 40, 10)).spots(square(-20, 60, 9.5));
    }

    /** Ground that falls 2 % to the south, from 11.2 ft. */
    private static PlanInFeet slope() {
        return plan().spots("-40 -40 9.6, 80 -40 9.6, 80 80 12, -40 80 12");
    }

    private static String square(double from, double to, double height) {
        return String.format(
                Locale.ROOT, "%1$f %1$f %3$f, %2$f %1$f %3$f, %2$f %2$f %3$f, %1$f %2$f %3$f", from, to, height);
    }

    private static PlanInFeet basin(PlanInFeet plan, double x, double y, String... more) {
        String[] attributes = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("kind = basin"), java.util.Arrays.stream(more))
                .toArray(String[]::new);
        return plan.with(INLET, "CB-1", "POINT (" + x + " " + y + ")", attributes);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new LowPoint(), terms);
    }

    @Test
    void aBasinAtTheBottomMeets() {
        assertThat(check(basin(bowl(), 20, 20), AT_THE_BOTTOM))
                .singleElement()
                .asString()
                .startsWith("meets CB-1: 0.00 ft; the hollow is 11.9 in deep, over ");
    }

    @Test
    void theHollowIsDescribed() {
        String told = check(basin(bowl(), 20, 20), AT_THE_BOTTOM).get(0);

        // a frustum of 8 and 40 ft squares, 1 ft deep: (64 + 1600 + sqrt(64 x 1600)) / 3 = 661 cu ft, less what the
        // grid misses of the ridge
        assertThat(told).containsPattern("over 1[56]\\d\\d sq ft, holding 6[456]\\d cu ft");
    }

    @Test
    void aBasinUpTheSideOfTheHollowFails() {
        assertThat(check(basin(bowl(), 34, 20), AT_THE_BOTTOM))
                .singleElement()
                .asString()
                .startsWith("fails CB-1: 9.");
    }

    @Test
    void aBasinExactlyAsFarOffAsMayBeMeets() {
        PlanInFeet plan = basin(bowl(), 34, 20);
        double off = plan.observe(new LowPoint(), AT_THE_BOTTOM)
                .get(0)
                .measured()
                .orElseThrow()
                .value()
                .si();

        assertThat(check(plan, AT_THE_BOTTOM.replace("2 ft", off + " m")).get(0))
                .startsWith("meets");
        assertThat(check(plan, AT_THE_BOTTOM.replace("2 ft", off - 0.01 + " m")).get(0))
                .startsWith("fails");
    }

    @Test
    void aBasinBesideTheHollowIsMeasuredToIt() {
        assertThat(check(basin(bowl(), 48, 20), AT_THE_BOTTOM))
                .singleElement()
                .asString()
                .startsWith("fails CB-1: 23.");
        assertThat(check(basin(bowl(), 48, 20), AT_THE_BOTTOM.replace("look_within: 10 ft", "look_within: 5 ft")))
                .containsExactly("not_applicable CB-1; no water stands within 5 ft of it by the ground given");
    }

    @Test
    void withinTheAccuracyOfTheSurveyItIsBorderline() {
        PlanInFeet built = basin(bowl(), 25.5, 20, "status = existing").surveyedTo(1, 0.05);

        assertThat(check(built, AT_THE_BOTTOM).get(0)).startsWith("borderline");
    }

    @Test
    void aRimAsHighAboveTheBottomAsMayBeMeets() {
        assertThat(check(basin(bowl(), 20, 20, "rim = 9.08333333 ft"), WITH_RIM).get(1))
                .isEqualTo("meets CB-1: 1.0 in");
    }

    @Test
    void aRimThatLeavesWaterStandingFails() {
        assertThat(check(basin(bowl(), 20, 20, "rim = 9.25 ft"), WITH_RIM).get(1))
                .isEqualTo("fails CB-1: 3.0 in");
    }

    @Test
    void aRimBelowTheGroundMeets() {
        assertThat(check(basin(bowl(), 20, 20, "rim = 8.75 ft"), WITH_RIM).get(1))
                .isEqualTo("meets CB-1: -3.0 in");
    }

    @Test
    void aRimThatIsNotGivenCannotBeTold() {
        assertThat(check(basin(bowl(), 20, 20), WITH_RIM).get(1))
                .isEqualTo("cannot_tell CB-1; lacks rim of inlet CB-1");
    }

    @Test
    void onFallingGroundWaterRunsPastTheBasin() {
        assertThat(check(basin(slope(), 20, 20), WITH_RIM))
                .singleElement()
                .asString()
                .startsWith("fails CB-1: 2.")
                .endsWith("; no water stands within 10 ft of it by the ground given");
    }

    @Test
    void aRimSetBelowAllGroundNearbyMakesALowPointOfItsOwn() {
        assertThat(check(basin(slope(), 20, 20, "rim = 10.5 ft"), WITH_RIM))
                .singleElement()
                .asString()
                .startsWith("meets CB-1: -1.");
    }

    @Test
    void whatARuleDoesNotAskOnFallingGroundDoesNotApply() {
        assertThat(check(basin(slope(), 20, 20), AT_THE_BOTTOM))
                .containsExactly("not_applicable CB-1; no water stands within 10 ft of it by the ground given");
    }

    @Test
    void aHollowNoDeeperThanAskedIsNone() {
        assertThat(check(basin(bowl(), 20, 20), AT_THE_BOTTOM.replace("than: 1 in", "than: 12.5 in")))
                .singleElement()
                .asString()
                .startsWith("not_applicable");
    }

    @Test
    void whereTheGroundAroundIsNotKnownItCannotBeTold() {
        assertThat(check(basin(slope(), 75, 20), WITH_RIM))
                .containsExactly("cannot_tell CB-1; lacks the ground around inlet CB-1");
        assertThat(check(basin(slope(), 200, 20), WITH_RIM))
                .containsExactly("cannot_tell CB-1; lacks the ground around inlet CB-1");
    }

    @Test
    void aDownspoutIsNotLookedAtAndAnInletOfUnknownKindIsLeftOpen() {
        assertThat(check(bowl().with(INLET, "DS-1", "POINT (20 20)", "kind = downspout"), AT_THE_BOTTOM))
                .isEmpty();
        assertThat(bowl().with(INLET, "I-1", "POINT (20 20)").observe(new LowPoint(), AT_THE_BOTTOM))
                .singleElement()
                .satisfies(seen -> assertThat(seen.outcome()).isEqualTo(Outcome.CANNOT_TELL));
    }

    @Test
    void ofTwoHollowsTheNearerCounts() {
        // two pits; what counts as the bottom lies 7.8 ft from the basin in the one and 11.8 ft in the other, to within
        // a grid step
        PlanInFeet plan = plan().spots("-40 -40 10, 80 -40 10, 80 80 10, -40 80 10")
                .spots(pit(0, 12))
                .spots(pit(24, 36));

        assertThat(check(basin(plan, 16, 6), AT_THE_BOTTOM.replace("off_at_most: 2 ft", "off_at_most: 20 ft"))
                        .get(0))
                .containsPattern("^meets CB-1: (7[.][5-9]|8[.]0)");
        assertThat(check(basin(plan, 20, 6), AT_THE_BOTTOM.replace("off_at_most: 2 ft", "off_at_most: 20 ft"))
                        .get(0))
                .containsPattern("^meets CB-1: (7[.][5-9]|8[.]0)");
    }

    /** A square pit from one easting to another, its bottom at 9 ft and 4 ft within its rim. */
    private static String pit(double west, double east) {
        return String.format(
                Locale.ROOT,
                "%1$f 0 10, %2$f 0 10, %2$f 12 10, %1$f 12 10, %3$f 4 9, %4$f 4 9, %4$f 8 9, %3$f 8 9",
                west,
                east,
                west + 4,
                east - 4);
    }

    @Test
    void onFallingGroundItSaysWhatIsMeasuredAndShowsTheWayToTheLowestPlace() {
        String ground = "ground at it above the lowest ground within 10 ft of it";
        Observation seen =
                basin(slope(), 20, 20).observe(new LowPoint(), WITH_RIM).get(0);

        assertThat(seen.measured().orElseThrow().of()).isEqualTo(ground);
        assertThat(basin(slope(), 20, 20, "rim = 10.5 ft")
                        .observe(new LowPoint(), WITH_RIM)
                        .get(0)
                        .measured()
                        .orElseThrow()
                        .of())
                .isEqualTo(ground.replace("ground at it", "rim"));
        // the lowest lies down the slope: on the last row of nodes, 0.25 m apart, within 10 ft
        Coordinate[] way = seen.where().orElseThrow().getCoordinates();
        assertThat(way[1].x / 0.3048).isCloseTo(20, within(1.8));
        assertThat(way[1].y).isCloseTo(20 * 0.3048 - 3, within(1e-6));
    }

    @Test
    void theLowestPlaceIsFoundOnWhicheverSideItLies() {
        PlanInFeet toTheNorth = plan().spots("-40 -40 12, 80 -40 12, 80 80 9.6, -40 80 9.6");
        PlanInFeet toTheEast = plan().spots("-40 -40 12, 80 -40 9.6, 80 80 9.6, -40 80 12");

        assertThat(lowest(toTheNorth).y).isCloseTo(20 * 0.3048 + 3, within(1e-6));
        assertThat(lowest(toTheEast).x).isCloseTo(20 * 0.3048 + 3, within(1e-6));
    }

    private static Coordinate lowest(PlanInFeet ground) {
        return basin(ground, 20, 20)
                .observe(new LowPoint(), WITH_RIM)
                .get(0)
                .where()
                .orElseThrow()
                .getCoordinates()[1];
    }

    @Test
    void aHollowExactlyAsDeepAsAskedIsNone() {
        double deep = bowl().analysis()
                .flow()
                .filled()
                .orElseThrow()
                .pondAt(new Coordinate(20 * 0.3048, 20 * 0.3048))
                .orElseThrow()
                .depth()
                .metres();

        assertThat(check(basin(bowl(), 20, 20), AT_THE_BOTTOM.replace("than: 1 in", "than: " + deep + " m")))
                .singleElement()
                .asString()
                .startsWith("not_applicable");
        assertThat(check(basin(bowl(), 20, 20), AT_THE_BOTTOM.replace("than: 1 in", "than: " + (deep - 0.01) + " m")))
                .singleElement()
                .asString()
                .startsWith("meets");
    }
}
