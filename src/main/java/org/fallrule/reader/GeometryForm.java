package org.fallrule.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Printed;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.Puntal;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Holds geometry to the form that its role wants. */
final class GeometryForm {
    private final List<Fault> faults;

    GeometryForm(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * The pieces that a geometry gives for a role: one for areas and lines, one for each point, one for each pipe.
     *
     * @param drawn the geometry in the layer's own coordinates, for messages
     * @param local the same in the local frame
     */
    List<Geometry> pieces(Role role, Geometry drawn, Geometry local, Place place) {
        if (!isOf(role.form(), drawn) && !isJoinedLater(role, drawn)) {
            fault(
                    place,
                    "is a " + drawn.getGeometryType() + "; the " + role.spoken() + " layer wants "
                            + role.form().spoken());
            return List.of();
        }
        Optional<String> invalid = invalid(drawn);
        if (invalid.isPresent()) {
            fault(place, invalid.get());
            return List.of();
        }
        if (role == Role.PIPE) {
            return lines(local);
        }
        return drawn instanceof Puntal ? parts(local) : List.of(local);
    }

    /** Marks that {@link MarkedPoints} joins, and lines that {@link LotLines} makes lots of. */
    private static boolean isJoinedLater(Role role, Geometry drawn) {
        return (role == Role.UTILITY && drawn instanceof Puntal) || (role == Role.LOT && drawn instanceof Lineal);
    }

    private static boolean isOf(Role.Form form, Geometry geometry) {
        return switch (form) {
            case POINT -> geometry instanceof Puntal;
            case LINE -> geometry instanceof Lineal;
            case AREA -> geometry instanceof Polygonal;
            case ANY -> geometry instanceof Puntal || geometry instanceof Lineal || geometry instanceof Polygonal;
        };
    }

    private static Optional<String> invalid(Geometry drawn) {
        TopologyValidationError error = new IsValidOp(drawn).getValidationError();
        if (error == null) {
            return Optional.empty();
        }
        Coordinate at = error.getCoordinate();
        return Optional.of("is not a sound shape: " + error.getMessage().toLowerCase(Locale.ROOT) + " at x "
                + Printed.trimmed(at.x) + ", y " + Printed.trimmed(at.y)
                + (drawn instanceof Polygonal
                        ? "; redraw its outline so that it does not cross or touch itself"
                        : "; draw it from one place to another, or take it out"));
    }

    private static List<Geometry> lines(Geometry local) {
        LineMerger merger = new LineMerger();
        merger.add(local);
        List<Geometry> lines = new ArrayList<>();
        for (Object line : merger.getMergedLineStrings()) {
            lines.add((Geometry) line);
        }
        return local.getNumGeometries() == 1 ? List.of(local.getGeometryN(0)) : lines;
    }

    private static List<Geometry> parts(Geometry local) {
        List<Geometry> parts = new ArrayList<>();
        for (int i = 0; i < local.getNumGeometries(); i++) {
            parts.add(local.getGeometryN(i));
        }
        return parts;
    }

    private void fault(Place place, String says) {
        faults.add(new Fault(place, says));
    }
}
