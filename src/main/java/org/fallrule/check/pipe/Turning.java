package org.fallrule.check.pipe;

import java.util.List;
import java.util.Map;
import org.fallrule.network.PipeRun;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;

/**
 * How a pipe turns in plan between its openings. Radians.
 *
 * @param sharpest its greatest bend without an opening at it, the turn into it counted
 * @param most the greatest sum of bends anywhere along it since the last opening
 * @param since the sum of bends at its end since the last opening
 */
record Turning(double sharpest, double most, double since) {

    /** A pipe's turning; that of the pipes that flow into it is known already. */
    static Turning of(PipeRun run, List<PipeRun> into, Map<PipeRun, Turning> known, Openings openings) {
        double sharpest = 0;
        double since = 0;
        if (!openings.at(run.up())) {
            for (PipeRun before : into) {
                double turn = between(before, run);
                sharpest = Math.max(sharpest, turn);
                since = Math.max(
                        since, (known.containsKey(before) ? known.get(before).since() : 0) + turn);
            }
        }
        double most = since;
        double station = 0;
        List<Double> opened = openings.along(run);
        Coordinate[] places = run.axis().getCoordinates();
        for (int i = 1; i < places.length - 1; i++) {
            double from = station;
            station += places[i].distance(places[i - 1]);
            since = isBetween(opened, from, station) ? 0 : since;
            if (!openings.isAt(opened, station)) {
                double turn = turn(places[i - 1], places[i], places[i + 1]);
                sharpest = Math.max(sharpest, turn);
                since += turn;
                most = Math.max(most, since);
            }
        }
        return new Turning(sharpest, most, isBetween(opened, station, run.axis().getLength()) ? 0 : since);
    }

    private static boolean isBetween(List<Double> opened, double from, double to) {
        return opened.stream().anyMatch(opening -> opening > from && opening <= to);
    }

    private static double between(PipeRun in, PipeRun out) {
        Coordinate[] before = in.axis().getCoordinates();
        Coordinate[] after = out.axis().getCoordinates();
        return turn(before[before.length - 2], before[before.length - 1], after[1]);
    }

    private static double turn(Coordinate from, Coordinate at, Coordinate to) {
        return Math.abs(Angle.diff(Angle.angle(from, at), Angle.angle(at, to)));
    }
}
