package org.fallrule.reader.geojson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GeoJsonCrsTest {

    @TempDir
    Path folder;

    private Optional<String> crsOf(String crs) throws IOException {
        String json = "{\"type\":\"FeatureCollection\",\"crs\":" + crs + ",\"features\":[]}";
        return GeoJsonReader.read(Files.writeString(folder.resolve("a.geojson"), json), "a.geojson")
                .crs();
    }

    private static String named(String name) {
        return "{\"type\":\"name\",\"properties\":{\"name\":\"" + name + "\"}}";
    }

    @ParameterizedTest
    @CsvSource({
        "urn:ogc:def:crs:EPSG::2264,EPSG:2264",
        "urn:ogc:def:crs:EPSG:9.8:2264,EPSG:2264",
        "EPSG:2264,EPSG:2264",
        "epsg:2264,EPSG:2264",
        "http://www.opengis.net/def/crs/EPSG/0/2264,EPSG:2264",
        "urn:ogc:def:crs:OGC:1.3:CRS84,OGC:CRS84",
        "OGC:CRS84,OGC:CRS84",
    })
    void namesInEveryCommonSpellingBecomeACode(String name, String code) throws IOException {
        assertThat(crsOf(named(name))).contains(code);
    }

    @Test
    void nullMeansThatTheFileDoesNotSay() throws IOException {
        assertThat(crsOf("null")).isEmpty();
    }

    @Test
    void aLinkIsRefusedByItsName() {
        assertThatThrownBy(() -> crsOf("{\"type\":\"link\",\"properties\":{\"href\":\"grid.prj\"}}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("a.geojson:1:")
                .hasMessageContaining("of the form \"link\"")
                .hasMessageContaining("EPSG:2264");
    }

    @ParameterizedTest
    @ValueSource(strings = {"7", "{}", "{\"type\":\"name\"}", "{\"type\":\"name\",\"properties\":7}", "{\"type\":7}"})
    void whatIsNotACrsObjectIsRefused(String crs) {
        assertThatThrownBy(() -> crsOf(crs)).isInstanceOf(UnusableInput.class).hasMessageContaining("crs");
    }

    @Test
    void aNameThatIsNoCodeIsRefused() {
        assertThatThrownBy(() -> crsOf(named("our county grid")))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("our county grid");
    }

    @Test
    void twoSystemsInOneFileAreRefused() throws IOException {
        String one = "{\"type\":\"FeatureCollection\",\"features\":[],\"crs\":";
        Path file = Files.writeString(
                folder.resolve("b.geojson"), one + named("EPSG:2264") + "}\n" + one + named("EPSG:3358") + "}");

        assertThatThrownBy(() -> GeoJsonReader.read(file, "b.geojson"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("b.geojson:2:")
                .hasMessageContaining("EPSG:3358, one before it in EPSG:2264");
    }

    @Test
    void aCrsWithinAFeatureIsRefused() throws IOException {
        Path file = Files.writeString(
                folder.resolve("c.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"crs\":" + named("EPSG:2264")
                        + "}]}");

        assertThatThrownBy(() -> GeoJsonReader.read(file, "c.geojson"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("feature 1")
                .hasMessageContaining("belongs at the top of the file");
    }
}
