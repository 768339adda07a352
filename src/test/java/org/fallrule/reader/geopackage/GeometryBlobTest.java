package org.fallrule.reader.geopackage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

/**
 * The geometry BLOB format of OGC 12-128 (GeoPackage Encoding Standard 1.3, clause 2.1.3.1.1): magic GP, version, flags, srs_id,
 * envelope, well-known binary of OGC 06-103r4, clause 8.2.
 */
class GeometryBlobTest {
    private static final String LINE = "LINESTRING (1 2, 5 7)";
    private final Findings findings = new Findings();

    private Geometry read(byte[] blob) {
        return new GeometryBlob(blob, Place.of("plan.gpkg").feature("feature 1"), findings).geometry(2264);
    }

    private void refused(byte[] blob, String says) {
        assertThatThrownBy(() -> read(blob))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("plan.gpkg: feature 1: ")
                .hasMessageContaining(says);
    }

    @ParameterizedTest(name = "flags bit 0: header in byte order {0}")
    @ValueSource(ints = {0, 1})
    void bothByteOrders(int order) {
        byte[] blob = Made.blob(order | 1 << 1, 2264, new double[] {1, 5, 2, 7}, Made.wkb(LINE));

        assertThat(read(blob).equalsExact(Made.geometry(LINE))).isTrue();
        assertThat(findings.notes()).isEmpty();
    }

    @ParameterizedTest(name = "flags bits 3 to 1: the envelope {0} has {1} numbers")
    @CsvSource({"0, 0", "1, 4", "2, 6", "3, 6", "4, 8"})
    void envelopesOfEachKind(int code, int numbers) {
        double[] envelope = Arrays.copyOf(new double[] {1, 5, 2, 7, 0, 0, 0, 0}, numbers);

        assertThat(read(Made.blob(code << 1 | 1, 2264, envelope, Made.wkb(LINE)))
                        .equalsExact(Made.geometry(LINE)))
                .isTrue();
    }

    @ParameterizedTest(name = "flags bits 3 to 1: the envelope {0} is invalid")
    @ValueSource(ints = {5, 6, 7})
    void invalidEnvelopes(int code) {
        refused(
                Made.blob(code << 1 | 1, 2264, new double[8], Made.wkb(LINE)),
                "its geometry names an envelope of the kind " + code + ", wanted 0 to 4");
    }

    @Test
    void anEnvelopeThatTheBlobIsTooShortFor() {
        refused(Made.blob(4 << 1 | 1, 2264, new double[3], new byte[0]), "its geometry ends within its envelope");
    }

    @Test
    void anEnvelopeThatDoesNotHoldTheVerticesIsNoted() {
        read(Made.blob(1 << 1 | 1, 2264, new double[] {1, 4, 2, 7}, Made.wkb(LINE)));

        assertThat(findings.notes())
                .extracting(Fault::toString)
                .containsExactly(
                        "plan.gpkg: feature 1: its vertices lie outside of the envelope that its header states; the"
                                + " vertices were read");
    }

    @Test
    void theMagicAndTheVersion() {
        byte[] blob = Made.blob(Made.wkb(LINE));
        blob[2] = 1;
        refused(blob, "its geometry is of version 1, wanted 0");
        blob[1] = 'Q';
        refused(blob, "its geometry does not begin with GP and a header of 8 bytes");
        refused(new byte[] {'G', 'P', 0}, "its geometry does not begin with GP and a header of 8 bytes");
        refused(new byte[0], "its geometry does not begin with GP and a header of 8 bytes");
    }

    @Test
    void anExtendedGeometryIsRefusedByItsCode() {
        byte[] blob = Made.blob(0x20 | 1, 2264, new double[0], new byte[] {'A', 'B', 'C', 'D', 1, 2});
        refused(blob, "its geometry is of an extended kind (ABCD), not well-known binary");
    }

    @Test
    void anotherSystemThanTheTablesIsNoted() {
        read(Made.blob(1, 4326, new double[0], Made.wkb(LINE)));

        assertThat(findings.notes())
                .extracting(Fault::says)
                .containsExactly("its geometry names the reference system 4326, its table 2264; read in the table's");
    }

    @Test
    void anEmptyGeometryIsEmpty() {
        double none = Double.NaN;
        byte[] wkb = little(21)
                .put((byte) 1)
                .putInt(1)
                .putDouble(none)
                .putDouble(none)
                .array();

        assertThat(read(Made.blob(0x10 | 1, 2264, new double[0], wkb)).isEmpty())
                .isTrue();
    }

