package org.fallrule.reader.shapefile;

import java.util.Optional;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;

/** Shapes that are made of parts: PolyLine and Polygon, with Z and M or without (Technical Description, PolyLine and Polygon). */
final class PartedShape {
    static final String NO_POINTS = "its shape has no points; read as a feature without a shape; draw it or delete it";

    private final GeometryFactory geometries;
    private final Findings findings;
    private final PolygonAssembler assembler;

    PartedShape(GeometryFactory geometries, Findings findings) {
        this.geometries = geometries;
        this.findings = findings;
        this.assembler = new PolygonAssembler(geometries, findings);
    }

    /**
     * The shape; empty, with a note, when it has no parts.
     *
     * @throws org.fallrule.document.UnusableInput when counts contradict the content or a part has too few points
     */
    Optional<Geometry> read(ShapeType type, RecordContent content) {
        Parts parts = Parts.of(content);
        VertexLayout layout = VertexLayout.of(type, parts.verticesAt(), parts.vertexCount(), content);
        SpareBytes.note(content, layout.end(), findings);
        if (parts.count() == 0) {
            findings.noteFeature(content.feature(), NO_POINTS);
            return Optional.empty();
        }
        Vertices vertices = new Vertices(content, layout, findings);
        return Optional.of(
                type.form() == ShapeType.Form.LINES
                        ? lines(content, parts, vertices)
                        : polygon(content, parts, vertices));
    }

    private Geometry lines(RecordContent content, Parts parts, Vertices vertices) {
        LineString[] lines = new LineString[parts.count()];
        for (int part = 0; part < lines.length; part++) {
            Coordinate[] line = vertices.between(parts.start(part), parts.end(part));
            if (line.length < 2) {
                throw content.unusable("its part " + (part + 1)
                        + " is a line of 1 point; wanted 2 or more; draw it whole or take the part away");
            }
            lines[part] = geometries.createLineString(line);
        }
        return lines.length == 1 ? lines[0] : geometries.createMultiLineString(lines);
    }

    private Geometry polygon(RecordContent content, Parts parts, Vertices vertices) {
        RingClosing closing = new RingClosing(content, findings);
        LinearRing[] rings = new LinearRing[parts.count()];
        for (int part = 0; part < rings.length; part++) {
            Coordinate[] ring = vertices.between(parts.start(part), parts.end(part));
            rings[part] = geometries.createLinearRing(closing.closed(ring, part + 1));
        }
        return assembler.assemble(rings, content.feature());
    }
}
