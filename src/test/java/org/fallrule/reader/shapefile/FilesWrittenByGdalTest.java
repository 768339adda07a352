package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.fallrule.document.Fault;
import org.fallrule.reader.layer.Listing;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Outside source: GDAL 3.6.2 wrote these files and read them back ({@code make_fixtures.py} beside them); the {@code .txt} files hold
 * what it read.
 */
class FilesWrittenByGdalTest {

    @ParameterizedTest(name = "{0}.shp reads vertex by vertex and value by value as GDAL reads it")
    @ValueSource(
            strings = {
                "point",
                "point_z",
                "point_m",
                "point_zm",
                "multipoint",
                "multipoint_z",
                "multipoint_m",
                "multipoint_zm",
                "line",
                "line_z",
                "line_m",
                "line_zm",
                "polygon",
                "polygon_z",
                "polygon_m",
                "polygon_zm",
                "lots",
                "western",
                "marked",
                "deleted"
            })
    void readsAsGdalReads(String name) throws IOException {
        List<String> read =
                Listing.of(read(name)).stream().map(Listing::spelled).toList();

        List<String> gdal = Files.readAllLines(fixture(name + ".txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(Listing::spelled)
                .toList();
        assertThat(read).isEqualTo(gdal);
    }

    @ParameterizedTest(name = "nothing is noted about {0}.shp")
    @ValueSource(
            strings = {
                "point",
                "point_z",
                "point_m",
                "point_zm",
                "multipoint_zm",
                "line_zm",
                "polygon",
                "polygon_zm",
                "lots",
                "western",
                "marked",
                "deleted"
            })
    void notesNothing(String name) {
        assertThat(read(name).notes()).extracting(Fault::toString).isEmpty();
    }

    /** Here GDAL is not followed: it takes a ring of another height for a shell, even when it writes. */
    @Test
    void aHoleThatGdalWoundAsAShellIsReadAsAHoleAndNoted() {
        RawLayer layer = read("hole_at_other_height");

        assertThat(layer.features().get(0).geometry().orElseThrow().getArea()).isEqualTo(100 - 4);
        assertThat(layer.notes())
                .extracting(Fault::toString)
                .containsExactly(
                        "hole_at_other_height.shp: feature 1: its ring 2 is wound as a shell but lies as a hole; "
                                + "read as it lies; check the polygon's area");
    }

    @Test
    void theProjectionFileIsTheCrs() {
        assertThat(read("lots").crs().orElseThrow()).startsWith("PROJCS[\"WGS_1984_UTM_Zone_17N\"");
        assertThat(read("western").crs()).isEmpty();
    }

    static RawLayer read(String name) {
        return ShapefileReader.read(fixture(name + ".shp"), name + ".shp");
    }

    static Path fixture(String file) {
        URL url = Objects.requireNonNull(FilesWrittenByGdalTest.class.getResource(file), file);
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
