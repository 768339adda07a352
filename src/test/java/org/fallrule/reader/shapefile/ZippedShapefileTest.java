package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Listing;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A zip file reads as the shapefile within it does; the shapefiles were written by GDAL (see {@link FilesWrittenByGdalTest}). */
class ZippedShapefileTest {
    @TempDir
    Path folder;

    private Path zip;

    @BeforeEach
    void place() {
        zip = folder.resolve("layers.zip");
    }

    private RawLayer read() {
        return ShapefileReader.readZipped(zip, "layers.zip", Optional.empty());
    }

    private RawLayer read(String layer) {
        return ShapefileReader.readZipped(zip, "layers.zip", Optional.of(layer));
    }

    private void refused(String says) {
        assertThatThrownBy(this::read).isInstanceOf(UnusableInput.class).hasMessageStartingWith("layers.zip: " + says);
    }

    private static void put(ZipOutputStream out, String name, byte[] content) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(content);
        out.closeEntry();
    }

    private static void put(ZipOutputStream out, String in, String... layers) throws IOException {
        for (String layer : layers) {
            for (String extension : List.of("shp", "shx", "dbf", "prj", "cpg")) {
                Path file = FilesWrittenByGdalTest.fixture("lots.shp").resolveSibling(layer + "." + extension);
                if (Files.exists(file)) {
                    put(out, in + layer + "." + extension, Files.readAllBytes(file));
                }
            }
        }
    }

    private ZipOutputStream zipped() throws IOException {
        return new ZipOutputStream(Files.newOutputStream(zip));
    }

    @ParameterizedTest(name = "in the folder \"{0}\" of the zip file")
    @ValueSource(strings = {"", "county/layers/"})
    void readsAsTheFilesDo(String in) throws IOException {
        try (ZipOutputStream out = zipped()) {
            put(out, "readme.txt", new byte[] {1});
            put(out, "__MACOSX/._lots.shp", new byte[] {1});
            put(out, in, "lots");
        }

        RawLayer files = FilesWrittenByGdalTest.read("lots");
        assertThat(Listing.of(read())).isEqualTo(Listing.of(files));
        assertThat(read().crs()).isEqualTo(files.crs());
        assertThat(read().columns()).isEqualTo(files.columns());
        assertThat(read().notes()).isEmpty();
    }

    @Test
    void severalAreAskedAbout() throws IOException {
        try (ZipOutputStream out = zipped()) {
            put(out, "a/", "lots", "line");
            put(out, "b/", "line");
        }

        refused("holds 3 shapefiles: lots, line, line; say in site.yaml which one it is, such as {file: layers.zip,"
                + " table: lots}");
        assertThat(Listing.of(read("LOTS"))).isEqualTo(Listing.of(FilesWrittenByGdalTest.read("lots")));
        assertThat(Listing.of(read("b/line.shp"))).isEqualTo(Listing.of(FilesWrittenByGdalTest.read("line")));
        assertThatThrownBy(() -> read("line"))
                .hasMessage("layers.zip: holds several shapefiles line: a/line, b/line; name it with its folder");
        assertThatThrownBy(() -> read("lot"))
                .hasMessage("layers.zip: holds no shapefile lot; did you mean lots? It has lots, line, line");
    }

    @ParameterizedTest(name = "an entry {0} is refused")
    @ValueSource(strings = {"../lots.shp", "a/../../lots.shp", "/etc/lots.shp", "..\\lots.shp", "C:\\lots.shp"})
    void entriesThatLeadOutAreRefused(String name) throws IOException {
        try (ZipOutputStream out = zipped()) {
            put(out, "", "lots");
            put(out, name, new byte[] {1});
        }

        refused("holds a file " + name + ", which leads out of it");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(zip);
        }
    }

    @Test
    void whatUnpacksWithoutEndIsStopped() throws IOException {
        try (ZipOutputStream out = zipped()) {
            put(out, "", "lots");
            out.putNextEntry(new ZipEntry("bomb.shp"));
            zeros(out, 300);
            out.closeEntry();
        }
        assertThat(Files.size(zip)).isLessThan(1 << 20);

        assertThatThrownBy(() -> read("bomb"))
                .hasMessage("layers.zip: unpacks to more than 256 MiB; unpack it, or export the part around the site");
        assertThat(read("lots").features()).isNotEmpty();
    }

    private static void zeros(OutputStream out, int mebibytes) throws IOException {
        byte[] mebibyte = new byte[1 << 20];
        for (int count = 0; count < mebibytes; count++) {
            out.write(mebibyte);
        }
    }

    @Test
    void whatIsNoZipFileOrHoldsNoShapefile() throws IOException {
        Files.write(zip, new byte[] {'P', 'K', 3, 4, 0});
        refused("is no zip file that can be read");
        Files.write(zip, new byte[0]);
        refused("is no zip file that can be read");
        try (ZipOutputStream out = zipped()) {
            put(out, "plan.gpkg", new byte[] {1});
        }
        refused("holds no shapefile (.shp)");
    }

    @Test
    void aShapefileWithoutItsTableIsNotedAsOnDisk() throws IOException {
        try (ZipOutputStream out = zipped()) {
            put(out, "lots.shp", Files.readAllBytes(FilesWrittenByGdalTest.fixture("lots.shp")));
        }

        assertThat(read().notes())
                .extracting(fault -> fault.where() + ": " + fault.says())
                .containsExactly(
                        "layers.zip: no .dbf stands beside it, so its features have no attributes; put the .dbf"
                                + " in the same folder");
    }
}
