package org.fallrule.reader.geojson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.locationtech.jts.geom.Geometry;

/** Reads geometry objects (RFC 7946, section 3.1), their members in any order. */
final class GeometryReader {
    private final JsonStream json;
    private final CoordinatesReader coordinates;

    GeometryReader(JsonStream json, LayerNotes notes) {
        this.json = json;
        this.coordinates = new CoordinatesReader(json, notes);
    }

    /** The value of a {@code geometry} member: an object, or null for none. */
    Optional<Geometry> readOrNull() {
        return json.token() == Token.NULL ? Optional.empty() : Optional.of(read());
    }

    private Geometry read() {
        if (json.token() != Token.OBJECT_START) {
            throw json.fault("found " + json.found() + "; wanted a geometry object");
        }
        GeometryMembers members = new GeometryMembers(json.here());
        while (json.next() == Token.NAME) {
            String name = MemberName.once(json);
            json.next();
            if (!take(name, members)) {
                json.skip();
            }
        }
        return members.geometry();
    }

    /** Reads the value at the cursor when the name is one of a geometry's; otherwise false, and nothing is read. */
    boolean take(String name, GeometryMembers members) {
        switch (name) {
            case "type" -> members.type(MemberName.text(json, "type"), json.here());
            case "coordinates" -> members.coordinates(coordinates.read());
            case "geometries" -> members.geometries(collection());
            default -> {
                return false;
            }
        }
        return true;
    }

    private List<Geometry> collection() {
        if (json.token() != Token.ARRAY_START) {
            throw json.fault("found " + json.found() + "; wanted an array of geometries");
        }
        List<Geometry> members = new ArrayList<>();
        while (json.next() != Token.ARRAY_END) {
            members.add(read());
        }
        return members;
    }
}
