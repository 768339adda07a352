package org.fallrule.reader.geopackage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/**
 * The first 100 bytes of an SQLite file (SQLite, Database File Format, section 1.3), looked at before the library sees the file.
 * OGC 12-128, requirements 1 and 2, say what a GeoPackage has there.
 */
final class SqliteHeader {
    private static final int LENGTH = 100;
    private static final String MAGIC = "SQLite format 3\0";

    /** {@code GPKG}, and what edition 1.0 and its revision wrote instead: {@code GP10}, {@code GP11}. */
    private static final Set<Integer> APPLICATION_IDS = Set.of(0x47504B47, 0x47503130, 0x47503131);

    private final ByteBuffer bytes;
    private final long fileLength;
    private final Place place;

    private SqliteHeader(ByteBuffer bytes, long fileLength, Place place) {
        this.bytes = bytes;
        this.fileLength = fileLength;
        this.place = place;
    }

    static SqliteHeader read(Path file, Place place) {
        try (InputStream in = Files.newInputStream(file)) {
            return new SqliteHeader(ByteBuffer.wrap(in.readNBytes(LENGTH)), Files.size(file), place);
        } catch (IOException failed) {
            throw new UnusableInput(
                    place, "cannot be read (" + failed + "); check that the file is there and readable");
        }
    }

    /**
     * Refuses what is no SQLite file.
     *
     * @param withChanges whether changes wait beside the file, so that its length need not be what its header says
     */
    void refuseOther(boolean withChanges) {
        if (fileLength == 0) {
            throw new UnusableInput(place, "is empty; wanted a GeoPackage; export the layers again");
        }
        byte[] start = new byte[Math.min(MAGIC.length(), bytes.limit())];
        bytes.get(0, start);
        if (!new String(start, StandardCharsets.ISO_8859_1).equals(MAGIC)) {
            throw new UnusableInput(
                    place,
                    "is not a GeoPackage: it does not begin as an SQLite file does; export the layers again, or give"
                            + " the file the ending of what it is");
        }
        if (bytes.limit() < LENGTH || (!withChanges && fileLength < claimed())) {
            throw new UnusableInput(
                    place,
                    "is cut short: it is " + fileLength + " bytes long where its header says " + claimed()
                            + "; copy or export it again");
        }
    }

    /** Notes a file that says it belongs to another application, or to none. */
    void noteApplication(Place shown, Findings findings) {
        int id = bytes.getInt(68);
        if (!APPLICATION_IDS.contains(id)) {
            findings.note(
                    shown,
                    String.format(
                            "its application_id is 0x%08X; wanted 0x47504B47 (GPKG); read as a GeoPackage, as it has"
                                    + " the tables of one",
                            id));
        }
    }

    /** Pages times page size, where the count of pages is of the last change (bytes 24 and 92 agree); else one header. */
    private long claimed() {
        if (bytes.limit() < LENGTH) {
            return LENGTH;
        }
        int size = bytes.getShort(16) & 0xFFFF;
        long page = size == 1 ? 65_536 : size;
        boolean counted = bytes.getInt(24) == bytes.getInt(92);
        return counted ? page * (bytes.getInt(28) & 0xFFFF_FFFFL) : LENGTH;
    }
}
