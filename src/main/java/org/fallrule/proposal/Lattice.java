package org.fallrule.proposal;

import java.util.List;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Places in rows and columns along the walls of the house, one of them exactly at a given place. A line runs from one to a
 * neighbour, straight or diagonally, so that it turns by 45 degrees at a time.
 */
final class Lattice {
    /** Columns and rows of the eight directions, counter-clockwise by 45 degrees. */
    private static final int[] COLUMN = {1, 1, 0, -1, -1, -1, 0, 1};

    private static final int[] ROW = {0, 1, 1, 1, 0, -1, -1, -1};

    private final Coordinate origin;
    private final double cosine;
    private final double sine;
    private final double spacing;
    private final int columnsBefore;
    private final int rowsBefore;
    private final int columns;
    private final int rows;

    /**
     * @param origin a place of the lattice
     * @param turned angle of its rows, radians from east
     * @param spacing metres
     * @param reach what it covers
     */
    Lattice(Coordinate origin, double turned, double spacing, Geometry reach) {
        this.origin = origin;
        this.cosine = Math.cos(turned);
        this.sine = Math.sin(turned);
        this.spacing = spacing;
        Envelope box = new Envelope();
        for (Coordinate corner : reach.getCoordinates()) {
            double x = corner.x - origin.x;
            double y = corner.y - origin.y;
            box.expandToInclude(x * cosine + y * sine, y * cosine - x * sine);
        }
        this.columnsBefore = (int) Math.floor(Math.max(0, -box.getMinX()) / spacing);
        this.rowsBefore = (int) Math.floor(Math.max(0, -box.getMinY()) / spacing);
        this.columns = columnsBefore + (int) Math.floor(Math.max(0, box.getMaxX()) / spacing) + 1;
        this.rows = rowsBefore + (int) Math.floor(Math.max(0, box.getMaxY()) / spacing) + 1;
    }

    int size() {
        return columns * rows;
    }

    int start() {
        return rowsBefore * columns + columnsBefore;
    }

    double spacing() {
        return spacing;
    }

    Coordinate place(int node) {
        double x = (node % columns - columnsBefore) * spacing;
        double y = (node / columns - rowsBefore) * spacing;
        return new Coordinate(origin.x + x * cosine - y * sine, origin.y + x * sine + y * cosine);
    }

    /** The neighbour in one of eight directions; -1 beyond the edge. */
    int next(int node, int direction) {
        int column = node % columns + COLUMN[direction];
        int row = node / columns + ROW[direction];
        return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
    }

    double step(int direction) {
        return direction % 2 == 0 ? spacing : spacing * Math.sqrt(2);
    }

    /** A place so many metres on from another in one of the eight directions. */
    Coordinate along(Coordinate from, int direction, double metres) {
        double length = Math.hypot(COLUMN[direction], ROW[direction]);
        double x = COLUMN[direction] / length * metres;
        double y = ROW[direction] / length * metres;
        return new Coordinate(from.x + x * cosine - y * sine, from.y + x * sine + y * cosine);
    }

    /** By how many times 45 degrees the second direction is turned from the first, 0 to 4. */
    static int turn(int from, int to) {
        int steps = Math.floorMod(to - from, 8);
        return Math.min(steps, 8 - steps);
    }

    /** The direction of the longest wall of the largest building on a lot; of the lot's longest side where there is none. */
    static double turned(Site site, Geometry lot) {
        Geometry shape = site.features(Role.BUILDING).stream()
                .map(Feature::geometry)
                .filter(building -> lot.contains(building.getInteriorPoint()))
                .max((one, other) -> Double.compare(one.getArea(), other.getArea()))
                .orElse(lot);
        Coordinate[] corners =
                shape.getGeometryN(0).getBoundary().getGeometryN(0).getCoordinates();
        return longest(List.of(CoordinateArrays.copyDeep(corners)));
    }

    private static double longest(List<Coordinate> corners) {
        double longest = 0;
        double turned = 0;
        for (int i = 1; i < corners.size(); i++) {
            Coordinate from = corners.get(i - 1);
            Coordinate to = corners.get(i);
            if (from.distance(to) > longest) {
                longest = from.distance(to);
                turned = Math.atan2(to.y - from.y, to.x - from.x);
            }
        }
        return turned;
    }
}
