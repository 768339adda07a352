package org.fallrule.check.utility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance3d.Distance3DOp;

/** What holds of any pipe and any utility. */
class SeparationPropertiesTest {
    private static final double FOOT = 0.3048;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final String BESIDE = """
            from: utility
            beside_at_least: 5 ft
            near_crossing: 5 ft
            size_if_unknown: 4 in""";
    private static final String BOTH = BESIDE + "\nacross_at_least: 12 in";

    private static PlanInFeet pair(double x, double y, double turn, double length) {
        return plan().with(UTILITY, "U-1", "LINESTRING (-40 0, 40 0)", "outside_diameter = 6 in", "top = 97 ft")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING (" + x + " " + y + ", " + (x + length * Math.cos(turn)) + " "
                                + (y + length * Math.sin(turn)) + ")",
                        "outside_diameter = 4 in",
                        "invert_up = 99 ft",
                        "invert_down = 98.5 ft");
    }

    private static Outcome beside(PlanInFeet plan) {
        return plan.observe(new Separation(), BESIDE).stream()
                .map(Observation::outcome)
                .findFirst()
                .orElse(Outcome.NOT_APPLICABLE);
    }

    @Property(tries = 150)
    void aSmallerErrorNeverMakesABorderline(
            @ForAll @DoubleRange(min = 0.3, max = 15) double y,
            @ForAll @DoubleRange(min = 0, max = 5) double error,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        PlanInFeet plan = pair(0, y, 0, 20);

        boolean wasBorderline = beside(plan.surveyedTo(error, 0)) == Outcome.BORDERLINE;
        boolean isBorderline = beside(plan.surveyedTo(error * share, 0)) == Outcome.BORDERLINE;

        assertThat(!isBorderline || wasBorderline).isTrue();
    }

    @Property(tries = 100)
    void aBorderlineIsSettledTheSameWayByEachSmallerErrorThatSettlesIt(
            @ForAll @DoubleRange(min = 0.3, max = 15) double y, @ForAll @DoubleRange(min = 0, max = 5) double error) {
        PlanInFeet plan = pair(0, y, 0, 20);

        assertThat(beside(plan.surveyedTo(error, 0))).isIn(Outcome.BORDERLINE, beside(plan));
    }

    @Property(tries = 200)
    void theDistanceIsTheSameFromEitherSideAndIsTheLibrarysLessTheRadii(
            @ForAll @DoubleRange(min = -60, max = 60) double x,
            @ForAll @DoubleRange(min = -60, max = 60) double y,
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn,
            @ForAll @DoubleRange(min = 1, max = 60) double length) {
        PlanInFeet plan = pair(x, y, turn, length);
        Feature pipe = plan.site().features(PIPE).get(0);
        Feature utility = plan.site().features(UTILITY).get(0);

        double there = PlanDistance.between(pipe, utility).gap().metres();
        double back = PlanDistance.between(utility, pipe).gap().metres();

        assertThat(there).isCloseTo(back, within(1e-9));
        assertThat(there)
                .isCloseTo(DistanceOp.distance(pipe.geometry(), utility.geometry()) - 5 / 12.0 * FOOT, within(1e-9));
    }

    /** Closed form: a line y off a parallel one that is long enough keeps |y| less both radii. */
    @Property(tries = 100)
    void besideAParallelLineTheDistanceIsTheOffsetLessTheRadii(@ForAll @DoubleRange(min = -30, max = 30) double y) {
        PlanInFeet plan = pair(-10, y, 0, 20);

        assertThat(PlanDistance.between(
                                plan.site().features(PIPE).get(0),
                                plan.site().features(UTILITY).get(0))
                        .gap()
                        .metres())
                .isCloseTo((Math.abs(y) - 5 / 12.0) * FOOT, within(1e-9));
    }

    /** Of two level lines that cross in plan the shortest way in space between the axes is upright: Distance3DOp of JTS. */
    @Property(tries = 150)
    void betweenLevelLinesTheHeightIsTheDistanceInSpaceLessTheRadii(
            @ForAll @DoubleRange(min = 90, max = 105) double invert,
            @ForAll @DoubleRange(min = 0.1, max = 3.04) double turn) {
        double dx = 30 * Math.cos(turn);
        double dy = 30 * Math.sin(turn);
        String level = " " + invert;
        PlanInFeet plan = plan().with(
                        UTILITY, "U-1", "LINESTRING (-40 0, 40 0)", "outside_diameter = 6 in", "top = 97 ft")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING Z (" + -dx + " " + -dy + level + ", " + dx + " " + dy + level + ")",
                        "outside_diameter = 4 in");
        double axis = invert + 2 / 12.0;
        double space = Distance3DOp.distance(lineAt(-dx, -dy, dx, dy, axis), lineAt(-40, 0, 40, 0, 97 - 3 / 12.0));
        var analysis = plan.analysis();

        Length clear = UtilityCrossing.along(analysis, analysis.network().runs().get(0))
                .get(0)
                .gap(new Length(0))
                .orElseThrow()
                .clear();

        assertThat(clear.metres() / FOOT).isCloseTo(space - 5 / 12.0, within(1e-6));
    }

    private static Geometry lineAt(double x0, double y0, double x1, double y1, double z) {
        return GEOMETRY.createLineString(new Coordinate[] {new Coordinate(x0, y0, z), new Coordinate(x1, y1, z)});
    }

    @Property(tries = 60)
    void movingAndTurningThePlanChangesNothing(
            @ForAll @DoubleRange(min = -20, max = 20) double x,
            @ForAll @DoubleRange(min = 0.5, max = 20) double y,
            @ForAll @DoubleRange(min = 3.5, max = 5.9) double heading,
            @ForAll @DoubleRange(min = -500, max = 500) double away,
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
        PlanInFeet plan = pair(x, y, heading, 35);
        Assume.that(clearOfLimits(plan));
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        PlanInFeet moved = plan.moved(place -> new Coordinate(
                away + place.x * cos - place.y * sin, -away + place.x * sin + place.y * cos, place.getZ()));

        assertThat(moved.check(new Separation(), BOTH)).isEqualTo(plan.check(new Separation(), BOTH));
    }

    /** Printed digits may tip where a value lies at a half of the last one; such plans prove nothing. */
    private static boolean clearOfLimits(PlanInFeet plan) {
        List<String> seen = plan.check(new Separation(), BOTH);
        double nudge = 1e-7;
        return plan.moved(place -> new Coordinate(place.x * (1 + nudge), place.y * (1 + nudge), place.getZ()))
                        .check(new Separation(), BOTH)
                        .equals(seen)
                && plan.moved(place -> new Coordinate(place.x * (1 - nudge), place.y * (1 - nudge), place.getZ()))
                        .check(new Separation(), BOTH)
                        .equals(seen);
    }
}
