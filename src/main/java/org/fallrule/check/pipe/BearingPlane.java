package org.fallrule.check.pipe;

import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.DistanceOp;

/** The plane that falls away from the bottom outer edge of a building's footing. */
final class BearingPlane {
    /** How closely, in metres along a pipe, to look for the place nearest to the plane, before closing in on it. */
    private static final double STEP = 0.25;
    /** How exactly, in metres, that place is found. */
    private static final double EXACTLY = 1e-7;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Margins in metres that differ by no more are the same, and the first counts: rounding must not choose the station. */
    private static final double SAME = 1e-6;

    private final SiteAnalysis analysis;
    private final Feature building;
    private final double fallPerMetre;

    /** @param angle from the horizontal, in radians */
    BearingPlane(SiteAnalysis analysis, Feature building, double angle) {
        this.analysis = analysis;
        this.building = building;
        this.fallPerMetre = Math.tan(angle);
    }

    /**
     * A place along a trench.
     *
     * @param pipe the pipe that is laid in it
     * @param station its station in metres
     * @param gap plan distance from the trench to the building
     * @param below how far the trench's bottom lies below the footing's; negative when above
     * @param perHeight how far away the plane asks a trench to be for each metre below
     * @param between from the pipe's axis straight to the building
     */
    record Place(
            PipeRun pipe,
            Feature building,
            double station,
            Length gap,
            Length below,
            double perHeight,
            LineString between) {
        /** The plan distance that the plane asks for so far below; negative when above. */
        Length away() {
            return below.times(perHeight);
        }

        double margin() {
            return gap.metres() - away().metres();
        }

        Observation observation(SiteAnalysis analysis) {
            Limit limit = new Limit(Bound.AT_LEAST, asked(analysis.site().unit(Unit.FOOT)));
            Measured measured = new Measured(
                    "plan distance from the trench to the footing",
                    gap,
                    accuracy(analysis),
                    Optional.of(limit),
                    Optional.empty());
            return Observation.measured(pipe.pipe(), measured)
                    .at(between)
                    .noting("at station " + analysis.station(station))
                    .noting(level(analysis.site()));
        }

        private Written asked(Unit unit) {
            double number = away().metres() / unit.toSi();
            return number > 0 ? Written.of(number, unit, 2) : Written.of(0, unit);
        }

        private String level(Site plan) {
            Length apart = new Length(Math.abs(below.metres()));
            String side = below.metres() > 0 ? " below" : " above";
            return "the trench's bottom lies " + plan.printed(apart, Unit.FOOT) + side + " the footing's";
        }

        /** Where the trench surely lies above the footing no distance is asked, however well it is known. */
        private double accuracy(SiteAnalysis analysis) {
            double height = Accuracy.ofHeight(analysis, pipe.pipe(), building).metres();
            return below.metres() <= -height
                    ? 0
                    : Math.hypot(
                            Accuracy.ofDistance(analysis, pipe.pipe(), building).metres(), height * perHeight);
        }
    }

    /** The place of a trench that comes nearest to the plane or farthest into it; nothing where the footing is not known. */
    Optional<Place> nearest(PipeRun run, PipeProfile profile, Trench trench, double beside) {
        DoubleFunction<Optional<Place>> at = station -> place(run, profile, trench, beside, station);
        Optional<Place> nearest = Optional.empty();
        NavigableSet<Double> stations = stations(run, profile);
        for (double station : stations) {
            nearest = nearer(nearest, at.apply(station));
        }
        return nearest.flatMap(place -> closingIn(
                at,
                Optional.ofNullable(stations.lower(place.station)).orElse(place.station),
                place,
                Optional.ofNullable(stations.higher(place.station)).orElse(place.station)));
    }

    /** Whether the trench comes as near as so many metres to an edge at which the level of the footing is not known. */
    boolean isOpenWithin(double metres, PipeRun run, PipeProfile profile) {
        double reach = metres + radius(run) + Dimension.LENGTH.tolerance();
        return building.get(Attribute.FOOTING_BOTTOM).isEmpty()
                && stations(run, profile).stream()
                        .map(station -> toBuilding(profile, station))
                        .anyMatch(ends -> ends[0].distance(ends[1]) <= reach
                                && footingAt(ends[1]).isEmpty());
    }

    private static Optional<Place> nearer(Optional<Place> one, Optional<Place> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return other.get().margin() < one.get().margin() - SAME ? other : one;
    }

    private NavigableSet<Double> stations(PipeRun run, PipeProfile profile) {
        NavigableSet<Double> stations = new TreeSet<>();
        double length = profile.length().metres();
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 0; i <= steps; i++) {
            stations.add(steps == 0 ? 0 : length * i / steps);
        }
        for (Coordinate bend : run.axis().getCoordinates()) {
            stations.add(profile.stationOf(bend));
        }
        for (Coordinate corner : building.geometry().getCoordinates()) {
            stations.add(profile.stationOf(corner));
        }
        return stations;
    }

    /** Halves the reach around the nearest place until it is found (ternary search). */
    private static Optional<Place> closingIn(DoubleFunction<Optional<Place>> at, double from, Place start, double to) {
        Optional<Place> nearest = Optional.of(start);
        double low = from;
        double high = to;
        while (high - low > EXACTLY) {
            double third = (high - low) / 3;
            Optional<Place> left = at.apply(low + third);
            Optional<Place> right = at.apply(high - third);
            nearest = nearer(nearer(nearest, left), right);
            boolean goLeft = left.isPresent()
                    && (right.isEmpty() || left.get().margin() < right.get().margin());
            low = goLeft ? low : low + third;
            high = goLeft ? high - third : high;
        }
        return nearest;
    }

    private Optional<Place> place(PipeRun run, PipeProfile profile, Trench trench, double beside, double station) {
        Coordinate[] nearest = toBuilding(profile, station);
        double reach = radius(run) + beside;
        Length gap = new Length(Math.max(0, nearest[0].distance(nearest[1]) - reach));
        return footingAt(nearest[1]).map(footing -> {
            Length below = footing.above(trench.bottomAt(station));
            return new Place(run, building, station, gap, below, 1 / fallPerMetre, GEOMETRY.createLineString(nearest));
        });
    }

    /** A place on the pipe's axis and that of the building which is nearest to it. */
    private Coordinate[] toBuilding(PipeProfile profile, double station) {
        return DistanceOp.nearestPoints(GEOMETRY.createPoint(profile.placeAt(station)), building.geometry());
    }

    private static double radius(PipeRun run) {
        return run.size().map(OutsideDiameter::radius).orElse(0.0);
    }

    private Optional<Elevation> footingAt(Coordinate edge) {
        return building.get(Attribute.FOOTING_BOTTOM)
                .or(() -> building.get(Attribute.FOOTING_DEPTH)
                        .flatMap(depth -> analysis.groundAsItIs()
                                .flatMap(ground -> ground.elevationAt(edge))
                                .map(level -> level.minus(depth))));
    }
}
