package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Surveyed points, of which those within a millimetre of each other in plan are one. Its height is the mean of theirs:
 * nothing says which of them is right, and the mean is off by half of what they differ by.
 */
final class SurveyPoints {
    private static final double SAME = 0.001;

    /** Metres; so much wider than what is the same that few places lie near two cells, and few points in one. */
    private static final double CELL = 0.016;

    private static final class Point {
        private final Coordinate place;
        private @Nullable Point next;
        private double sum;
        private int count;
        private double lowest = Double.POSITIVE_INFINITY;
        private double highest = Double.NEGATIVE_INFINITY;

        Point(Coordinate place) {
            this.place = place;
        }

        void take(double z) {
            sum += z;
            count++;
            lowest = Math.min(lowest, z);
            highest = Math.max(highest, z);
            place.setZ(lowest == highest ? z : sum / count);
        }
    }

    /** Of each cell the point that came in last, which knows the one before it. */
    private final Map<Long, Point> byCell = new HashMap<>();

    private final List<Point> points = new ArrayList<>();

    /** The point of the list that stands for a place; taken in if there is none. */
    Coordinate take(Coordinate place) {
        Point point = find(place);
        if (point == null) {
            // Adding zero makes the negative zero a plain one, which has another hash code.
            point = new Point(new Coordinate(place.x + 0.0, place.y + 0.0));
            points.add(point);
            point.next = byCell.put(cell(cells(place.x, 0), cells(place.y, 0)), point);
        }
        point.take(place.getZ());
        return point.place;
    }

    private @Nullable Point find(Coordinate place) {
        for (long column = cells(place.x, -SAME); column <= cells(place.x, SAME); column++) {
            for (long row = cells(place.y, -SAME); row <= cells(place.y, SAME); row++) {
                for (Point point = byCell.get(cell(column, row)); point != null; point = point.next) {
                    if (point.place.distance(place) <= SAME) {
                        return point;
                    }
                }
            }
        }
        return null;
    }

    private static long cells(double metres, double beyond) {
        return (long) Math.floor((metres + beyond) / CELL);
    }

    /** Different cells may share a number; they are told apart by distance. */
    private static Long cell(long column, long row) {
        return column * 1_000_000_007L + row;
    }

    /** Whether heights that were given for one point differ by more than so many metres. */
    boolean anyDisagreement(double metres) {
        return points.stream().anyMatch(point -> point.highest - point.lowest > metres);
    }

    /** By how much the heights that were given for a point of the list differ, in metres. */
    double disagreement(Coordinate place) {
        Point point = find(place);
        return point == null ? 0 : point.highest - point.lowest;
    }

    List<Coordinate> places() {
        return points.stream().map(point -> point.place).toList();
    }
}
