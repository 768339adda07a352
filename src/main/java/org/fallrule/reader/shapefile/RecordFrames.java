package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.util.Arrays;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/** Where each record of a {@code .shp} begins and how long its content is (Technical Description, Main File Record Headers), in file order. */
final class RecordFrames {
    static final int HEADER = 8;
    private static final int LEAST_CONTENT = 4;

    private int[] contentStarts = new int[64];
    private int[] contentLengths = new int[64];
    private int count;
    private int misnumbered;

    private RecordFrames() {}

    /**
     * Walks from record header to record header to the end of the file.
     *
     * @throws UnusableInput when a record is cut off or claims more bytes than there are
     */
    static RecordFrames scan(ByteBuffer bytes, Place place, Findings findings) {
        RecordFrames frames = new RecordFrames();
        int at = MainFileHeader.LENGTH;
        while (at < bytes.limit()) {
            at = frames.add(bytes, at, place);
        }
        if (frames.misnumbered > 0) {
            findings.note(
                    place,
                    frames.misnumbered + " of its records are not numbered by their position in the file; "
                            + "positions were used; check that attributes stand with the right shapes");
        }
        return frames;
    }

    /** How the user finds the record of that index, counted from 0, in the file. */
    static String label(int index) {
        return "feature " + (index + 1);
    }

    int count() {
        return count;
    }

    /** Where the content begins, in bytes from the start of the file. */
    int contentStart(int index) {
        return contentStarts[index];
    }

    /** The content's length in bytes. */
    int contentLength(int index) {
        return contentLengths[index];
    }

    private int add(ByteBuffer bytes, int at, Place place) {
        int left = bytes.limit() - at - HEADER;
        long length = left < 0 ? 0 : 2L * MainFileHeader.bigEndian(bytes, at + 4);
        if (left < 0 || length < LEAST_CONTENT || length > left) {
            throw new UnusableInput(place.feature(label(count)), cutOff(left, length));
        }
        misnumbered += MainFileHeader.bigEndian(bytes, at) == count + 1 ? 0 : 1;
        keep(at + HEADER, (int) length);
        return at + HEADER + (int) length;
    }

    private static String cutOff(int left, long length) {
        String found = left < 0
                ? "the file ends within its record header"
                : "its record claims " + length + " bytes of content, where " + left + " are left in the file";
        return found + "; wanted at least 4 bytes and no more than are there; copy or export the file again";
    }

    private void keep(int start, int length) {
        if (count == contentStarts.length) {
            contentStarts = Arrays.copyOf(contentStarts, count * 2);
            contentLengths = Arrays.copyOf(contentLengths, count * 2);
        }
        contentStarts[count] = start;
        contentLengths[count] = length;
        count++;
    }
}
