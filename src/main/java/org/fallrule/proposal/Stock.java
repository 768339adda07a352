package org.fallrule.proposal;

import java.util.List;
import org.fallrule.document.Place;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The pipe that a proposal lays, in its sizes. */
final class Stock {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final Geometry NOWHERE = GEOMETRY.createLineString();

    private final Laying laying;

    Stock(Laying laying) {
        this.laying = laying;
    }

    List<Length> sizes() {
        return laying.sizes();
    }

    Length smallest() {
        return laying.sizes().get(0);
    }

    /** A pipe that lies nowhere yet. */
    Feature pipe(Length size) {
        return new Feature(Role.PIPE, "proposed", NOWHERE, attributes(size), Place.of("pipe.geojson"));
    }

    Feature pipe(String id, Coordinate[] axis, Length size, Elevation up, Elevation down) {
        return new Feature(
                Role.PIPE,
                id,
                GEOMETRY.createLineString(axis),
                attributes(size).with(Attribute.INVERT_UP, up).with(Attribute.INVERT_DOWN, down),
                Place.of("pipe.geojson").feature(id));
    }

    private Attributes attributes(Length size) {
        Attributes attributes = Attributes.none()
                .with(Attribute.DIAMETER, size)
                .with(Attribute.MATERIAL, laying.material().orElseThrow())
                .with(Attribute.PERFORATED, false)
                .with(Attribute.LAYING_LENGTH, new Length(laying.metres(Laying.Measure.PIECE)))
                .with(Attribute.STATUS, "proposed");
        return laying.joint()
                .map(joint -> attributes.with(Attribute.JOINT, joint))
                .orElse(attributes);
    }

    /** Outside diameter in metres. */
    double outside(Length size) {
        return OutsideDiameter.of(pipe(size))
                .map(OutsideDiameter::value)
                .orElse(size)
                .metres();
    }

    /** Thickness of the wall in metres. */
    double wall(Length size) {
        return Math.max(0, (outside(size) - size.metres()) / 2);
    }

    /** Width of the trench in metres. */
    double trench(Length size) {
        return outside(size) + 2 * laying.metres(Laying.Measure.TRENCH_BESIDE);
    }

    /** From the invert down to the bottom of the trench, in metres. */
    double below(Length size) {
        return wall(size) + laying.metres(Laying.Measure.BEDDING);
    }
}
