package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.Belly;
import org.fallrule.network.PipeRun;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The invert of a pipe at its ends and at the points between them that have a Z. */
final class SurveyedPoints {
    private final PipeRun run;
    private final List<Belly.Point> between = new ArrayList<>();

    SurveyedPoints(PipeRun run) {
        this.run = run;
        Coordinate[] vertices = run.axis().getCoordinates();
        double station = 0;
        for (int i = 1; i < vertices.length - 1; i++) {
            station += vertices[i - 1].distance(vertices[i]);
            if (Double.isFinite(vertices[i].getZ())) {
                between.add(new Belly.Point(station, new Elevation(vertices[i].getZ())));
            }
        }
    }

    /** Whether nothing is known between the ends. */
    boolean areNone() {
        return between.isEmpty();
    }

    /** Whether Z at the ends, where there is any, is the invert given there. */
    boolean endsAgree(Length within) {
        Coordinate[] vertices = run.axis().getCoordinates();
        return agrees(vertices[0], run.invertUp(), within)
                && agrees(vertices[vertices.length - 1], run.invertDown(), within);
    }

    private static boolean agrees(Coordinate end, Optional<Elevation> invert, Length within) {
        return !Double.isFinite(end.getZ())
                || invert.filter(level -> Math.abs(level.metres() - end.getZ())
                                <= within.metres() + Dimension.ELEVATION.tolerance())
                        .isPresent();
    }

    /** Every point in the direction of flow; the inverts at the ends must be known. */
    List<Belly.Point> all() {
        List<Belly.Point> points = new ArrayList<>();
        points.add(new Belly.Point(0, run.invertUp().orElseThrow()));
        points.addAll(between);
        points.add(new Belly.Point(run.length().metres(), run.invertDown().orElseThrow()));
        return points;
    }

    /** The least fall from one point to the next. */
    Length leastFall() {
        List<Belly.Point> points = all();
        Length least = points.get(0).invert().above(points.get(1).invert());
        for (int i = 2; i < points.size(); i++) {
            Length fall = points.get(i - 1).invert().above(points.get(i).invert());
            least = fall.compareTo(least) < 0 ? fall : least;
        }
        return least;
    }

    Coordinate placeAt(double station) {
        return new LengthIndexedLine(run.axis()).extractPoint(station);
    }
}
