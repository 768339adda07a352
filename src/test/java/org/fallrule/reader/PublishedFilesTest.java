package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Listing;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Outside source: files that others published, written by other programs; {@code SOURCES.md} beside them says whose they are. The
 * {@code .txt} files hold what GDAL 3.6.2 reads in them, by {@code list_by_gdal.py}.
 */
class PublishedFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/org/fallrule/reader/published");

    @ParameterizedTest(name = "{0} reads vertex by vertex and value by value as GDAL reads it")
    @ValueSource(
            strings = {
                "point.shp",
                "pointm.shp",
                "pointz.shp",
                "multipoint.shp",
                "multipointm.shp",
                "multipointz.shp",
                "polyline.shp",
                "polylinem.shp",
                "polylinez.shp",
                "polygon.shp",
                "polygonm.shp",
                "polygonz.shp",
                "eire.shp",
                "columbus.shp",
                "naturalearth_cities.shp",
                "null_geom.geojson",
                "nc.gpkg"
            })
    void readsAsGdalReads(String file) throws IOException {
        List<String> read =
                Listing.of(read(file)).stream().map(Listing::spelled).toList();

        assertThat(read).isEqualTo(byGdal(file));
        assertThat(read).hasSizeGreaterThan(3);
    }

    @Test
    void surfacesInSpaceAreRefusedByName() {
        assertThatThrownBy(() -> read("multipatch.shp"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("MultiPatch");
    }

    private static RawLayer read(String file) {
        return LayerFormat.of(file)
                .orElseThrow()
                .read(FOLDER.resolve(file), LayerSpec.plain(Role.LOT, file, Place.of(file)));
    }

    private static List<String> byGdal(String file) throws IOException {
        Path text = FOLDER.resolve(file + ".txt");
        try (InputStream in = Files.exists(text)
                        ? Files.newInputStream(text)
                        : new GZIPInputStream(Files.newInputStream(FOLDER.resolve(file + ".txt.gz")));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Listing::spelled)
                    .toList();
        }
    }
}
