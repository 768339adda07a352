package org.fallrule.analysis;

import com.esri.core.geometry.Geometry;
import com.esri.core.geometry.GeometryEngine;
import com.esri.core.geometry.MultiPath;
import com.esri.core.geometry.MultiPoint;
import com.esri.core.geometry.OperatorIntersection;
import com.esri.core.geometry.Point;
import com.esri.core.geometry.Polygon;
import com.esri.core.geometry.Polyline;
import com.esri.core.geometry.SimpleGeometryCursor;
import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Unit;
import org.locationtech.jts.geom.Coordinate;

/**
 * Plan geometry by a library that shares no code with the one that the program uses: esri-geometry-api. Places come in feet,
 * answers are in metres and square metres.
 */
final class SecondGeometry {
    private static final double FOOT = Unit.FOOT.toSi();
    private static final int POINTS = 1;

    private SecondGeometry() {}

    static double distance(Geometry one, Geometry other) {
        return GeometryEngine.distance(one, other, null);
    }

    static double area(Geometry shape) {
        return Math.abs(shape.calculateArea2D());
    }

    static double commonArea(Geometry one, Geometry other) {
        return area(common(one, other));
    }

    static double commonLength(Polyline line, Polygon area) {
        return common(line, area).calculateLength2D();
    }

    static Geometry common(Geometry one, Geometry other) {
        return GeometryEngine.intersect(one, other, null);
    }

    static Geometry without(Geometry one, Geometry other) {
        return GeometryEngine.difference(one, other, null);
    }

    /** The places where two lines cross. */
    static List<Coordinate> crossings(Polyline one, Polyline other) {
        List<Coordinate> places = new ArrayList<>();
        var each = OperatorIntersection.local()
                .execute(new SimpleGeometryCursor(one), new SimpleGeometryCursor(other), null, null, POINTS);
        for (Geometry found = each.next(); found != null; found = each.next()) {
            MultiPoint points = (MultiPoint) found;
            for (int i = 0; i < points.getPointCount(); i++) {
                places.add(new Coordinate(
                        points.getPoint(i).getX(), points.getPoint(i).getY()));
            }
        }
        return places;
    }

    static Point point(Coordinate place) {
        return new Point(place.x * FOOT, place.y * FOOT);
    }

    static Polyline line(List<Coordinate> places) {
        Polyline line = new Polyline();
        trace(line, places);
        return line;
    }

    static Polygon polygon(List<Coordinate> ring) {
        Polygon polygon = new Polygon();
        trace(polygon, ring.subList(0, ring.size() - 1));
        polygon.closeAllPaths();
        return polygon;
    }

    private static void trace(MultiPath path, List<Coordinate> places) {
        path.startPath(point(places.get(0)));
        places.stream().skip(1).map(SecondGeometry::point).forEach(path::lineTo);
    }
}
