package org.fallrule.reader.shapefile;

/** How the vertices of a PolyLine or Polygon are split into parts (Technical Description, PolyLine). */
final class Parts {
    private static final int COUNTS = 36;
    private static final int STARTS = 44;

    private final RecordContent content;
    private final int count;
    private final int vertexCount;

    private Parts(RecordContent content, int count, int vertexCount) {
        this.content = content;
        this.count = count;
        this.vertexCount = vertexCount;
    }

    /**
     * Reads and checks the split: every vertex in exactly one part, no part without a vertex.
     *
     * @throws org.fallrule.document.UnusableInput when it is not so, or the content is too short for that many parts
     */
    static Parts of(RecordContent content) {
        content.requireLength(STARTS, "a bounding box and counts of parts and points");
        Parts parts = new Parts(content, content.countAt(COUNTS, "parts"), content.countAt(COUNTS + 4, "points"));
        content.requireLength(STARTS + 4L * parts.count, parts.count + " parts");
        parts.requireSplit();
        return parts;
    }

    int count() {
        return count;
    }

    int vertexCount() {
        return vertexCount;
    }

    /** Offset of the first vertex in the content. */
    int verticesAt() {
        return STARTS + 4 * count;
    }

    /** Index of the part's first vertex. */
    int start(int part) {
        return content.intAt(STARTS + 4 * part);
    }

    /** Index behind the part's last vertex. */
    int end(int part) {
        return part + 1 < count ? start(part + 1) : vertexCount;
    }

    private void requireSplit() {
        if (count == 0 ? vertexCount > 0 : start(0) != 0) {
            throw content.unusable("has " + vertexCount + " points of which the first belongs to none of its " + count
                    + " parts; wanted its first part to begin at point 0; export the layer again");
        }
        for (int part = 0; part < count; part++) {
            if (end(part) <= start(part) || end(part) > vertexCount) {
                throw content.unusable(
                        "its part " + (part + 1) + " runs from point " + start(part) + " to before point " + end(part)
                                + " of " + vertexCount + "; wanted at least one point; export the layer again");
            }
        }
    }
}
