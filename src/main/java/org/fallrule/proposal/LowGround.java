package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * Where some height over a lot is nought or less: sampled at the corners of squares, each parted into two triangles in which it
 * is taken to change evenly.
 */
final class LowGround {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Function<Coordinate, Optional<Double>> height;
    private final List<Geometry> pieces = new ArrayList<>();

    private LowGround(Function<Coordinate, Optional<Double>> height) {
        this.height = height;
    }

    /**
     * The part of a box where a height is nought or less; places of which it is not known are left out.
     *
     * @param spacing side of the squares, metres
     */
    static Geometry of(Envelope box, double spacing, Function<Coordinate, Optional<Double>> height) {
        LowGround low = new LowGround(height);
        int columns = (int) Math.ceil(box.getWidth() / spacing);
        int rows = (int) Math.ceil(box.getHeight() / spacing);
        for (int row = 0; row < rows; row++) {
            low.row(box.getMinX(), box.getMinY() + row * spacing, columns, spacing);
        }
        return low.pieces.isEmpty() ? GEOMETRY.createPolygon() : CascadedPolygonUnion.union(low.pieces);
    }

    private record Corner(Coordinate place, Optional<Double> height) {}

    private Corner corner(double x, double y) {
        Coordinate place = new Coordinate(x, y);
        return new Corner(place, height.apply(place));
    }

    /** Squares that are low throughout are joined to one strip before they are put together. */
    private void row(double x, double y, int columns, double spacing) {
        Corner lower = corner(x, y);
        Corner upper = corner(x, y + spacing);
        double stripFrom = x;
        for (int column = 1; column <= columns; column++) {
            double right = x + column * spacing;
            Corner lowerRight = corner(right, y);
            Corner upperRight = corner(right, y + spacing);
            if (!List.of(lower, upper, lowerRight, upperRight).stream().allMatch(LowGround::isLow)) {
                strip(stripFrom, right - spacing, y, spacing);
                stripFrom = right;
                triangle(lower, lowerRight, upperRight);
                triangle(lower, upperRight, upper);
            }
            lower = lowerRight;
            upper = upperRight;
        }
        strip(stripFrom, x + columns * spacing, y, spacing);
    }

    private static boolean isLow(Corner corner) {
        return corner.height.filter(height -> height <= 0).isPresent();
    }

    private void strip(double from, double to, double y, double spacing) {
        if (to > from) {
            pieces.add(GEOMETRY.toGeometry(new Envelope(from, to, y, y + spacing)));
        }
    }

    private void triangle(Corner... corners) {
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            Corner here = corners[i];
            Corner next = corners[(i + 1) % corners.length];
            if (here.height.isEmpty()) {
                return;
            }
            if (isLow(here)) {
                ring.add(here.place);
            }
            if (next.height.isPresent() && isLow(here) != isLow(next)) {
                double share = here.height.get() / (here.height.get() - next.height.get());
                ring.add(new Coordinate(
                        here.place.x + share * (next.place.x - here.place.x),
                        here.place.y + share * (next.place.y - here.place.y)));
            }
        }
        if (ring.size() >= 3) {
            ring.add(ring.get(0).copy());
            Geometry piece = GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
            if (piece.getArea() > 0) {
                pieces.add(piece);
            }
        }
    }
}
