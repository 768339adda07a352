package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.fallrule.SiteOnDisk;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A site is the same in whatever format its layers come. The files were written by GDAL 3.6.2 from the GeoJSON of the sample site; to
 * renew {@code plumb-line-1.gpkg}, in sample-sites/plumb-line-1: {@code for f in *.geojson; do ogr2ogr -f GPKG -update -append -nln
 * ${f%.geojson} -lco SPATIAL_INDEX=NO plumb-line-1.gpkg $f; done; sqlite3 plumb-line-1.gpkg "pragma page_size=512; vacuum"}; to
 * renew those in the folder {@code formats}: {@code ogr2ogr -f GeoJSONSeq -lco COORDINATE_PRECISION=15 pipe.geojsonl pipe.geojson}, the
 * same with {@code -lco RS=YES} for {@code pipe.geojsons}, and {@code ogr2ogr -f CSV -lco GEOMETRY=AS_XYZ -lco SEPARATOR=SEMICOLON -lco
 * WRITE_BOM=YES spot.csv spot.geojson}.
 */
class OneSiteInManyFormatsTest {
    private static final Path SAMPLE = Path.of("sample-sites", "plumb-line-1");

    private static final Path FIXTURES = Path.of("src/test/resources/org/fallrule/reader");

    @TempDir
    Path place;

    private SiteOnDisk folder;
    private String siteYaml;
    private List<String> asGeoJson;

    @BeforeEach
    void readAsGeoJson() throws IOException {
        folder = SiteOnDisk.in(place, "tables");
        siteYaml = Files.readString(SAMPLE.resolve("site.yaml"));
        asGeoJson = features(SiteReader.read(SAMPLE));
        assertThat(asGeoJson).hasSizeGreaterThan(20);
    }

    @Test
    void asTablesOfOneGeoPackage() throws IOException {
        copy("geopackage/plumb-line-1.gpkg", "plan.gpkg");

        assertThat(read("file: plan.gpkg, table: $1")).isEqualTo(asGeoJson);
    }

    /** RFC 8142 with record separators, and a feature a line without. */
    @ParameterizedTest(name = "its pipes in {0}")
    @ValueSource(strings = {"pipe.geojsons", "pipe.geojsonl"})
    void asATextSequence(String file) throws IOException {
        assertThat(replaced("pipe.geojson", file, file)).isEqualTo(asGeoJson);
    }

    @Test
    void spotsAsATableOfPoints() throws IOException {
        List<String> read = replaced("spot.geojson", "spot.csv", "spot.csv, crs: \"OGC:CRS84\"");

        // the table says as an attribute what the GeoJSON says as Z
        assertThat(read).filteredOn(text -> text.contains(" elevation=")).hasSizeGreaterThan(10);
        assertThat(read.stream().map(text -> text.replaceFirst("elevation=Elevation\\[.*?\\] ", "")))
                .containsExactlyElementsOf(asGeoJson);
    }

    @Test
    void shapefilesInOneZipFile() throws IOException {
        SiteOnDisk zipped = SiteOnDisk.in(place, "harrow-14");
        Path harrow = Path.of("sample-sites", "harrow-14");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zipped.path("all.zip")));
                Stream<Path> files = Files.list(harrow)) {
            for (Path file : files.sorted().toList()) {
                out.putNextEntry(new ZipEntry("layers/" + file.getFileName()));
                out.write(Files.readAllBytes(file));
            }
        }
        zipped.with(
                "site.yaml",
                Files.readString(harrow.resolve("site.yaml"))
                        .replaceAll("(?m)^    file: (\\w+)\\.shp", "    file: all.zip\n    table: $1")
                        .replaceAll("file: (\\w+)\\.shp", "file: all.zip, table: $1"));

        assertThat(features(SiteReader.read(zipped.path()))).isEqualTo(features(SiteReader.read(harrow)));
    }

    /** The sample site with one of its files in another format. */
    private List<String> replaced(String file, String by, String named) throws IOException {
        SiteOnDisk copy = SiteOnDisk.copied("plumb-line-1", place);
        Files.copy(FIXTURES.resolve("formats").resolve(by), copy.path(by));
        return features(SiteReader.read(
                copy.without(file).replacing("site.yaml", file, named).path()));
    }

    private List<String> read(String layer) {
        String changed = siteYaml.replaceAll("(?m)^  \\w+: (\\w+)\\.geojson$", "  $1: {" + layer + "}")
                .replaceAll("file: (\\w+)\\.geojson", layer);
        return features(SiteReader.read(folder.with("site.yaml", changed).path()));
    }

    private void copy(String resource, String to) throws IOException {
        Files.copy(FIXTURES.resolve(resource), folder.path(to));
    }

    /** Every feature with every attribute and vertex, without the place it came from. */
    private static List<String> features(Site site) {
        return List.of(Role.values()).stream()
                .flatMap(role -> site.features(role).stream())
                .map(OneSiteInManyFormatsTest::written)
                .toList();
    }

    private static String written(Feature feature) {
        StringBuilder text = new StringBuilder(feature.role().word() + " " + feature.id() + " ");
        feature.attributes().asMap().forEach((attribute, value) -> text.append(attribute.name() + "=" + value + " "));
        for (var vertex : feature.geometry().getCoordinates()) {
            text.append(vertex);
        }
        return text.toString();
    }
}
