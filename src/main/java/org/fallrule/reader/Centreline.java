package org.fallrule.reader;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Walks, drives and streets that are drawn as their centrelines, made into the area that their width says. */
final class Centreline {
    private static final Set<Role> ROLES = EnumSet.of(Role.WALK, Role.DRIVE, Role.STREET);

    /** Wider than any street with its verges; a greater width is in another unit than it is read in. */
    private static final Length WIDEST = Length.feet(300);

    private Centreline() {}

    static boolean isOne(Role role, Geometry drawn) {
        return ROLES.contains(role) && drawn instanceof Lineal;
    }

    /**
     * The area from edge to edge, its ends cut off square where the line ends, its corners mitred as they are paved.
     *
     * @throws UnusableInput where no width is said, or none that a walk, drive or street may have
     */
    static Geometry area(Role role, Geometry local, Attributes attributes, Place place) {
        Optional<Length> width = attributes.get(Attribute.WIDTH);
        if (width.isEmpty()) {
            throw new UnusableInput(
                    place,
                    "is a line without a width; say the " + role.spoken() + "'s width in a column width, with its unit"
                            + " under units: {width: …}, or draw its area");
        }
        if (width.get().metres() > WIDEST.metres()) {
            throw new UnusableInput(
                    place.field(Attribute.WIDTH.name()),
                    Printed.feet(width.get().metres()) + " is wider than a " + role.spoken()
                            + " can be; mend the number, or its unit under units: {width: …}");
        }
        BufferParameters square = new BufferParameters(
                BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
                BufferParameters.CAP_FLAT,
                BufferParameters.JOIN_MITRE,
                BufferParameters.DEFAULT_MITRE_LIMIT);
        Geometry area = BufferOp.bufferOp(local, width.get().metres() / 2, square);
        if (area.isEmpty()) {
            throw new UnusableInput(place, "is a line of no length; draw the " + role.spoken() + " or take it out");
        }
        return area;
    }
}
