package org.fallrule.reader.geojson;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;

/** The geometry types that have coordinates (RFC 7946, section 1.4), and how each is built from them. */
enum GeometryType {
    POINT("Point"),
    MULTI_POINT("MultiPoint"),
    LINE_STRING("LineString"),
    MULTI_LINE_STRING("MultiLineString"),
    POLYGON("Polygon"),
    MULTI_POLYGON("MultiPolygon");

    static final String COLLECTION = "GeometryCollection";

    private static final Map<String, GeometryType> BY_NAME =
            Arrays.stream(values()).collect(Collectors.toMap(type -> type.spelling, Function.identity()));

    private final String spelling;

    GeometryType(String spelling) {
        this.spelling = spelling;
    }

    static Optional<GeometryType> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /** Whether a name means a geometry, a collection included. */
    static boolean isGeometry(String name) {
        return BY_NAME.containsKey(name) || name.equals(COLLECTION);
    }

    /** For errors: all names, and a hint where only the letters' case is wrong. */
    static String wantedInsteadOf(String name) {
        String all = Arrays.stream(values()).map(type -> type.spelling).collect(Collectors.joining(", "));
        return Arrays.stream(values())
                .map(type -> type.spelling)
                .filter(spelling -> spelling.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .map(spelling -> "did you mean \"" + spelling + "\"? Capitals matter")
                .orElse("wanted one of " + all + " or " + COLLECTION);
    }

    Geometry build(Coordinates coordinates) {
        return switch (this) {
            case POINT -> GeometryBuilder.point(coordinates);
            case MULTI_POINT -> GeometryBuilder.multiPoint(coordinates);
            case LINE_STRING -> GeometryBuilder.line(coordinates);
            case MULTI_LINE_STRING -> GeometryBuilder.multiLine(coordinates);
            case POLYGON -> GeometryBuilder.polygon(coordinates);
            case MULTI_POLYGON -> GeometryBuilder.multiPolygon(coordinates);
        };
    }
}
