package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Triangle;

/**
 * A strip of ground that is graded straight from the foot of a wall, raised, to where it meets the ground as it is: triangles
 * between lines that lead from the one to the other.
 */
final class GradedStrip {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Square metres; less is no triangle. */
    private static final double SLIVER = 1e-4;

    private final List<Line> lines;

    /** @param lines one beside the other */
    GradedStrip(List<Line> lines) {
        this.lines = List.copyOf(lines);
    }

    /**
     * A line of the strip.
     *
     * @param root the ground as it is at its upper end
     * @param toe the ground as it is at its lower end, which stays
     * @param missed metres that the upper end has to be raised
     */
    record Line(Coordinate root, Coordinate toe, double missed) {}

    /** The triangles, the upper end of each line raised by what is said of it. */
    List<Polygon> triangles(ToDoubleFunction<Line> raise) {
        List<Polygon> triangles = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            Line one = lines.get(i - 1);
            Line other = lines.get(i);
            Coordinate from = raised(one, raise);
            Coordinate to = raised(other, raise);
            add(from, to, one.toe(), triangles);
            add(to, other.toe(), one.toe(), triangles);
        }
        return triangles;
    }

    private static Coordinate raised(Line line, ToDoubleFunction<Line> raise) {
        Coordinate root = line.root();
        return new Coordinate(root.x, root.y, root.getZ() + raise.applyAsDouble(line));
    }

    private static void add(Coordinate a, Coordinate b, Coordinate c, List<Polygon> triangles) {
        if (Triangle.area(a, b, c) > SLIVER) {
            triangles.add(GEOMETRY.createPolygon(new Coordinate[] {a, b, c, a.copy()}));
        }
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
