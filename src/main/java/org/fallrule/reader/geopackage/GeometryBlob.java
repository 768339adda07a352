package org.fallrule.reader.geopackage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;

/**
 * A geometry as a GeoPackage holds it: a header, then well-known binary (OGC 12-128, clause 2.1.3.1.1, BLOB format). Nothing that the
 * blob says of itself is believed before its length bears it out.
 */
final class GeometryBlob {
    private static final int FIXED_PART = 8;
    private static final int BYTE_ORDER_FLAG = 0x01;
    private static final int EXTENDED_FLAG = 0x20;

    /** Bytes of the envelope by its code: none, xy, xyz, xym, xyzm; the codes 5 to 7 are invalid. */
    private static final int[] ENVELOPE_BYTES = {0, 32, 48, 48, 64};

    private final byte[] blob;
    private final Place place;
    private final Findings findings;

    GeometryBlob(byte[] blob, Place place, Findings findings) {
        this.blob = blob;
        this.place = place;
        this.findings = findings;
    }

    /**
     * The geometry; an empty one where it is empty.
     *
     * @param tableSrsId the reference system that the table states; the blob's own should be the same (requirement 33)
     */
    Geometry geometry(long tableSrsId) {
        if (blob.length < FIXED_PART || blob[0] != 'G' || blob[1] != 'P') {
            throw broken("does not begin with GP and a header of 8 bytes");
        }
        if (blob[2] != 0) {
            throw broken("is of version " + (blob[2] & 0xFF) + ", wanted 0");
        }
        int flags = blob[3];
        if ((flags & EXTENDED_FLAG) != 0) {
            throw broken("is of an extended kind (" + extensionCode() + "), not well-known binary");
        }
        ByteBuffer header = ByteBuffer.wrap(blob)
                .order((flags & BYTE_ORDER_FLAG) == 0 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        noteSystem(header.getInt(4), tableSrsId);
        int start = FIXED_PART + envelopeBytes(flags);
        Geometry geometry = parsed(Arrays.copyOfRange(blob, start, blob.length));
        if (start > FIXED_PART) {
            noteEnvelope(header, geometry);
        }
        return geometry;
    }

    private int envelopeBytes(int flags) {
        int code = (flags >> 1) & 7;
        if (code >= ENVELOPE_BYTES.length) {
            throw broken("names an envelope of the kind " + code + ", wanted 0 to 4");
        }
        if (FIXED_PART + ENVELOPE_BYTES[code] > blob.length) {
            throw broken("ends within its envelope");
        }
        return ENVELOPE_BYTES[code];
    }

    private Geometry parsed(byte[] wkb) {
        new WkbStructure(ByteBuffer.wrap(wkb), place).check();
        try {
            return new WKBReader().read(wkb);
        } catch (ParseException | IllegalArgumentException failed) {
            throw new UnusableInput(
                    place, "its geometry has no meaning as a shape (" + failed.getMessage() + "); mend or delete it");
        }
    }

    private void noteSystem(int srsId, long tableSrsId) {
        if (srsId != tableSrsId) {
            findings.noteFeature(
                    place,
                    "its geometry names the reference system " + srsId + ", its table " + tableSrsId
                            + "; read in the table's");
        }
    }

    private void noteEnvelope(ByteBuffer header, Geometry geometry) {
        Envelope stated =
                new Envelope(header.getDouble(8), header.getDouble(16), header.getDouble(24), header.getDouble(32));
        if (!geometry.isEmpty() && !stated.covers(geometry.getEnvelopeInternal())) {
            findings.noteFeature(
                    place, "its vertices lie outside of the envelope that its header states; the vertices were read");
        }
    }

    private String extensionCode() {
        StringBuilder code = new StringBuilder();
        for (int index = FIXED_PART; index < Math.min(blob.length, FIXED_PART + 4); index++) {
            code.append(blob[index] > ' ' && blob[index] < 127 ? (char) blob[index] : '?');
        }
        return code.toString();
    }

    private UnusableInput broken(String says) {
        return new UnusableInput(
                place, "its geometry " + says + "; wanted a GeoPackage geometry; export the layer again");
    }
}
