package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import org.fallrule.reader.layer.Findings;

/**
 * Compares the {@code .shx}, which repeats where each record of the {@code .shp} stands (Technical Description, Organization of the Index File), with the
 * records found. The index is never needed for reading; a disagreement means that one of the two files was changed without the other.
 */
final class IndexFileCheck {
    private static final int ENTRY = 8;

    private final ShownFile shx;
    private final Findings findings;

    IndexFileCheck(ShownFile shx, Findings findings) {
        this.shx = shx;
        this.findings = findings;
    }

    void compare(RecordFrames frames) {
        ByteBuffer bytes = shx.bytes();
        long entries = Math.max(0, bytes.limit() - MainFileHeader.LENGTH) / ENTRY;
        if (bytes.limit() < MainFileHeader.LENGTH || entries != frames.count()) {
            disagrees("lists " + entries + " records where the .shp has " + frames.count());
            return;
        }
        for (int index = 0; index < frames.count(); index++) {
            if (!agrees(bytes, frames, index)) {
                disagrees("gives another place or length for " + RecordFrames.label(index) + " than the .shp");
                return;
            }
        }
    }

    private static boolean agrees(ByteBuffer bytes, RecordFrames frames, int index) {
        int at = MainFileHeader.LENGTH + ENTRY * index;
        long start = 2L * MainFileHeader.bigEndian(bytes, at) + RecordFrames.HEADER;
        long length = 2L * MainFileHeader.bigEndian(bytes, at + 4);
        return start == frames.contentStart(index) && length == frames.contentLength(index);
    }

    private void disagrees(String found) {
        findings.note(
                shx.place(),
                found + "; the .shp was read and the .shx left aside; export the layer again so that they agree");
    }
}
