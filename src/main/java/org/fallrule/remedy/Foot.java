package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.ground.FallAround;
import org.fallrule.check.ground.WallSample;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.math.Vector2D;

/**
 * A place at the foot of a wall and how far the ground has to be raised there.
 *
 * @param root the ground at the wall
 * @param toe the ground that it is graded down to
 * @param missed metres that the ground at the wall lies too low, the survey's accuracy included; none or less where it does not
 * @param falls whether it falls short, or may
 */
record Foot(WallSample sample, Coordinate root, Coordinate toe, double missed, boolean falls) {
    /** No nearer to the wall than this share of the way is graded to, so that no bank is heaped up against the wall. */
    private static final double NEAREST = 0.5;

    /** Metres; ground that lies no more above the lowest is as low. */
    private static final double AS_LOW = 0.001;

    /** Metres; nearer to the wall nothing is graded to. */
    private static final double TOO_NEAR = 0.6;

    /** Every place of which it is known how it stands, in their order. */
    static List<Foot> all(SiteAnalysis analysis, GroundSurface ground, List<FallAround.Beside> around) {
        List<Coordinate> grates = analysis.site().features(Role.INLET).stream()
                .filter(inlet -> !inlet.get(Attribute.KIND).orElse("").equals("downspout"))
                .map(inlet -> inlet.geometry().getCoordinate())
                .toList();
        return around.stream()
                .flatMap(place -> of(ground, grates, place).stream())
                .toList();
    }

    private static Optional<Foot> of(GroundSurface ground, List<Coordinate> grates, FallAround.Beside place) {
        Optional<Measured> measured = place.seen().flatMap(seen -> seen.measured());
        WallSample sample = place.sample();
        Optional<Coordinate> root = at(ground, sample.line().getCoordinateN(0));
        Optional<Coordinate> low = lowest(ground, sample);
        Optional<Coordinate> toe = grate(grates, sample)
                .flatMap(station -> at(ground, new LengthIndexedLine(sample.line()).extractPoint(station)))
                .or(() -> low);
        if (measured.isEmpty() || root.isEmpty() || low.isEmpty() || toe.isEmpty()) {
            return Optional.empty();
        }
        Outcome outcome = place.seen().orElseThrow().outcome();
        boolean falls = outcome == Outcome.FAILS || outcome == Outcome.BORDERLINE;
        double fall = root.get().getZ() - low.get().getZ();
        return measured.get()
                .limit()
                .map(limit -> limit.value().quantity().si() + measured.get().accuracy() - fall)
                .map(missed -> new Foot(sample, root.get(), toe.get(), missed, falls));
    }

    /** The ground at a place, nothing where it is not known. */
    static Optional<Coordinate> at(GroundSurface ground, Coordinate place) {
        return ground.elevationAt(place).map(level -> new Coordinate(place.x, place.y, level.metres()));
    }

    /** The lowest ground in the farther part of the way; of places as low the farthest. */
    private static Optional<Coordinate> lowest(GroundSurface ground, WallSample sample) {
        double length = sample.length();
        LengthIndexedLine line = new LengthIndexedLine(sample.line());
        TreeSet<Double> stations = new TreeSet<>(ground.breaksAlong(sample.line()));
        stations.removeIf(station -> station < NEAREST * length || station > length);
        stations.add(length);
        List<Coordinate> places = new ArrayList<>();
        for (double station : stations.descendingSet()) {
            at(ground, line.extractPoint(station)).ifPresent(places::add);
        }
        Optional<Coordinate> lowest = places.stream().min(Comparator.comparingDouble(Coordinate::getZ));
        return lowest.flatMap(low -> places.stream()
                .filter(place -> place.getZ() <= low.getZ() + AS_LOW)
                .findFirst());
    }

    /** How far out a grate lies beside the way: the ground is graded to it, not over it. */
    private static Optional<Double> grate(List<Coordinate> grates, WallSample sample) {
        LineSegment way = new LineSegment(
                sample.line().getCoordinateN(0),
                sample.line().getCoordinateN(sample.line().getNumPoints() - 1));
        return grates.stream()
                .filter(grate -> way.distance(grate) <= WallStretches.RUN_OUT)
                .map(grate -> way.project(grate).distance(way.p0))
                .filter(station -> station >= TOO_NEAR && station < sample.length())
                .min(Double::compare);
    }

    LineSegment wall() {
        return sample.from();
    }

    /** How far out it is graded to, in metres. */
    double reach() {
        return root.distance(toe);
    }

    /** The direction along the wall. */
    Vector2D along() {
        return Vector2D.create(wall().p0, wall().p1).normalize();
    }

    /** The direction straight away from the wall. */
    Vector2D outward() {
        Coordinate end = sample.line().getCoordinateN(sample.line().getNumPoints() - 1);
        return Vector2D.create(sample.line().getCoordinateN(0), end).normalize();
    }
}
