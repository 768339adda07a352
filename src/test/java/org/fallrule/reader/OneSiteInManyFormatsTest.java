package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.fallrule.SiteOnDisk;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A site is the same in whatever format its layers come. The files were written by GDAL 3.6.2 from the GeoJSON of the sample site; to
 * renew {@code plumb-line-1.gpkg}, in sample-sites/plumb-line-1: {@code for f in *.geojson; do ogr2ogr -f GPKG -update -append -nln
 * ${f%.geojson} -lco SPATIAL_INDEX=NO plumb-line-1.gpkg $f; done; sqlite3 plumb-line-1.gpkg "pragma page_size=512; vacuum"}.
 */
class OneSiteInManyFormatsTest {
    private static final Path SAMPLE = Path.of("sample-sites", "plumb-line-1");

    @TempDir
    Path place;

    private SiteOnDisk folder;
    private String siteYaml;
    private List<String> asGeoJson;

    @BeforeEach
    void readAsGeoJson() throws IOException {
        folder = SiteOnDisk.in(place, "plumb-line-1");
        siteYaml = Files.readString(SAMPLE.resolve("site.yaml"));
        asGeoJson = features(SiteReader.read(SAMPLE));
        assertThat(asGeoJson).hasSizeGreaterThan(20);
    }

    @Test
    void asTablesOfOneGeoPackage() throws IOException {
        copy("geopackage/plumb-line-1.gpkg", "plan.gpkg");

        assertThat(read("file: plan.gpkg, table: $1")).isEqualTo(asGeoJson);
    }

    private List<String> read(String layer) {
        String changed = siteYaml.replaceAll("(?m)^  \\w+: (\\w+)\\.geojson$", "  $1: {" + layer + "}")
                .replaceAll("file: (\\w+)\\.geojson", layer);
        return features(SiteReader.read(folder.with("site.yaml", changed).path()));
    }

    private void copy(String resource, String to) throws IOException {
        Files.copy(
                Path.of("src/test/resources/org/fallrule/reader").resolve(resource),
                folder.path(to),
                StandardCopyOption.REPLACE_EXISTING);
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
