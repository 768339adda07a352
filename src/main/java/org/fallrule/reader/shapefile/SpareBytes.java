package org.fallrule.reader.shapefile;

import org.fallrule.reader.layer.Findings;

/** Bytes of a record's content that its shape does not use. */
final class SpareBytes {
    private SpareBytes() {}

    /** Notes that the content goes on behind the shape. */
    static void note(RecordContent content, int used, Findings findings) {
        int spare = content.length() - used;
        if (spare > 0) {
            findings.noteFeature(
                    content.feature(),
                    "its record has " + spare + " bytes more than its shape takes; they were not read; "
                            + "export the layer again if something is missing");
        }
    }
}
