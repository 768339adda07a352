package org.fallrule.check.place;

import org.locationtech.jts.algorithm.construct.LargestEmptyCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * How far a geometry reaches beyond an area: the greatest distance from the area of any place of the geometry (directed
 * Hausdorff distance). The farthest place need not be a vertex: a line that crosses the notch of an area is farthest out in
 * between.
 */
final class ReachBeyond {
    /** How exactly, in metres, the farthest place is looked for. */
    private static final double EXACTLY = 5e-4;

    private final Geometry area;
    private final IndexedFacetDistance toArea;
    private double farthest;

    private ReachBeyond(Geometry area) {
        this.area = area;
        this.toArea = new IndexedFacetDistance(area);
    }

    /** In metres; zero when no part of the geometry lies outside of the area. */
    static double of(Geometry geometry, Geometry area) {
        ReachBeyond reach = new ReachBeyond(area);
        Geometry outside = geometry.difference(area);
        for (int i = 0; i < outside.getNumGeometries(); i++) {
            reach.look(outside.getGeometryN(i));
        }
        return reach.farthest;
    }

    private void look(Geometry outside) {
        Coordinate[] places = outside.getCoordinates();
        if (places.length == 1) {
            distance(places[0], outside);
        }
        for (int i = 1; i < places.length; i++) {
            look(places[i - 1], distance(places[i - 1], outside), places[i], distance(places[i], outside), outside);
        }
        if (outside instanceof Polygon) {
            Geometry radius = new LargestEmptyCircle(area, outside, EXACTLY).getRadiusLine();
            farthest = Math.max(farthest, radius.getLength());
        }
    }

    /** Halves a segment as long as some place of it can be farther out: no two places differ by more than they lie apart. */
    private void look(Coordinate from, double fromOut, Coordinate to, double toOut, Geometry outside) {
        double apart = from.distance(to);
        if ((fromOut + toOut + apart) / 2 <= farthest + EXACTLY) {
            return;
        }
        Coordinate middle = new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
        double out = distance(middle, outside);
        look(from, fromOut, middle, out, outside);
        look(middle, out, to, toOut, outside);
    }

    private double distance(Coordinate place, Geometry outside) {
        double distance = toArea.distance(outside.getFactory().createPoint(place));
        farthest = Math.max(farthest, distance);
        return distance;
    }
}
