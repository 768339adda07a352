package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.site.Frame;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Geometry as RFC 7946 has it: WGS 84 longitude and latitude in degrees, to about a tenth of a millimetre. */
final class GeoShape {
    private final Frame frame;

    GeoShape(Frame frame) {
        this.frame = frame;
    }

    Map<String, Object> of(Geometry geometry) {
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("type", geometry instanceof LineString ? "LineString" : geometry.getGeometryType());
        if (geometry instanceof Point point) {
            shape.put("coordinates", position(point.getCoordinate()));
        } else if (geometry instanceof LineString line) {
            shape.put("coordinates", line(line));
        } else if (geometry instanceof Polygon polygon) {
            shape.put("coordinates", rings(polygon));
        } else {
            parts((GeometryCollection) geometry, shape);
        }
        return shape;
    }

    private void parts(GeometryCollection collection, Map<String, Object> shape) {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (int i = 0; i < collection.getNumGeometries(); i++) {
            parts.add(of(collection.getGeometryN(i)));
        }
        if (collection.getGeometryType().equals(Geometry.TYPENAME_GEOMETRYCOLLECTION)) {
            shape.put("geometries", parts);
        } else {
            shape.put(
                    "coordinates",
                    parts.stream().map(part -> part.get("coordinates")).toList());
        }
    }

    private List<Object> rings(Polygon polygon) {
        List<Object> rings = new ArrayList<>();
        Polygon wound = (Polygon) polygon.norm();
        rings.add(line(wound.getExteriorRing().reverse()));
        for (int i = 0; i < wound.getNumInteriorRing(); i++) {
            rings.add(line(wound.getInteriorRingN(i).reverse()));
        }
        return rings;
    }

    private List<Object> line(LineString line) {
        List<Object> positions = new ArrayList<>();
        for (Coordinate vertex : line.getCoordinates()) {
            positions.add(position(vertex));
        }
        return positions;
    }

    private JsonWriter.Position position(Coordinate local) {
        Coordinate place = frame.toLonLat(local);
        return new JsonWriter.Position(rounded(place.x), rounded(place.y));
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * 1e9) / 1e9;
    }
}
