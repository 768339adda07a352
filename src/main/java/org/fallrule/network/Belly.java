package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;

/**
 * A low place in a pipe that holds water up to the sill downstream of it.
 *
 * @param reach where the water stands
 * @param lowest station in metres of the lowest place
 * @param depth depth of the water there
 */
public record Belly(Reach reach, double lowest, Length depth) {

    /**
     * A place on the invert of a pipe.
     *
     * @param station its station in metres
     * @param invert the invert there
     */
    public record Point(double station, Elevation invert) {}

    /**
     * The bellies of a pipe whose invert is straight between points. What is no deeper than {@link Dimension#tolerance()} is
     * none.
     *
     * @param points two or more, in the direction of flow
     */
    public static List<Belly> between(List<Point> points) {
        List<Belly> bellies = new ArrayList<>();
        double[] water = water(points);
        int first = 0;
        while (first < points.size()) {
            int next = first;
            while (water[next] > level(points, next)) {
                next++;
            }
            if (next > first) {
                bellies.add(belly(points, first, next));
            }
            first = next + 1;
        }
        return bellies.stream()
                .filter(belly -> belly.depth.metres() > Dimension.LENGTH.tolerance())
                .toList();
    }

    /** The level that water rises to at each point before it flows on: that of the highest point still to come. */
    private static double[] water(List<Point> points) {
        double[] water = new double[points.size()];
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0; i--) {
            highest = Math.max(highest, level(points, i));
            water[i] = highest;
        }
        return water;
    }

    /** The points from the first up to the sill stand under water. */
    private static Belly belly(List<Point> points, int first, int sill) {
        int lowest = first;
        for (int i = first; i < sill; i++) {
            lowest = level(points, i) < level(points, lowest) ? i : lowest;
        }
        Elevation surface = points.get(sill).invert;
        Reach reach = new Reach(shore(points, first, surface), points.get(sill).station);
        Point bottom = points.get(lowest);
        return new Belly(reach, bottom.station, surface.above(bottom.invert));
    }

    /** Where the water ends upstream: at the pipe's start, or on the piece that leads down into it. */
    private static double shore(List<Point> points, int first, Elevation surface) {
        if (first == 0) {
            return points.get(0).station;
        }
        Point above = points.get(first - 1);
        Point below = points.get(first);
        double share = above.invert.above(surface).metres()
                / above.invert.above(below.invert).metres();
        return above.station + share * (below.station - above.station);
    }

    private static double level(List<Point> points, int i) {
        return points.get(i).invert.metres();
    }
}
