package org.fallrule.reader.geojson;

import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.locationtech.jts.geom.Coordinate;

/** Reads the value of a {@code coordinates} member (RFC 7946, sections 3.1.1 to 3.1.7). */
final class CoordinatesReader {
    private final JsonStream json;
    private final LayerNotes notes;

    CoordinatesReader(JsonStream json, LayerNotes notes) {
        this.json = json;
        this.notes = notes;
    }

    /** The value at the cursor, which is left on its closing bracket. */
    Coordinates read() {
        if (json.token() != Token.ARRAY_START) {
            throw json.fault("found " + json.found() + "; wanted an array of coordinates");
        }
        Coordinates list = Coordinates.list(json.here());
        while (json.next() != Token.ARRAY_END) {
            if (json.token() == Token.NUMBER && list.isEmpty()) {
                return Coordinates.position(list.where(), position());
            }
            if (json.token() != Token.ARRAY_START) {
                throw json.fault("found " + json.found() + "; wanted " + wantedIn(list));
            }
            if (!list.add(read())) {
                throw json.fault("positions and lists of positions are mixed in one array; wanted one kind only");
            }
        }
        return list;
    }

    private static String wantedIn(Coordinates list) {
        return list.isEmpty() ? "a number, or a position such as [-78.5, 35.5]" : "an array like the others before it";
    }

    private Coordinate position() {
        double x = json.number();
        json.next();
        if (json.token() == Token.ARRAY_END) {
            throw json.fault("this position has 1 number; wanted at least 2: x and y");
        }
        double y = json.number();
        double z = json.next() == Token.ARRAY_END ? Coordinate.NULL_ORDINATE : json.number();
        passFurtherNumbers();
        return new Coordinate(x, y, z);
    }

    private void passFurtherNumbers() {
        boolean further = false;
        while (json.token() != Token.ARRAY_END && json.next() != Token.ARRAY_END) {
            double ignored = json.number();
            further |= !Double.isNaN(ignored);
        }
        if (further) {
            notes.count(LayerNotes.Kind.MORE_THAN_THREE_NUMBERS, json.here());
        }
    }
}
