package org.fallrule.reader.geojson;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Place;
import org.locationtech.jts.geom.Coordinate;

/**
 * What stands in a {@code coordinates} member, kept until its geometry's {@code type} is known: one position, a list of
 * positions, or a list of such lists. An empty array may be any of them.
 */
final class Coordinates {
    private final Place where;
    private final boolean single;
    private final List<Coordinate> positions;
    private final List<Coordinates> parts;

    private Coordinates(Place where, boolean single, List<Coordinate> positions, List<Coordinates> parts) {
        this.where = where;
        this.single = single;
        this.positions = positions;
        this.parts = parts;
    }

    static Coordinates position(Place where, Coordinate position) {
        return new Coordinates(where, true, List.of(position), List.of());
    }

    static Coordinates list(Place where) {
        return new Coordinates(where, false, new ArrayList<>(), new ArrayList<>());
    }

    /** Adds a member to a list; false when it is of another kind than those before it. */
    boolean add(Coordinates member) {
        if (member.single) {
            positions.add(member.positions.get(0));
        } else {
            parts.add(member);
        }
        return positions.isEmpty() || parts.isEmpty();
    }

    Place where() {
        return where;
    }

    boolean isEmpty() {
        return positions.isEmpty() && parts.isEmpty();
    }

    boolean isPosition() {
        return single;
    }

    boolean isPositions() {
        return !single && parts.isEmpty();
    }

    boolean isParts() {
        return !single && positions.isEmpty();
    }

    List<Coordinate> positions() {
        return positions;
    }

    List<Coordinates> parts() {
        return parts;
    }
}
