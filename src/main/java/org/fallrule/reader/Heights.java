package org.fallrule.reader;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryEditor;

/** The elevations that geometry carries, in metres: from the elevation attribute, else from Z in the stated unit, else none. */
final class Heights {
    /** Roles whose Z a check may ask for. */
    private static final Set<Role> WANTED =
            EnumSet.of(Role.SPOT, Role.PIPE, Role.CONTOUR, Role.BREAKLINE, Role.GROUND, Role.PROPOSED_GROUND);

    private final Role role;
    private final Optional<Unit> unit;
    private final Place file;
    private final List<Fault> problems;
    private boolean toldUnit;
    private boolean toldNone;

    /**
     * @param unit the unit of Z, if one is stated
     * @param file where to point when Z is not used
     */
    Heights(Role role, Optional<Unit> unit, Place file, List<Fault> problems) {
        this.role = role;
        this.unit = unit;
        this.file = file;
        this.problems = problems;
    }

    /** A copy of the geometry with Z in metres, NaN where there is none. */
    Geometry applied(Geometry geometry, Attributes attributes, Place feature) {
        Optional<Elevation> stated = attributes.get(Attribute.ELEVATION);
        return new GeometryEditor(geometry.getFactory()).edit(geometry, new GeometryEditor.CoordinateOperation() {
            @Override
            public Coordinate[] edit(Coordinate[] places, Geometry part) {
                Coordinate[] raised = new Coordinate[places.length];
                for (int i = 0; i < places.length; i++) {
                    double z = places[i].getZ();
                    raised[i] = new Coordinate(
                            places[i].x,
                            places[i].y,
                            stated.map(Elevation::metres).orElseGet(() -> metres(z, feature)));
                }
                return raised;
            }
        });
    }

    private double metres(double z, Place feature) {
        if (Double.isFinite(z) && unit.isPresent()) {
            return z * unit.get().toSi();
        }
        if (Double.isFinite(z)) {
            tellUnit();
        } else {
            tellNone(feature);
        }
        return Double.NaN;
    }

    private void tellUnit() {
        if (!toldUnit && WANTED.contains(role)) {
            toldUnit = true;
            problems.add(new Fault(
                    file, "its Z has no unit and is not used; say units: {elevation: …} with m, ft or ft_us"));
        }
    }

    private void tellNone(Place feature) {
        if (!toldNone && role == Role.SPOT) {
            toldNone = true;
            problems.add(new Fault(
                    feature, "has no elevation; spots without one are not used; give elevation in a column or as Z"));
        }
    }
}
