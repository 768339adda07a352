package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.profile.HeightMeasured.Mark;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** The clear height between a pipe and a utility that crosses it, with the room that the rule keeps free around the utility. */
final class CrossingHeights {
    /** How much of the pipe is shown on either side, in metres. */
    private static final double AROUND = 1.5;

    private static final int SIDES = 16;

    private final Report report;
    private final Measured measured;

    CrossingHeights(Report report, Measured measured) {
        this.report = report;
        this.measured = measured;
    }

    Optional<HeightMeasured> of(PipeRun run, Feature utility, Point where) {
        Optional<UtilityCrossing> nearest = UtilityCrossing.of(report.analysis(), run, utility).stream()
                .min(Comparator.comparingDouble(crossing -> crossing.place().distance(where.getCoordinate())));
        return nearest.flatMap(crossing ->
                PipeProfile.of(run).flatMap(pipe -> crossing.top().map(top -> between(crossing, pipe, top))));
    }

    private HeightMeasured between(UtilityCrossing crossing, PipeProfile pipe, Elevation top) {
        double station = crossing.station();
        Length value = new Length(measured.value().si());
        Elevation over = pipe.bottomAt(station).minus(value);
        boolean isPipeOver = Math.abs(over.above(top).metres()) < 1e-6;
        Elevation atPipe = isPipeOver ? pipe.bottomAt(station) : pipe.topAt(station);
        Elevation atUtility = isPipeOver ? over : pipe.topAt(station).plus(value);
        Length size = crossing.size().orElse(isPipeOver ? new Length(0) : top.above(atUtility));
        FlowLine line = new FlowLine(List.of(crossing.run()), Optional.empty());
        return new HeightMeasured(
                Optional.of(line),
                new Reach(station - AROUND, station + AROUND),
                new Mark(station, atPipe),
                new Mark(station, atUtility),
                true,
                scale -> envelope(scale.at(station, top), size, scale));
    }

    /** Everything nearer to the utility than the limit. */
    private List<Shape> envelope(Coordinate top, Length size, SectionScale scale) {
        double radius = size.metres() / 2;
        double asked = LimitLine.asked(measured);
        if (asked <= 0) {
            return List.of();
        }
        double stretch = scale.exaggeration();
        Coordinate middle = new Coordinate(top.x, top.y - radius * stretch);
        Geometry room = LimitLine.point(middle).buffer((radius + asked) * stretch, SIDES);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Area(Look.LIMIT, room, LimitLine.words(measured)));
        shapes.add(LimitLine.label(measured, room));
        return shapes;
    }
}
