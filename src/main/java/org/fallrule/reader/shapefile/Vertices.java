package org.fallrule.reader.shapefile;

import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.CoordinateXYM;
import org.locationtech.jts.geom.CoordinateXYZM;

/**
 * The vertices of one record, with Z and M where the record has them. A measure below -1e38 is "no data" (Technical Description,
 * Numeric Types) and becomes NaN; so does a Z below it, with a note.
 */
final class Vertices {
    private static final double NO_DATA_BELOW = -1e38;

    private final RecordContent content;
    private final VertexLayout layout;
    private final Findings findings;
    private final boolean measured;

    Vertices(RecordContent content, VertexLayout layout, Findings findings) {
        this.content = content;
        this.layout = layout;
        this.findings = findings;
        this.measured = layout.hasM() && (!layout.hasZ() || anyMeasure());
    }

    /**
     * The vertices of a part.
     *
     * @param from index of the first, counted from 0
     * @param to index behind the last
     * @throws org.fallrule.document.UnusableInput when an ordinate is infinite or no number
     */
    Coordinate[] between(int from, int to) {
        Coordinate[] vertices = new Coordinate[to - from];
        for (int index = from; index < to; index++) {
            vertices[index - from] = vertex(index);
        }
        return vertices;
    }

    private Coordinate vertex(int index) {
        double x = ordinate(index, "X", content.doubleAt(layout.xy() + 16 * index));
        double y = ordinate(index, "Y", content.doubleAt(layout.xy() + 16 * index + 8));
        if (layout.hasZ()) {
            double z = z(index);
            return measured ? new CoordinateXYZM(x, y, z, m(index)) : new Coordinate(x, y, z);
        }
        return measured ? new CoordinateXYM(x, y, m(index)) : new CoordinateXY(x, y);
    }

    private double ordinate(int index, String axis, double value) {
        if (!Double.isFinite(value) || value < NO_DATA_BELOW) {
            throw bad(index, axis, value);
        }
        return value;
    }

    private double z(int index) {
        double z = content.doubleAt(layout.z() + 8 * index);
        if (Double.isFinite(z) && z < NO_DATA_BELOW) {
            findings.noteFeature(
                    content.feature(),
                    "its vertex " + (index + 1)
                            + " has \"no data\" for Z; read as a vertex without Z; give it its elevation");
            return Double.NaN;
        }
        return ordinate(index, "Z", z);
    }

    private double m(int index) {
        double m = rawMeasure(index);
        if (m == Double.POSITIVE_INFINITY) {
            throw bad(index, "M", m);
        }
        return hasData(m) ? m : Double.NaN;
    }

    private boolean anyMeasure() {
        for (int index = 0; index < layout.count(); index++) {
            if (hasData(rawMeasure(index))) {
                return true;
            }
        }
        return false;
    }

    private double rawMeasure(int index) {
        return content.doubleAt(layout.m() + 8 * index);
    }

    private static boolean hasData(double measure) {
        return measure >= NO_DATA_BELOW;
    }

    private RuntimeException bad(int index, String axis, double value) {
        return content.unusable("its vertex " + (index + 1) + " has " + axis + " " + value
                + "; wanted a finite number; mend the vertex or export the layer again");
    }
}
