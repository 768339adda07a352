package org.fallrule.reader.shapefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Puts rings together to polygons. The Technical Description (Polygon) tells shells from holes by winding, but some writers wind
 * wrongly; so which ring lies in which decides, and winding that says otherwise is noted.
 */
final class PolygonAssembler {
    private final GeometryFactory geometries;
    private final Findings findings;
    private final RingNesting nesting;

    PolygonAssembler(GeometryFactory geometries, Findings findings) {
        this.geometries = geometries;
        this.findings = findings;
        this.nesting = new RingNesting(findings);
    }

    /** A polygon when there is one shell, a multipolygon when there are several; shells and holes in the order of the file. */
    Geometry assemble(LinearRing[] lines, Place feature) {
        if (lines.length == 1) {
            return geometries.createPolygon(lines[0]);
        }
        Ring[] rings = new Ring[lines.length];
        Arrays.setAll(rings, index -> new Ring(lines[index], index + 1));
        nesting.nest(rings, feature);
        noteWinding(rings, feature);
        List<Polygon> polygons = polygons(rings);
        return polygons.size() == 1 ? polygons.get(0) : geometries.createMultiPolygon(polygons.toArray(new Polygon[0]));
    }

    private List<Polygon> polygons(Ring[] rings) {
        Map<Ring, List<LinearRing>> holes = new LinkedHashMap<>();
        for (Ring ring : rings) {
            if (ring.isShell()) {
                holes.put(ring, new ArrayList<>());
            }
        }
        for (Ring ring : rings) {
            Ring parent = ring.parent();
            if (!ring.isShell() && parent != null) {
                holes.computeIfAbsent(parent, shell -> new ArrayList<>()).add(ring.line());
            }
        }
        List<Polygon> polygons = new ArrayList<>();
        holes.forEach((shell, inside) ->
                polygons.add(geometries.createPolygon(shell.line(), inside.toArray(new LinearRing[0]))));
        return polygons;
    }

    private void noteWinding(Ring[] rings, Place feature) {
        Ring largest = Arrays.stream(rings)
                .max((one, other) -> Double.compare(one.area(), other.area()))
                .orElseThrow();
        for (Ring ring : rings) {
            double expected = ring.isShell() ? largest.winding() : -largest.winding();
            if (ring.winding() * expected < 0) {
                findings.noteFeature(
                        feature,
                        "its ring " + ring.number() + " is wound as a " + (ring.isShell() ? "hole" : "shell")
                                + " but lies as a " + (ring.isShell() ? "shell" : "hole")
                                + "; read as it lies; check the polygon's area");
                return;
            }
        }
    }
}
