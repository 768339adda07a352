package org.fallrule.reader.shapefile;

import java.util.Arrays;
import java.util.Optional;

/** The shape types of the Technical Description (Main File Header, shape type), each with its code. */
enum ShapeType {
    NULL_SHAPE(0, "Null Shape", Form.NOTHING, false, false),
    POINT(1, "Point", Form.POINT, false, false),
    POLY_LINE(3, "PolyLine", Form.LINES, false, false),
    POLYGON(5, "Polygon", Form.RINGS, false, false),
    MULTI_POINT(8, "MultiPoint", Form.POINTS, false, false),
    POINT_Z(11, "PointZ", Form.POINT, true, true),
    POLY_LINE_Z(13, "PolyLineZ", Form.LINES, true, true),
    POLYGON_Z(15, "PolygonZ", Form.RINGS, true, true),
    MULTI_POINT_Z(18, "MultiPointZ", Form.POINTS, true, true),
    POINT_M(21, "PointM", Form.POINT, false, true),
    POLY_LINE_M(23, "PolyLineM", Form.LINES, false, true),
    POLYGON_M(25, "PolygonM", Form.RINGS, false, true),
    MULTI_POINT_M(28, "MultiPointM", Form.POINTS, false, true),
    MULTI_PATCH(31, "MultiPatch", Form.PATCHES, true, true);

    /** What a shape is made of. */
    enum Form {
        NOTHING,
        POINT,
        POINTS,
        LINES,
        RINGS,
        PATCHES
    }

    private final int code;
    private final String title;
    private final Form form;
    private final boolean hasZ;
    private final boolean mayHaveM;

    ShapeType(int code, String title, Form form, boolean hasZ, boolean mayHaveM) {
        this.code = code;
        this.title = title;
        this.form = form;
        this.hasZ = hasZ;
        this.mayHaveM = mayHaveM;
    }

    static Optional<ShapeType> ofCode(int code) {
        return Arrays.stream(values()).filter(type -> type.code == code).findFirst();
    }

    /** The type's name in the Technical Description, such as {@code PolyLineZ}. */
    String title() {
        return title;
    }

    Form form() {
        return form;
    }

    /** Whether each vertex has a Z. */
    boolean hasZ() {
        return hasZ;
    }

    /** Whether a measure for each vertex may follow; the Technical Description lets a record leave them out. */
    boolean mayHaveM() {
        return mayHaveM;
    }
}
