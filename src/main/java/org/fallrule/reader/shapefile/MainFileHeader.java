package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/**
 * The 100 bytes that a {@code .shp} begins with (Technical Description, The Main File Header).
 *
 * @param type the one type that all its shapes but null ones have
 */
record MainFileHeader(ShapeType type) {
    static final int LENGTH = 100;
    private static final int FILE_CODE = 9994;
    private static final int VERSION = 1000;
    private static final String GET_ANOTHER = "export the layer again";

    /**
     * Reads the header.
     *
     * @throws UnusableInput when the file is too short, of another kind, or of a shape type that cannot be used
     */
    static MainFileHeader read(ByteBuffer bytes, Place place, Findings findings) {
        requireShapefile(bytes, place);
        noteVersion(bytes.getInt(28), place, findings);
        noteLength(bytes, place, findings);
        int code = bytes.getInt(32);
        ShapeType type = ShapeType.ofCode(code)
                .orElseThrow(() -> new UnusableInput(
                        place,
                        "its header gives shape type " + code + ", which the format does not know; " + GET_ANOTHER));
        if (type == ShapeType.MULTI_PATCH) {
            throw new UnusableInput(
                    place,
                    "holds shapes of type MultiPatch (surfaces of solids); wanted points, lines or polygons; "
                            + "export the layer as one of these");
        }
        return new MainFileHeader(type);
    }

    private static void requireShapefile(ByteBuffer bytes, Place place) {
        int size = bytes.limit();
        if (size < LENGTH) {
            throw new UnusableInput(
                    place,
                    "is " + size + " bytes long; wanted a shapefile, whose header alone takes 100; " + GET_ANOTHER);
        }
        int code = bigEndian(bytes, 0);
        if (code != FILE_CODE) {
            throw new UnusableInput(
                    place,
                    "begins with the number " + code + "; wanted " + FILE_CODE + ", the mark of a shapefile; "
                            + GET_ANOTHER);
        }
    }

    private static void noteVersion(int version, Place place, Findings findings) {
        if (version != VERSION) {
            findings.note(place, "gives its version as " + version + "; wanted 1000; read as if it were that");
        }
    }

    private static void noteLength(ByteBuffer bytes, Place place, Findings findings) {
        long claimed = 2L * bigEndian(bytes, 24);
        if (claimed != bytes.limit()) {
            findings.note(
                    place,
                    "its header gives the file's length as " + claimed + " bytes, but there are " + bytes.limit()
                            + "; what is there was read; check that no feature is missing, or export the layer again");
        }
    }

    static int bigEndian(ByteBuffer littleEndian, int offset) {
        return Integer.reverseBytes(littleEndian.getInt(offset));
    }
}
