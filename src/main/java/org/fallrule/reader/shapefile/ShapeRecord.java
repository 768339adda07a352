package org.fallrule.reader.shapefile;

import java.util.Optional;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Turns the content of a record into a geometry (Technical Description, Main File Record Contents). */
final class ShapeRecord {
    private static final GeometryFactory GEOMETRIES = new GeometryFactory();
    private static final int TYPE = 4;
    private static final int TYPE_BOX_AND_COUNT = 40;

    private final ShapeType typeOfFile;
    private final Findings findings;
    private final PartedShape parted;

    ShapeRecord(ShapeType typeOfFile, Findings findings) {
        this.typeOfFile = typeOfFile;
        this.findings = findings;
        this.parted = new PartedShape(GEOMETRIES, findings);
    }

    /**
     * The shape; empty for a null shape.
     *
     * @throws UnusableInput when the content contradicts itself or its vertices are no numbers
     */
    Optional<Geometry> read(RecordContent content) {
        ShapeType type = type(content);
        return switch (type.form()) {
            case NOTHING -> nothing(content);
            case POINT -> Optional.of(point(type, content));
            case POINTS -> points(type, content);
            case LINES, RINGS -> parted.read(type, content);
            case PATCHES ->
                throw content.unusable("is of type MultiPatch (a surface of a solid); wanted a point, line or polygon; "
                        + "export the layer as one of these");
        };
    }

    private ShapeType type(RecordContent content) {
        int code = content.intAt(0);
        ShapeType type = ShapeType.ofCode(code)
                .orElseThrow(() -> content.unusable(
                        "has shape type " + code + ", which the format does not know; export the layer again"));
        if (type != typeOfFile && type != ShapeType.NULL_SHAPE) {
            findings.noteFeature(
                    content.feature(),
                    "is of type " + type.title() + " where the file's header says " + typeOfFile.title()
                            + "; read as the former; export the layer with one type of shape");
        }
        return type;
    }

    private Optional<Geometry> nothing(RecordContent content) {
        SpareBytes.note(content, TYPE, findings);
        return Optional.empty();
    }

    private Geometry point(ShapeType type, RecordContent content) {
        VertexLayout layout = VertexLayout.of(type, TYPE, 1, content);
        SpareBytes.note(content, layout.end(), findings);
        return GEOMETRIES.createPoint(new Vertices(content, layout, findings).between(0, 1)[0]);
    }

    private Optional<Geometry> points(ShapeType type, RecordContent content) {
        content.requireLength(TYPE_BOX_AND_COUNT, "a bounding box and a count of points");
        int count = content.countAt(TYPE_BOX_AND_COUNT - 4, "points");
        VertexLayout layout = VertexLayout.of(type, TYPE_BOX_AND_COUNT, count, content);
        SpareBytes.note(content, layout.end(), findings);
        if (count == 0) {
            findings.noteFeature(content.feature(), PartedShape.NO_POINTS);
            return Optional.empty();
        }
        return Optional.of(
                GEOMETRIES.createMultiPointFromCoords(new Vertices(content, layout, findings).between(0, count)));
    }
}
