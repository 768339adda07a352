package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * Lines of equal height on a surface. The surface is sampled at the corners of squares; each square is two triangles, on which the
 * height is linear, so that on a plane the lines are exact and elsewhere off by no more than the surface departs from its triangles.
 */
public final class ContourLines {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** No corner may lie exactly on a line; one that does is taken as this much higher, in metres. */
    private static final double LIFT = 1e-9;

    private final double[][] heights;
    private final Coordinate corner;
    private final double spacing;

    private ContourLines(double[][] heights, Coordinate corner, double spacing) {
        this.heights = heights;
        this.corner = corner;
        this.spacing = spacing;
    }

    /**
     * The lines of one height.
     *
     * @param level the height, a multiple of the interval
     * @param lines the lines, each as long as it goes
     */
    public record Contour(Elevation level, Geometry lines) {}

    /**
     * The lines of a surface in a box, the lowest first: at the first of several intervals that comes to no more than so many
     * lines, or at the last.
     *
     * @param spacing between samples, above zero
     * @param intervals between lines, each above zero
     * @param most how many lines of a height of their own there may be
     */
    public static List<Contour> of(
            GroundSurface surface, Envelope box, Length spacing, List<Length> intervals, int most) {
        ContourLines sampled = sampled(surface, box, spacing.metres());
        double interval = 0;
        SortedMap<Long, List<LineString>> pieces = new TreeMap<>();
        for (Length each : intervals) {
            interval = each.metres();
            pieces = sampled.pieces(interval);
            if (pieces.size() <= most) {
                break;
            }
        }
        List<Contour> contours = new ArrayList<>();
        for (Map.Entry<Long, List<LineString>> level : pieces.entrySet()) {
            contours.add(new Contour(new Elevation(level.getKey() * interval), merged(level.getValue())));
        }
        return contours;
    }

    private static ContourLines sampled(GroundSurface surface, Envelope box, double spacing) {
        int columns = (int) Math.ceil(box.getWidth() / spacing) + 1;
        int rows = (int) Math.ceil(box.getHeight() / spacing) + 1;
        double[][] heights = new double[rows][columns];
        Coordinate corner = new Coordinate(box.getMinX(), box.getMinY());
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Coordinate place = new Coordinate(corner.x + column * spacing, corner.y + row * spacing);
                heights[row][column] =
                        surface.elevationAt(place).map(Elevation::metres).orElse(Double.NaN);
            }
        }
        return new ContourLines(heights, corner, spacing);
    }

    private static Geometry merged(List<LineString> pieces) {
        LineMerger merger = new LineMerger();
        merger.add(pieces);
        @SuppressWarnings("unchecked") // LineMerger gives line strings
        Collection<LineString> lines = merger.getMergedLineStrings();
        return GEOMETRY.createMultiLineString(lines.toArray(LineString[]::new));
    }

    /** The piece of each line on each triangle, by the number of intervals up to the line. */
    private SortedMap<Long, List<LineString>> pieces(double interval) {
        SortedMap<Long, List<LineString>> pieces = new TreeMap<>();
        for (int row = 0; row + 1 < heights.length; row++) {
            for (int column = 0; column + 1 < heights[row].length; column++) {
                triangle(at(column, row), at(column + 1, row), at(column + 1, row + 1), interval, pieces);
                triangle(at(column, row), at(column + 1, row + 1), at(column, row + 1), interval, pieces);
            }
        }
        return pieces;
    }

    private Coordinate at(int column, int row) {
        return new Coordinate(corner.x + column * spacing, corner.y + row * spacing, heights[row][column]);
    }

    private static void triangle(
            Coordinate a, Coordinate b, Coordinate c, double interval, SortedMap<Long, List<LineString>> pieces) {
        if (Double.isNaN(a.getZ() + b.getZ() + c.getZ())) {
            return;
        }
        double low = Math.min(a.getZ(), Math.min(b.getZ(), c.getZ()));
        double high = Math.max(a.getZ(), Math.max(b.getZ(), c.getZ()));
        for (long number = (long) Math.ceil(low / interval); number * interval <= high; number++) {
            List<Coordinate> ends = new ArrayList<>();
            double level = number * interval;
            cross(a, b, level, ends);
            cross(b, c, level, ends);
            cross(c, a, level, ends);
            if (ends.size() == 2 && !ends.get(0).equals2D(ends.get(1))) {
                pieces.computeIfAbsent(number, any -> new ArrayList<>())
                        .add(GEOMETRY.createLineString(ends.toArray(Coordinate[]::new)));
            }
        }
    }

    /** Where a line of one height crosses an edge; the same place from both triangles beside it. */
    private static void cross(Coordinate one, Coordinate other, double level, List<Coordinate> ends) {
        boolean turned = one.compareTo(other) > 0;
        Coordinate from = turned ? other : one;
        Coordinate to = turned ? one : other;
        double low = lifted(from.getZ(), level);
        double high = lifted(to.getZ(), level);
        if (low > level == high > level) {
            return;
        }
        double part = (level - low) / (high - low);
        ends.add(new Coordinate(from.x + part * (to.x - from.x), from.y + part * (to.y - from.y)));
    }

    private static double lifted(double height, double level) {
        return height == level ? height + LIFT : height;
    }
}
