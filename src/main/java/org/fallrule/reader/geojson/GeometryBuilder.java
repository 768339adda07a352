package org.fallrule.reader.geojson;

import java.util.List;
import java.util.function.Function;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Builds geometries from coordinates, and refuses those that are not what their type needs (RFC 7946, section 3.1). */
final class GeometryBuilder {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private GeometryBuilder() {}

    static Point point(Coordinates given) {
        if (given.isEmpty()) {
            return FACTORY.createPoint();
        }
        require(given.isPosition(), given, "a Point's coordinates are one position, such as [-78.5, 35.5]");
        return FACTORY.createPoint(given.positions().get(0));
    }

    static Geometry multiPoint(Coordinates given) {
        return FACTORY.createMultiPointFromCoords(positions(given, "a MultiPoint's coordinates"));
    }

    static LineString line(Coordinates given) {
        Coordinate[] positions = positions(given, "a LineString's coordinates");
        require(positions.length != 1, given, "this line has 1 position; wanted at least 2");
        return FACTORY.createLineString(positions);
    }

    static Geometry multiLine(Coordinates given) {
        return FACTORY.createMultiLineString(
                parts(given, "a MultiLineString's coordinates are a list of lines", GeometryBuilder::line)
                        .toArray(LineString[]::new));
    }

    static Polygon polygon(Coordinates given) {
        List<LinearRing> rings = parts(
                given, "a Polygon's coordinates are a list of rings, such as [[[0, 0], ...]]", GeometryBuilder::ring);
        if (rings.isEmpty()) {
            return FACTORY.createPolygon();
        }
        return FACTORY.createPolygon(
                rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
    }

    static Geometry multiPolygon(Coordinates given) {
        return FACTORY.createMultiPolygon(
                parts(given, "a MultiPolygon's coordinates are a list of polygons", GeometryBuilder::polygon)
                        .toArray(Polygon[]::new));
    }

    static Geometry collection(List<Geometry> members) {
        return FACTORY.createGeometryCollection(members.toArray(Geometry[]::new));
    }

    private static LinearRing ring(Coordinates given) {
        Coordinate[] positions = positions(given, "a ring");
        require(
                positions.length >= 4,
                given,
                "this ring has " + positions.length + " position(s); wanted at least 4, the last equal to the first");
        Coordinate first = positions[0];
        Coordinate last = positions[positions.length - 1];
        require(
                first.equals2D(last),
                given,
                "this ring is not closed: it starts at " + xy(first) + " and ends at " + xy(last)
                        + "; repeat the first position at its end");
        return FACTORY.createLinearRing(positions);
    }

    private static Coordinate[] positions(Coordinates given, String what) {
        require(given.isPositions(), given, what + " must be a list of positions, such as [[0, 0], [5, 5]]");
        return given.positions().toArray(Coordinate[]::new);
    }

    private static <T> List<T> parts(Coordinates given, String wanted, Function<Coordinates, T> build) {
        require(given.isParts(), given, wanted);
        return given.parts().stream().map(build).toList();
    }

    private static void require(boolean good, Coordinates given, String says) {
        if (!good) {
            Place where = given.where();
            throw new UnusableInput(where, says);
        }
    }

    private static String xy(Coordinate position) {
        return "(" + position.x + ", " + position.y + ")";
    }
}
