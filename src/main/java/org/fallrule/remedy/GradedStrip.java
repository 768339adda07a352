package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Strips of ground that are graded straight from the foot of a wall, raised, to where they meet the ground as it is: triangles
 * between lines that lead from the one to the other. No triangle lies over another, also where the strips of walls that face
 * each other meet: there the one that comes first counts.
 */
final class GradedStrip {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Square metres; less is no triangle, and no overlap of two: where ways of two walls end at one place they differ by less. */
    private static final double SLIVER = 2e-3;

    private final List<Part> parts = new ArrayList<>();

    /** The parts on the ground as it is. */
    private final List<Polygon> flat = new ArrayList<>();

    /** @param strips the lines of each strip, one beside the other */
    GradedStrip(List<List<Line>> strips) {
        for (List<Line> lines : strips) {
            for (int i = 1; i < lines.size(); i++) {
                Line one = lines.get(i - 1);
                Line other = lines.get(i);
                add(new Part(List.of(one.upper(), other.upper(), one.lower())));
                add(new Part(List.of(other.upper(), other.lower(), one.lower())));
            }
        }
    }

    /**
     * A line of a strip.
     *
     * @param root the ground as it is at its upper end
     * @param toe the ground as it is at its lower end, which stays
     * @param missed metres that the upper end has to be raised
     */
    record Line(Coordinate root, Coordinate toe, double missed) {
        private Corner upper() {
            return new Corner(root, missed);
        }

        private Corner lower() {
            return new Corner(toe, 0);
        }
    }

    private record Corner(Coordinate place, double missed) {
        Coordinate raised(DoubleUnaryOperator raise) {
            double by = missed > 0 ? raise.applyAsDouble(missed) : 0;
            return new Coordinate(place.x, place.y, place.getZ() + by);
        }
    }

    private record Part(List<Corner> corners) {
        Polygon raised(DoubleUnaryOperator raise) {
            Coordinate first = corners.get(0).raised(raise);
            return GEOMETRY.createPolygon(new Coordinate[] {
                first, corners.get(1).raised(raise), corners.get(2).raised(raise), first.copy()
            });
        }
    }

    private void add(Part part) {
        Polygon triangle = part.raised(none -> 0);
        boolean isFree = flat.stream()
                .filter(each -> each.getEnvelopeInternal().intersects(triangle.getEnvelopeInternal()))
                .filter(each -> !isBeside(each, triangle) && !isBeside(triangle, each))
                .allMatch(each -> each.intersection(triangle).getArea() <= SLIVER);
        if (triangle.getArea() > SLIVER && isFree) {
            parts.add(part);
            flat.add(triangle);
        }
    }

    /** Whether all of a triangle lies beyond one side of another: then they share no ground, and no overlay need tell. */
    private static boolean isBeside(Polygon triangle, Polygon other) {
        Coordinate[] sides = other.getExteriorRing().getCoordinates();
        int inside = Orientation.index(sides[0], sides[1], sides[2]);
        return IntStream.range(0, 3)
                .anyMatch(i -> Arrays.stream(triangle.getExteriorRing().getCoordinates())
                        .allMatch(corner -> Orientation.index(sides[i], sides[i + 1], corner) != inside));
    }

    /** The triangles, the upper end of each line raised by what is said of the metres that it misses. */
    List<Polygon> triangles(DoubleUnaryOperator raise) {
        return parts.stream().map(part -> part.raised(raise)).toList();
    }

    /**
     * About how much earth some triangles take, in cubic metres: each by the heights in the middle of its edges (exact where the
     * ground bends no more than a parabola).
     */
    static Earthwork earth(List<Polygon> triangles, GroundSurface ground) {
        double fill = 0;
        double cut = 0;
        for (Polygon triangle : triangles) {
            Coordinate[] ring = triangle.getExteriorRing().getCoordinates();
            for (int i = 0; i < 3; i++) {
                Coordinate middle = new Envelope(ring[i], ring[i + 1]).centre();
                double level = (ring[i].getZ() + ring[i + 1].getZ()) / 2;
                double rise = ground.elevationAt(middle)
                                .map(here -> level - here.metres())
                                .orElse(0.0)
                        * triangle.getArea()
                        / 3;
                fill += Math.max(0, rise);
                cut += Math.max(0, -rise);
            }
        }
        return new Earthwork(fill, cut);
    }
}
