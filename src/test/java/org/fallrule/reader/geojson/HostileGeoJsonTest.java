package org.fallrule.reader.geojson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostileGeoJsonTest {
    private static final String SMALL = """
            {"type": "FeatureCollection", "crs": {"type": "name", "properties": {"name": "EPSG:2264"}}, "features": [
              {"type": "Feature", "id": "é", "properties": {"a": {"b": [1, 2]}, "c": 1.5},
               "geometry": {"coordinates": [[[0, 0], [9, 0], [9, 9, 1], [0, 0]]], "type": "Polygon"}},
              {"type": "Feature", "properties": null,
               "geometry": {"type": "GeometryCollection", "geometries": [{"type": "Point", "coordinates": [1, 2, 3, 4]}]}}
            ]}
            """;

    @TempDir
    Path folder;

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("x.geojson"), bytes);
    }

    private UnusableInput refusal(String json) throws IOException {
        Path file = write(json.getBytes(StandardCharsets.UTF_8));
        UnusableInput refusal = catchThrowableOfType(UnusableInput.class, () -> GeoJsonReader.read(file, "x.geojson"));
        assertThat(refusal).as("refusal of %s", json).isNotNull();
        return refusal;
    }

    private void readOrRefuse(byte[] bytes) throws IOException {
        Path file = write(bytes);
        try {
            assertThat(GeoJsonReader.read(file, "x.geojson")).isNotNull();
        } catch (UnusableInput e) {
            assertThat(e.faults()).isNotEmpty();
            assertThat(e.faults().get(0).says()).isNotBlank();
        }
    }

    @Test
    void theWholeSmallFileIsRead() throws IOException {
        assertThat(GeoJsonReader.read(write(SMALL.getBytes(StandardCharsets.UTF_8)), "x.geojson")
                        .features())
                .hasSize(2);
    }

    @Test
    void cutOffAtAnyByteItIsRefusedWithLineAndColumn() throws IOException {
        byte[] whole = SMALL.getBytes(StandardCharsets.UTF_8);
        for (int length = 1; length < whole.length - 1; length++) {
            Path file = write(Arrays.copyOf(whole, length));
            UnusableInput refusal =
                    catchThrowableOfType(UnusableInput.class, () -> GeoJsonReader.read(file, "x.geojson"));
            assertThat(refusal).as("cut after byte %d", length).isNotNull();
            Place where = refusal.faults().get(0).where();
            assertThat(where.line()).as("line when cut after byte %d", length).isPositive();
            assertThat(where.column()).isPositive();
        }
    }

    @Test
    void withAnyByteChangedItIsReadOrRefused() throws IOException {
        byte[] whole = SMALL.getBytes(StandardCharsets.UTF_8);
        Random random = new Random(20);
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] = (byte) random.nextInt(256);
            readOrRefuse(changed);
            changed[at] = (byte) "[]{},:\"0- \n\u001E".charAt(random.nextInt(12));
            readOrRefuse(changed);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"type\":\"Point\",\"coordinates\":[1,\"north\"]}|34|the text \"north\"; wanted a number",
                "{\"type\":\"Point\",\"coordinates\":[1]}|33|this position has 1 number",
                "{\"type\":\"Point\",\"coordinates\":[NaN,1]}|32|NaN is not JSON",
                "{\"type\":\"Point\",\"coordinates\":[1e999,1]}|32|1e999 is too large",
                "{\"type\":\"Point\",\"coordinates\":[1,2,-1e999]}|36|-1e999 is too large",
                "{\"type\":\"Point\",\"coordinates\":[1,2,3,{}]}|38|an object; wanted a number",
                "{\"type\":\"Point\",\"coordinates\":[null,1]}|32|found null; wanted a number",
                "{\"type\":\"Point\",\"coordinates\":[[1,2]]}|31|a Point's coordinates are one position",
                "{\"type\":\"Point\",\"coordinates\":7}|31|the number 7; wanted an array of coordinates",
                "{\"type\":\"Point\"}|1|no \"coordinates\" member",
                "{\"type\":\"LineString\",\"coordinates\":[[1,2]]}|36|this line has 1 position",
                "{\"type\":\"LineString\",\"coordinates\":[1,2]}|36|must be a list of positions",
                "{\"type\":\"LineString\",\"coordinates\":[[1,2],[[3,4]]]}|49|are mixed in one array",
                "{\"type\":\"LineString\",\"coordinates\":[[1,2],3]}|43|wanted an array like the others",
                "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[0,0]]]}|34|this ring has 3 position(s)",
                "{\"type\":\"Polygon\",\"coordinates\":[[]]}|34|this ring has 0 position(s)",
                "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[1,1],[0,2]]]}|34|not closed: it starts at (0.0, 0.0)",
                "{\"type\":\"Polygon\",\"coordinates\":[[0,0],[1,0]]}|33|a list of rings",
                "{\"type\":\"GeometryCollection\",\"geometries\":[null]}|44|found null; wanted a geometry object",
                "{\"type\":\"GeometryCollection\"}|1|no \"geometries\" member",
                "{\"type\":\"Polgon\",\"coordinates\":[]}|9|the type \"Polgon\" is not GeoJSON",
                "{\"type\":\"Topology\"}|9|the type \"Topology\" is not GeoJSON",
                "{\"type\":7}|9|wanted a text",
                "{}|1|this object has no \"type\"",
                "[1,2]|1|found an array; wanted a GeoJSON object",
                "\"lot\"|1|found the text \"lot\"; wanted a GeoJSON object",
                "{\"type\":\"FeatureCollection\"}|1|no \"features\" member",
                "{\"type\":\"FeatureCollection\",\"features\":{}}|40|\"features\" is an object",
                "{\"type\":\"Feature\",\"features\":[]}|9|is a FeatureCollection, not a Feature",
                "{\"type\":\"Feature\",\"geometry\":[]}|30|found an array; wanted a geometry object",
                "{\"type\":\"Feature\",\"coordinates\":[1,2]}|1|coordinates outside its \"geometry\"",
                "{\"type\":\"Feature\",\"properties\":[]}|32|\"properties\" is an array",
                "{\"type\":\"Feature\",\"id\":true}|24|\"id\" is true",
                "{\"type\":\"Point\",\"coordinates\":[1,2],\"properties\":{\"a\":1}}|1|members of a feature",
                "{\"type\":\"Point\",\"type\":\"Point\"}|17|\"type\" stands twice",
                "{\"type\":\"Point\" \"coordinates\":[1,2]}|17|this is not JSON: unexpected character",
                "{\"type\":\"Point\",\"coordinates\":[1,2]}}|37|this is not JSON: unexpected close marker",
                "{'type':\"Point\"}|2|this is not JSON",
            })
    void refusalsSayWhereAndWhatWasWanted(String json, int column, String says) throws IOException {
        UnusableInput refusal = refusal(json);

        assertThat(refusal).hasMessageContaining(says);
        assertThat(refusal.faults().get(0).where().line()).isEqualTo(1);
        assertThat(refusal.faults().get(0).where().column()).isEqualTo(column);
    }

    @Test
    void aFaultInACollectionNamesItsFeature() throws IOException {
        UnusableInput refusal = refusal("""
                {"type":"FeatureCollection","features":[
                {"type":"Feature","geometry":null,"properties":{}},
                {"type":"Feature","properties":{},
                 "geometry":{"type":"polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}}]}""");

        assertThat(refusal)
                .hasMessage("x.geojson:4:21: feature 2: \"polygon\" is not a GeoJSON geometry type;"
                        + " did you mean \"Polygon\"? Capitals matter");
    }

    @Test
    void deepNestingIsRefusedNotFollowed() throws IOException {
        assertThat(refusal("{\"type\":\"Point\",\"coordinates\":" + "[".repeat(100_000)))
                .hasMessageContaining("beyond what is read")
                .hasMessageContaining("depth");
        assertThat(refusal("{\"type\":\"Feature\",\"properties\":{\"a\":" + "{\"b\":".repeat(100_000)))
                .hasMessageContaining("beyond what is read");
    }

    @Test
    void aNumberOfAThousandDigitsAndMoreIsRefused() throws IOException {
        assertThat(refusal("{\"type\":\"Point\",\"coordinates\":[" + "1".repeat(5_000) + ",2]}"))
                .hasMessageContaining("beyond what is read");
    }

    @Test
    void anObjectWithAbsurdlyManyMembersIsRefused() throws IOException {
        StringBuilder json = new StringBuilder("{\"type\":\"Feature\",\"properties\":{");
        for (int i = 0; i < 10_001; i++) {
            json.append("\"p").append(i).append("\":0,");
        }
        assertThat(refusal(json + "\"z\":0}}")).hasMessageContaining("more than 10000 members");
    }

    @Test
    void bytesThatAreNotUtf8AreRefusedWhereTheyStand() throws IOException {
        byte[] json = "{\"type\":\"Feature\",\n\"id\":\"Caf#\"}".getBytes(StandardCharsets.UTF_8);
        json[json.length - 3] = (byte) 0xE9;
        Path file = write(json);

        assertThatThrownBy(() -> GeoJsonReader.read(file, "x.geojson"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("x.geojson:2:")
                .hasMessageContaining("not UTF-8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\t", "\uFEFF", "\u001E\n"})
    void aFileWithNothingInItIsRefused(String nothing) throws IOException {
        assertThat(refusal(nothing)).hasMessageContaining("the file is empty");
    }

    @Test
    void aMissingFileAndAFolderAreRefused() {
        assertThatThrownBy(() -> GeoJsonReader.read(folder.resolve("none.geojson"), "none.geojson"))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("none.geojson: there is no such file");
        assertThatThrownBy(() -> GeoJsonReader.read(folder, "plans"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("plans: the file cannot be read");
    }
}
