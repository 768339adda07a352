package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** The structures of a line: each stands from its lowest invert to its rim, or to the ground where the rim is not given. */
final class SectionStructures {
    /** Width of a structure in pixels; in plan it is no measure. */
    static final double WIDTH = 7;

    private SectionStructures() {}

    static List<Shape> shapes(List<Stand> stands, SectionScale scale) {
        List<Shape> bars = new ArrayList<>();
        for (Stand stand : stands) {
            Optional<Elevation> top = stand.rim().or(stand::ground);
            if (stand.levels().isEmpty() || top.isEmpty() || stand.name().equals("joint")) {
                continue;
            }
            Envelope box = new Envelope(scale.at(stand.station(), top.get()));
            stand.levels().forEach(level -> box.expandToInclude(scale.at(stand.station(), level)));
            box.expandBy(scale.metres(WIDTH) / 2, 0);
            bars.add(new Shape.Area(Look.STRUCTURE, new GeometryFactory().toGeometry(box), stand.name()));
        }
        return bars;
    }
}
