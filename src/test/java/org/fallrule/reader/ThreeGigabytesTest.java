package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of 3 GB, which are more than the tests' memory: they begin as they should and go on with zeros that take no room on disk. */
class ThreeGigabytesTest {
    private static final long LENGTH = 3_000_000_000L;

    @TempDir
    Path place;

    private SiteOnDisk folder;

    @BeforeEach
    void aFolder() {
        folder = SiteOnDisk.in(place, "lane-1");
    }

    private void huge(String file, byte[] start) {
        try (RandomAccessFile out = new RandomAccessFile(folder.path(file).toFile(), "rw")) {
            out.write(start);
            out.setLength(LENGTH);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static byte[] start(String file) {
        ByteBuffer bytes = ByteBuffer.allocate(200);
        switch (file.substring(file.lastIndexOf('.'))) {
            case ".shp" ->
                bytes.putInt(0, 9994)
                        .putInt(24, (int) (LENGTH / 2))
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .putInt(28, 1000)
                        .putInt(32, 1);
            case ".gpkg" ->
                bytes.put("SQLite format 3\0".getBytes(StandardCharsets.US_ASCII))
                        .putShort((short) 4096)
                        .put(new byte[] {1, 1, 0, 64, 32, 32});
            case ".zip" -> bytes.put(new byte[] {'P', 'K', 3, 4, 20});
            case ".tif" -> bytes.put(new byte[] {'I', 'I', 42, 0, 8});
            case ".csv" -> bytes.put("x,y,elev\n1,2,3\n".getBytes(StandardCharsets.US_ASCII));
            case ".asc" -> bytes.put("ncols 2\nnrows 2\n".getBytes(StandardCharsets.US_ASCII));
            default ->
                bytes.put("{\"type\": \"FeatureCollection\", \"features\": [".getBytes(StandardCharsets.US_ASCII));
        }
        return bytes.array();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lot.geojson", "lot.shp", "lot.gpkg", "lot.zip", "lot.csv", "ground.tif", "ground.asc"})
    void aLayerIsRefusedByItsName(String file) {
        huge(file, start(file));
        String role = file.substring(0, file.indexOf('.'));
        if (role.equals("ground")) {
            folder.layer(
                    "lot.geojson", SiteOnDisk.feature("'id': 'L-1'", "Polygon", "[[[0, 0], [1, 0], [1, 1], [0, 0]]]"));
        }
        folder.with(
                "site.yaml",
                "crs: OGC:CRS84\nunits: {elevation: ft}\nlayers: {" + role + ": " + file
                        + (role.equals("ground") ? ", lot: lot.geojson" : "") + "}");

        assertThatThrownBy(() -> SiteReader.read(folder.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining(file);
    }

    @Test
    void aTableBesideAShapefileIsRefusedByItsName() throws IOException {
        for (String ending : new String[] {"shp", "shx"}) {
            java.nio.file.Files.copy(
                    Path.of("src/test/resources/org/fallrule/reader/shapefile/lots." + ending),
                    folder.path("lot." + ending));
        }
        huge("lot.dbf", new byte[] {3});

        assertThatThrownBy(() -> SiteReader.read(folder.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("lot.dbf");
    }

    @Test
    void aSiteFileIsRefusedByItsName() {
        huge("site.yaml", "site: Lane 1\n".getBytes(StandardCharsets.US_ASCII));

        assertThatThrownBy(() -> SiteReader.read(folder.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("site.yaml");
    }
}
