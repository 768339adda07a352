package org.fallrule.reader.geopackage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.layer.Listing;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Outside source: GDAL 3.6.2 wrote these files and read them back ({@code make_fixtures.py} beside them); the {@code .txt} files hold
 * what it read.
 */
class GeoPackagesWrittenByGdalTest {

    @ParameterizedTest(name = "{0} reads vertex by vertex and value by value as GDAL reads it")
    @ValueSource(
            strings = {
                "points",
                "points_z",
                "points_m",
                "points_zm",
                "multipoints",
                "drains",
                "multilines",
                "lots",
                "islands",
                "anything",
                "Odd \"name\" of a layer"
            })
    void readsAsGdalReads(String table) throws IOException {
        RawLayer layer = read("kinds", table);

        assertThat(spelled(layer)).isEqualTo(byGdal("kinds", table));
        assertThat(layer.notes()).isEmpty();
        assertThat(layer.crs()).contains("EPSG:2264");
    }

    @ParameterizedTest(name = "{0} keeps the ids of its rows, those of deleted ones left out")
    @ValueSource(strings = {"drains", "late"})
    void idsAreThoseOfTheRows(String table) throws IOException {
        assertThat(spelled(read("gaps", table))).isEqualTo(byGdal("gaps", table));
    }

    @Test
    void aSystemOfAnotherOrganizationIsReadFromItsDefinition() {
        String wkt = read("gaps", "drains").crs().orElseThrow();

        assertThat(wkt).startsWith("PROJCS[\"NAD_1983_StatePlane_North_Carolina_FIPS_3200_Feet");
        assertThat(CoordinateSystem.of(wkt, Place.of("gaps.gpkg"))
                        .linearUnitToMetre()
                        .orElseThrow())
                .isEqualTo(1200.0 / 3937, offset(1e-12));
    }

    @Test
    void theTablesAreListedAsGdalListsThem() throws IOException {
        List<String> gdal = Files.readAllLines(fixture("kinds.txt")).stream()
                .filter(line -> line.startsWith("table "))
                .map(line -> line.substring("table ".length()))
                .toList();

        assertThat(GeoPackageReader.tables(fixture("kinds.gpkg"), "kinds.gpkg"))
                .containsExactlyInAnyOrderElementsOf(gdal);
    }

    @ParameterizedTest(name = "the layer {0} is refused as a {1}")
    @CsvSource({"arcs,CompoundCurve", "round_lots,CurvePolygon"})
    void curvesAreRefusedByName(String table, String type) {
        assertThatThrownBy(() -> read("curves", table))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("curves.gpkg: feature 1: is a " + type
                        + ", which is not read; turn its curves into straight segments in a GIS program and export it"
                        + " again");
    }

    private static List<String> spelled(RawLayer layer) {
        return Listing.of(layer).stream().map(Listing::spelled).toList();
    }

    private static List<String> byGdal(String name, String table) throws IOException {
        List<String> lines = Files.readAllLines(fixture(name + ".txt"));
        List<String> from = lines.subList(lines.indexOf("table " + table) + 1, lines.size());
        return from.stream()
                .takeWhile(line -> !line.startsWith("table "))
                .map(Listing::spelled)
                .toList();
    }

    private static RawLayer read(String name, String table) {
        return GeoPackageReader.read(fixture(name + ".gpkg"), name + ".gpkg", Optional.of(table));
    }

    static Path fixture(String file) {
        URL url = Objects.requireNonNull(GeoPackagesWrittenByGdalTest.class.getResource(file), file);
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
