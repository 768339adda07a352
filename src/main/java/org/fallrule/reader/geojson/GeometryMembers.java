package org.fallrule.reader.geojson;

import java.util.List;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** The members of one geometry object, gathered until all are there. */
final class GeometryMembers {
    private final Place where;
    private @Nullable String type;
    private Place typeWhere;
    private @Nullable Coordinates coordinates;
    private @Nullable List<Geometry> geometries;

    GeometryMembers(Place where) {
        this.where = where;
        this.typeWhere = where;
    }

    void type(String name, Place place) {
        type = name;
        typeWhere = place;
    }

    void coordinates(Coordinates given) {
        coordinates = given;
    }

    void geometries(List<Geometry> given) {
        geometries = given;
    }

    /** The type's name; fails when there was none. */
    String typeName() {
        if (type == null) {
            throw new UnusableInput(where, "this object has no \"type\"; " + GeometryType.wantedInsteadOf(""));
        }
        return type;
    }

    Place typeWhere() {
        return typeWhere;
    }

    boolean hasCoordinates() {
        return coordinates != null || geometries != null;
    }

    /** The geometry that the members make. */
    Geometry geometry() {
        String name = typeName();
        if (name.equals(GeometryType.COLLECTION)) {
            return GeometryBuilder.collection(present(geometries, "geometries"));
        }
        GeometryType kind = GeometryType.named(name)
                .orElseThrow(() -> new UnusableInput(
                        typeWhere,
                        "\"" + name + "\" is not a GeoJSON geometry type; " + GeometryType.wantedInsteadOf(name)));
        return kind.build(present(coordinates, "coordinates"));
    }

    private <T> T present(@Nullable T value, String member) {
        if (value == null) {
            throw new UnusableInput(where, "this " + type + " has no \"" + member + "\" member");
        }
        return value;
    }
}
