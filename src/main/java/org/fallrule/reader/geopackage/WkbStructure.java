package org.fallrule.reader.geopackage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * Walks over well-known binary (OGC 06-103r4, clause 8.2; ISO 13249-3 for Z and M) before it is parsed: counts are held against the
 * bytes that are there, types against those that have straight edges, and every coordinate must be a number. So neither a claim of
 * 2^31 points nor a collection within a collection without end costs memory.
 */
final class WkbStructure {
    private static final int MOST_DEPTH = 32;
    private static final int SMALLEST_GEOMETRY = 9;

    /** The names by type number, 0 to 17 (OGC 06-103r4, table 7). */
    private static final List<String> NAMES = List.of(
            "Geometry",
            "Point",
            "LineString",
            "Polygon",
            "MultiPoint",
            "MultiLineString",
            "MultiPolygon",
            "GeometryCollection",
            "CircularString",
            "CompoundCurve",
            "CurvePolygon",
            "MultiCurve",
            "MultiSurface",
            "Curve",
            "Surface",
            "PolyhedralSurface",
            "TIN",
            "Triangle");

    private static final int LAST_STRAIGHT = 7;
    private static final int LAST_CURVED = 14;

    private final ByteBuffer wkb;
    private final Place place;

    WkbStructure(ByteBuffer wkb, Place place) {
        this.wkb = wkb;
        this.place = place;
    }

    /**
     * Goes over the whole.
     *
     * @throws UnusableInput when it is cut short, too long, not numbers, or of a type that is not read
     */
    void check() {
        geometry(0);
        if (wkb.hasRemaining()) {
            throw broken("has " + wkb.remaining() + " bytes after its end");
        }
    }

    private void geometry(int depth) {
        if (depth > MOST_DEPTH) {
            throw broken("holds collections within collections more than " + MOST_DEPTH + " deep");
        }
        need(5);
        byte order = wkb.get();
        if (order != 0 && order != 1) {
            throw broken("names the byte order " + (order & 0xFF) + ", wanted 0 or 1");
        }
        wkb.order(order == 0 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        int word = wkb.getInt();
        int type = straight(word);
        int dimensions = dimensions(word);
        switch (type) {
            case 1 -> point(dimensions);
            case 2 -> line(dimensions);
            case 3 -> rings(dimensions);
            default -> parts(depth);
        }
    }

    private int straight(int word) {
        int type = (word & 0x0FFF_FFFF) % 1000;
        boolean known = (word & 0x0FFF_FFFF) < 4000 && (word & 0x3000_0000) == 0 && type < NAMES.size();
        if (!known) {
            throw broken("names the type " + (word & 0xFFFF_FFFFL) + ", which well-known binary does not have");
        }
        if (type > LAST_STRAIGHT || type == 0) {
            throw new UnusableInput(
                    place,
                    "is a " + NAMES.get(type) + ", which is not read; "
                            + (type > LAST_STRAIGHT && type <= LAST_CURVED
                                    ? "turn its curves into straight segments in a GIS program and export it again"
                                    : "wanted points, lines or polygons"));
        }
        return type;
    }

    /** Z and M by thousands (ISO) or by the two highest bits (an older habit). */
    private static int dimensions(int word) {
        int thousands = (word & 0x0FFF_FFFF) / 1000;
        boolean z = thousands == 1 || thousands == 3 || (word & 0x8000_0000) != 0;
        boolean m = thousands == 2 || thousands == 3 || (word & 0x4000_0000) != 0;
        return 2 + (z ? 1 : 0) + (m ? 1 : 0);
    }

    /** A point that is empty has no numbers for coordinates (OGC 12-128, clause 2.1.3.1.1). */
    private void point(int dimensions) {
        need(8L * dimensions);
        int start = wkb.position();
        boolean isEmpty = Double.isNaN(wkb.getDouble(start)) && Double.isNaN(wkb.getDouble(start + 8));
        if (!isEmpty) {
            refuseNoNumber(start);
        }
        wkb.position(start + 8 * dimensions);
    }

    private void line(int dimensions) {
        int start = wkb.position() + 4;
        vertices(dimensions);
        if (wkb.position() - start == 8 * dimensions) {
            throw broken("is a line of one vertex");
        }
    }

    private void vertices(int dimensions) {
        int size = 8 * dimensions;
        int count = count(size, "vertices");
        for (int index = 0; index < count; index++) {
            refuseNoNumber(wkb.position());
            wkb.position(wkb.position() + size);
        }
    }

    private void rings(int dimensions) {
        int count = count(4, "rings");
        for (int index = 0; index < count; index++) {
            int start = wkb.position() + 4;
            vertices(dimensions);
            refuseNoRing(start, wkb.position(), 8 * dimensions);
        }
    }

    /** The parser would close or lengthen it without a word (OGC 06-103r4, clause 6.1.7.1: a linear ring is closed). */
    private void refuseNoRing(int start, int end, int size) {
        int last = end - size;
        if (end > start && end - start < 4 * size) {
            throw broken("has a ring of fewer than 4 vertices");
        }
        if (end > start
                && (wkb.getDouble(start) != wkb.getDouble(last)
                        || wkb.getDouble(start + 8) != wkb.getDouble(last + 8))) {
            throw broken("has a ring whose last vertex is not its first");
        }
    }

    private void parts(int depth) {
        int count = count(SMALLEST_GEOMETRY, "parts");
        for (int index = 0; index < count; index++) {
            geometry(depth + 1);
        }
    }

    /** A count of things, each of which takes at least so many bytes. */
    private int count(int smallest, String what) {
        need(4);
        long count = wkb.getInt() & 0xFFFF_FFFFL;
        if (count > wkb.remaining() / smallest) {
            throw broken("claims " + count + " " + what + " but only " + wkb.remaining() + " bytes follow");
        }
        return (int) count;
    }

    private void refuseNoNumber(int start) {
        if (!Double.isFinite(wkb.getDouble(start)) || !Double.isFinite(wkb.getDouble(start + 8))) {
            throw broken("has a vertex whose x or y is no number");
        }
    }

    private void need(long bytes) {
        if (wkb.remaining() < bytes) {
            throw broken("is cut short");
        }
    }

    private UnusableInput broken(String says) {
        return new UnusableInput(place, "its geometry " + says + "; export the layer again");
    }
}
