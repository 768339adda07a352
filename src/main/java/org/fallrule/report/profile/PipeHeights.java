package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.map.Shape;
import org.fallrule.report.profile.HeightMeasured.Mark;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Heights measured along pipes: cover, depth, slope, fall, steps. */
final class PipeHeights {
    /** How much of a pipe, in metres, is shown on either side of a place. */
    private static final double AROUND = 3;

    private final Report report;
    private final Measured measured;
    private final Length value;

    PipeHeights(Report report, Measured measured) {
        this.report = report;
        this.measured = measured;
        this.value = new Length(measured.value().si());
    }

    /** Some of a line around a station, no more than there is of it. */
    static Reach around(FlowLine line, double station, double half) {
        double from = Math.max(0, Math.min(station - half, line.length() - 2 * half));
        return new Reach(from, Math.min(line.length(), Math.max(station + half, from + 2 * half)));
    }

    private static FlowLine alone(PipeRun run) {
        return new FlowLine(List.of(run), Optional.empty());
    }

    private static double station(PipeRun run, Point where) {
        return new LengthIndexedLine(run.axis()).project(where.getCoordinate());
    }

    /** From the top of a pipe up to the ground. */
    Optional<HeightMeasured> cover(PipeRun run, Point where, String rule) {
        FlowLine line = alone(run);
        double station = station(run, where);
        return PipeProfile.of(run).map(pipe -> {
            Elevation top = pipe.topAt(station);
            Elevation ground = top.plus(value);
            Elevation lowest = ground.minus(new Length(LimitLine.asked(measured)));
            return new HeightMeasured(
                    Optional.of(line),
                    around(line, station, AROUND),
                    new Mark(station, ground),
                    new Mark(station, top),
                    false,
                    scale -> {
                        List<Shape> shapes =
                                new ArrayList<>(CoverLimits.of(report, rule).shapes(line, scale));
                        shapes.add(LimitLine.label(measured, LimitLine.point(scale.at(station, lowest))));
                        return shapes;
                    });
        });
    }

    /** From the ground down to a depth. */
    Optional<HeightMeasured> depth(PipeRun run, Point where) {
        FlowLine line = alone(run);
        double station = station(run, where);
        GroundAlong ground = new GroundAlong(report.analysis(), run);
        return ground.at(station)
                .map(level -> new HeightMeasured(
                        Optional.of(line),
                        around(line, station, AROUND),
                        new Mark(station, level),
                        new Mark(station, level.minus(value)),
                        false,
                        scale -> LimitLine.along(measured, under(ground, scale))));
    }

    /** The ground lowered by what is asked. */
    private List<Coordinate> under(GroundAlong ground, SectionScale scale) {
        Length down = new Length(LimitLine.asked(measured));
        List<Coordinate> places = new ArrayList<>();
        for (GroundAlong.Piece piece : ground.pieces()) {
            piece.heights().ifPresent(ends -> {
                places.add(scale.at(piece.from(), ends.from().minus(down)));
                places.add(scale.at(piece.to(), ends.to().minus(down)));
            });
        }
        return places;
    }

    /** Along the invert, beside the invert that the limit would give. */
    Optional<HeightMeasured> slope(PipeRun run) {
        double length = run.axis().getLength();
        return run.invertUp()
                .flatMap(up -> run.invertDown().map(down -> {
                    Mark start = new Mark(0, up);
                    Elevation asked = up.minus(new Length(LimitLine.asked(measured) * length));
                    return new HeightMeasured(
                            Optional.of(alone(run)),
                            new Reach(0, length),
                            start,
                            new Mark(length, down),
                            false,
                            scale -> LimitLine.through(measured, scale, start, new Mark(length, asked)));
                }));
    }

    /** From the invert of a pipe to that of the next. */
    Optional<HeightMeasured> step(PipeRun in, PipeRun out) {
        FlowLine line = new FlowLine(List.of(in, out), Optional.empty());
        double station = in.axis().getLength();
        Reach reach = around(line, station, AROUND / 2);
        return in.invertDown()
                .flatMap(from -> out.invertUp().map(to -> {
                    Elevation highest = from.plus(new Length(LimitLine.asked(measured)));
                    return new HeightMeasured(
                            Optional.of(line),
                            reach,
                            new Mark(station, from),
                            new Mark(station, to),
                            false,
                            scale -> LimitLine.through(
                                    measured, scale, new Mark(station, highest), new Mark(reach.to(), highest)));
                }));
    }

    /** From the level at an inlet down to that at its outfall. */
    Optional<HeightMeasured> fall(Feature inlet) {
        List<PipeRun> way = report.analysis()
                .network()
                .junctionOf(inlet)
                .map(report.analysis().network()::downstreamOf)
                .orElse(List.of());
        if (way.isEmpty()) {
            return Optional.empty();
        }
        FlowLine line = new FlowLine(way, Optional.empty());
        double end = line.length();
        Optional<Elevation> low = way.get(way.size() - 1)
                .invertDown()
                .or(() -> report.analysis()
                        .ground()
                        .flatMap(ground -> ground.elevationAt(line.to().place())));
        return low.map(level -> {
            Elevation start = level.plus(value);
            Elevation needed = start.minus(new Length(LimitLine.asked(measured)));
            return new HeightMeasured(
                    Optional.of(line),
                    new Reach(0, end),
                    new Mark(end, start),
                    new Mark(end, level),
                    false,
                    scale -> LimitLine.through(measured, scale, new Mark(0, start), new Mark(end, needed)));
        });
    }
}
