package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.profile.HeightMeasured.Mark;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** The fall of the ground away from a wall. */
final class GroundHeights {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** How much of the wall is drawn, in metres: its thickness, and above and below the ground. */
    private static final double THICK = 0.3;

    private static final double HIGH = 0.25;

    private final Report report;
    private final Measured measured;

    GroundHeights(Report report, Measured measured) {
        this.report = report;
        this.measured = measured;
    }

    /** From the level at the wall down to the ground's lowest place, beside the line that the limit asks. */
    Optional<HeightMeasured> fall(LineString outward) {
        GroundAlong ground = new GroundAlong(report.analysis(), outward);
        double length = outward.getLength();
        return ground.at(0).map(wall -> {
            Elevation lowest = wall.minus(new Length(measured.value().si()));
            Elevation asked = wall.minus(new Length(LimitLine.asked(measured)));
            double station = stationOf(ground, lowest, length);
            return new HeightMeasured(
                    Optional.empty(),
                    new Reach(-THICK, length),
                    new Mark(station, wall),
                    new Mark(station, lowest),
                    false,
                    scale -> {
                        List<Shape> shapes = new ArrayList<>(
                                LimitLine.through(measured, scale, new Mark(0, wall), new Mark(length, asked)));
                        shapes.add(wall(wall, scale));
                        shapes.addAll(ground(ground, scale));
                        return shapes;
                    });
        });
    }

    /** Where the ground comes down to a level; its end where it never does. */
    private static double stationOf(GroundAlong ground, Elevation level, double end) {
        return ground.pieces().stream()
                .filter(piece -> piece.heights()
                        .filter(ends -> Math.abs(ends.to().above(level).metres()) < 0.001)
                        .isPresent())
                .mapToDouble(GroundAlong.Piece::to)
                .findFirst()
                .orElse(end);
    }

    private static Shape wall(Elevation foot, SectionScale scale) {
        Coordinate low = scale.at(-THICK, foot.minus(new Length(HIGH / 2)));
        Coordinate high = scale.at(0, foot.plus(new Length(HIGH)));
        return new Shape.Area(Look.BUILDING, GEOMETRY.toGeometry(new Envelope(low, high)), "wall");
    }

    private static List<Shape> ground(GroundAlong ground, SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        List<Coordinate> run = new ArrayList<>();
        for (GroundAlong.Piece piece : ground.pieces()) {
            piece.heights()
                    .ifPresentOrElse(
                            ends -> {
                                if (run.isEmpty()) {
                                    run.add(scale.at(piece.from(), ends.from()));
                                }
                                run.add(scale.at(piece.to(), ends.to()));
                            },
                            () -> close(run, shapes));
        }
        close(run, shapes);
        return shapes;
    }

    private static void close(List<Coordinate> run, List<Shape> shapes) {
        if (run.size() > 1) {
            LineString line = GEOMETRY.createLineString(run.toArray(Coordinate[]::new));
            shapes.add(new Shape.Line(Look.GROUND_LINE, line, "ground"));
        }
        run.clear();
    }
}