    @ParameterizedTest(name = "the type {0} is a {1} and refused by that name")
    @CsvSource({
        "8, CircularString",
        "9, CompoundCurve",
        "10, CurvePolygon",
        "11, MultiCurve",
        "12, MultiSurface",
        "13, Curve",
        "14, Surface",
        "1008, CircularString",
        "2009, CompoundCurve",
        "3010, CurvePolygon",
        "15, PolyhedralSurface",
        "16, TIN",
        "17, Triangle"
    })
    void typesThatAreNotReadAreNamed(int type, String name) {
        refused(
                Made.blob(little(9).put((byte) 1).putInt(type).putInt(0).array()),
                "is a " + name + ", which is not read");
    }

    @ParameterizedTest(name = "the type {0} does not exist")
    @ValueSource(ints = {18, 999, 4001, 0x20000001, -1, Integer.MAX_VALUE})
    void typesThatDoNotExist(int type) {
        refused(Made.blob(little(9).put((byte) 1).putInt(type).putInt(0).array()), "well-known binary does not have");
    }

    @ParameterizedTest(name = "a type {0} that claims {1} parts in few bytes costs nothing")
    @CsvSource({
        "2, 2147483647",
        "2, -1",
        "3, 2147483647",
        "4, 2147483647",
        "5, -2147483648",
        "6, 100000000",
        "7, 2147483647"
    })
    void lyingCounts(int type, int count) {
        byte[] wkb = little(33).put((byte) 1).putInt(type).putInt(count).array();

        refused(Made.blob(wkb), "claims " + (count & 0xFFFFFFFFL) + " ");
    }

    @Test
    void aLineThatIsCutShort() {
        byte[] wkb = Made.wkb(LINE);
        for (int length = 0; length < wkb.length; length++) {
            byte[] cut = Arrays.copyOf(wkb, length);
            assertThatThrownBy(() -> read(Made.blob(cut))).isInstanceOf(UnusableInput.class);
        }
        refused(Made.blob(Arrays.copyOf(wkb, wkb.length + 3)), "its geometry has 3 bytes after its end");
    }

    @Test
    void collectionsWithinCollectionsWithoutEnd() {
        ByteBuffer wkb = little(900_000);
        while (wkb.hasRemaining()) {
            wkb.put((byte) 1).putInt(7).putInt(1);
        }
        refused(Made.blob(written(wkb)), "its geometry holds collections within collections more than 32 deep");
    }

    @Test
    void aVertexThatIsNoNumber() {
        ByteBuffer wkb = little(41)
                .put((byte) 1)
                .putInt(2)
                .putInt(2)
                .putDouble(0)
                .putDouble(0)
                .putDouble(Double.POSITIVE_INFINITY)
                .putDouble(1);
        refused(Made.blob(written(wkb)), "its geometry has a vertex whose x or y is no number");
    }

    @Test
    void aRingThatIsNotClosed() {
        ByteBuffer wkb = little(77).put((byte) 1).putInt(3).putInt(1).putInt(4);
        for (double number : new double[] {0, 0, 0, 10, 10, 10, 10, 0}) {
            wkb.putDouble(number);
        }
        refused(Made.blob(written(wkb)), "its geometry has a ring whose last vertex is not its first");
    }

    @Test
    void aRingOfTooFewVertices() {
        ByteBuffer wkb = little(45).put((byte) 1).putInt(3).putInt(1).putInt(2);
        wkb.putDouble(0).putDouble(0).putDouble(0).putDouble(0);
        refused(Made.blob(written(wkb)), "its geometry has a ring of fewer than 4 vertices");
    }

    @Test
    void aLineOfOneVertex() {
        byte[] wkb = little(25)
                .put((byte) 1)
                .putInt(2)
                .putInt(1)
                .putDouble(1)
                .putDouble(2)
                .array();
        refused(Made.blob(wkb), "its geometry is a line of one vertex");
    }

    /** Not of the standard, but what some programs still write: Z told by the highest bit. */
    @Test
    void aHeightToldByTheHighestBit() {
        byte[] wkb = little(29)
                .put((byte) 1)
                .putInt(0x80000001)
                .putDouble(1)
                .putDouble(2)
                .putDouble(3)
                .array();
        assertThat(read(Made.blob(wkb)).getCoordinate().getZ()).isEqualTo(3);
    }

    private static byte[] written(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.flip().remaining()];
        buffer.get(bytes);
        return bytes;
    }

    private static ByteBuffer little(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
}
