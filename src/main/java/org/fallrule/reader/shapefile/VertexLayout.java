package org.fallrule.reader.shapefile;

/**
 * Where in a record's content the ordinates of its vertices stand.
 *
 * @param count number of vertices
 * @param xy offset of the X, Y pairs
 * @param z offset of the Z values, -1 when there are none
 * @param m offset of the measures, -1 when there are none
 * @param end offset behind the last of them
 */
record VertexLayout(int count, int xy, int z, int m, int end) {
    private static final int RANGE = 16;
    private static final int ABSENT = -1;

    /**
     * Lays out the vertices of a shape: pairs, then Z values and measures, each behind its range unless the shape is one point. Measures
     * are optional (Technical Description, shape types with Z or M): they are there when the content is long enough for all of them.
     *
     * @throws org.fallrule.document.UnusableInput when the content is too short for that many vertices
     */
    static VertexLayout of(ShapeType type, int xy, int count, RecordContent content) {
        int range = type.form() == ShapeType.Form.POINT ? 0 : RANGE;
        long pairsEnd = xy + 16L * count;
        long z = pairsEnd + range;
        long needed = type.hasZ() ? z + 8L * count : pairsEnd;
        content.requireLength(needed, count + " points");
        long m = needed + range;
        boolean measured = type.mayHaveM() && m + 8L * count <= content.length();
        return new VertexLayout(count, xy, type.hasZ() ? (int) z : ABSENT, measured ? (int) m : ABSENT, (int)
                (measured ? m + 8L * count : needed));
    }

    boolean hasZ() {
        return z != ABSENT;
    }

    boolean hasM() {
        return m != ABSENT;
    }
}
