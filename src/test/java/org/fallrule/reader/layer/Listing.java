package org.fallrule.reader.layer;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** A layer written out feature by feature and vertex by vertex, in the form of the {@code .txt} files beside the fixtures. */
public final class Listing {
    private final List<String> lines = new ArrayList<>();

    private Listing() {}

    public static List<String> of(RawLayer layer) {
        Listing listing = new Listing();
        layer.features().forEach(listing::feature);
        return listing.lines;
    }

    /** The same numbers in the same spelling: {@code 1e-07} and {@code 1.0E-7} are one. */
    public static String spelled(String line) {
        if (!line.contains("vertex ") && !line.contains(" number ")) {
            return line;
        }
        List<String> words = new ArrayList<>();
        for (String word : line.split(" ", -1)) {
            words.add(word.matches("-?[0-9.]+(e[-+]?[0-9]+)?") ? Double.toString(Double.parseDouble(word)) : word);
        }
        return String.join(" ", words);
    }

    private void feature(RawFeature feature) {
        lines.add(feature.label());
        feature.columns().entrySet().forEach(this::column);
        feature.geometry().ifPresentOrElse(shape -> parts(shape, ""), () -> lines.add("no shape"));
    }

    private void column(Map.Entry<String, Object> column) {
        Object value = column.getValue();
        String kind = value instanceof Long
                ? "whole"
                : value instanceof Double ? "number" : value instanceof Boolean ? "flag" : "text";
        lines.add("column " + column.getKey() + " "
                + (value instanceof LocalDate date
                        ? "date " + DateTimeFormatter.ofPattern("yyyy/MM/dd").format(date)
                        : kind + " " + value));
    }

    private void parts(Geometry geometry, String indent) {
        lines.add(indent + geometry.getGeometryType().replace("LinearRing", "LineString"));
        if (geometry instanceof Polygon polygon) {
            parts(polygon.getExteriorRing(), indent + "  ");
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                parts(polygon.getInteriorRingN(hole), indent + "  ");
            }
        } else if (geometry instanceof LineString || geometry.getGeometryType().equals("Point")) {
            vertices(geometry, indent);
        } else {
            for (int part = 0; part < geometry.getNumGeometries(); part++) {
                parts(geometry.getGeometryN(part), indent + "  ");
            }
        }
    }

    private void vertices(Geometry geometry, String indent) {
        for (Coordinate vertex : geometry.getCoordinates()) {
            lines.add(indent + "  vertex x " + vertex.x + " y " + vertex.y
                    + (Double.isNaN(vertex.getZ()) ? "" : " z " + vertex.getZ())
                    + (Double.isNaN(vertex.getM()) ? "" : " m " + vertex.getM()));
        }
    }
}
