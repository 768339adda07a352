package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Surveyed points, of which those within a millimetre of each other in plan are one. Its height is the mean of theirs:
 * nothing says which of them is right, and the mean is off by half of what they differ by.
 */
final class SurveyPoints {
    private static final double SAME = 0.001;

    private static final class Point {
        private final Coordinate place;
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

    private final Map<Long, List<Point>> byCell = new HashMap<>();
    private final List<Point> points = new ArrayList<>();

    /** The point of the list that stands for a place; taken in if there is none. */
    Coordinate take(Coordinate place) {
        Point point = find(place);
        if (point == null) {
            // Adding zero makes the negative zero a plain one, which has another hash code.
            point = new Point(new Coordinate(place.x + 0.0, place.y + 0.0));
            points.add(point);
            byCell.computeIfAbsent(cell(place, 0, 0), key -> new ArrayList<>(1)).add(point);
        }
        point.take(place.getZ());
        return point.place;
    }

    private @org.jspecify.annotations.Nullable Point find(Coordinate place) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (Point point : byCell.getOrDefault(cell(place, dx, dy), List.of())) {
                    if (point.place.distance(place) <= SAME) {
                        return point;
                    }
                }
            }
        }
        return null;
    }

    /** Different cells may share a number; they are told apart by distance. */
    private static Long cell(Coordinate place, int dx, int dy) {
        long column = (long) Math.floor(place.x / SAME) + dx;
        long row = (long) Math.floor(place.y / SAME) + dy;
        return column * 1_000_000_007L + row;
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
