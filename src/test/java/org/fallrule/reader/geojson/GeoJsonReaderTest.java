package org.fallrule.reader.geojson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.fallrule.document.Fault;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.io.WKTWriter;

class GeoJsonReaderTest {

    @TempDir
    Path folder;

    private RawLayer read(String json) throws IOException {
        return GeoJsonReader.read(Files.writeString(folder.resolve("lot.geojson"), json), "lot.geojson");
    }

    private static String wkt(RawFeature feature) {
        return new WKTWriter(3).write(feature.geometry().orElseThrow());
    }

    private String wktOf(String geometry) throws IOException {
        return wkt(read(geometry).features().get(0));
    }

    @Test
    void aFeatureCollectionGivesItsFeaturesInOrderWithLabelsFromOne() throws IOException {
        RawLayer layer = read("""
                {"type": "FeatureCollection", "features": [
                  {"type": "Feature", "geometry": {"type": "Point", "coordinates": [1, 2]}, "properties": {"name": "P-1"}},
                  {"type": "Feature", "geometry": null, "properties": null}
                ]}""");

        assertThat(layer.file()).isEqualTo("lot.geojson");
        assertThat(layer.crs()).isEmpty();
        assertThat(layer.notes()).isEmpty();
        assertThat(layer.features()).extracting(RawFeature::label).containsExactly("feature 1", "feature 2");
        assertThat(wkt(layer.features().get(0))).isEqualTo("POINT (1 2)");
        assertThat(layer.features().get(1).geometry()).isEmpty();
    }

    @Test
    void anEmptyCollectionIsALayerWithoutFeatures() throws IOException {
        assertThat(read("{\"type\": \"FeatureCollection\", \"features\": []}").features())
                .isEmpty();
    }

    @Test
    void membersMayStandInAnyOrder() throws IOException {
        RawLayer layer = read("""
                {"features": [{"properties": {"a": 1}, "geometry": {"coordinates": [[0, 0], [5, 5]], "type": "LineString"},
                 "type": "Feature"}], "type": "FeatureCollection"}""");

        assertThat(wkt(layer.features().get(0))).isEqualTo("LINESTRING (0 0, 5 5)");
    }

    @Test
    void everyGeometryTypeIsRead() throws IOException {
        assertThat(wktOf("{\"type\":\"MultiPoint\",\"coordinates\":[[1,2],[3,4]]}"))
                .isEqualTo("MULTIPOINT ((1 2), (3 4))");
        assertThat(wktOf("{\"type\":\"MultiLineString\",\"coordinates\":[[[1,2],[3,4]],[[5,6],[7,8]]]}"))
                .isEqualTo("MULTILINESTRING ((1 2, 3 4), (5 6, 7 8))");
        assertThat(wktOf(
                        "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[9,0],[9,9],[0,0]],[[5,1],[6,1],[6,2],[5,1]]]}"))
                .isEqualTo("POLYGON ((0 0, 9 0, 9 9, 0 0), (5 1, 6 1, 6 2, 5 1))");
        assertThat(wktOf("{\"type\":\"MultiPolygon\",\"coordinates\":[[[[0,0],[9,0],[9,9],[0,0]]],[]]}"))
                .isEqualTo("MULTIPOLYGON (((0 0, 9 0, 9 9, 0 0)), EMPTY)");
        assertThat(wktOf("""
                        {"type":"GeometryCollection","geometries":[{"type":"Point","coordinates":[1,2]},
                         {"type":"GeometryCollection","geometries":[]}]}""")).isEqualTo("GEOMETRYCOLLECTION (POINT (1 2), GEOMETRYCOLLECTION EMPTY)");
        assertThat(wktOf("{\"type\":\"Point\",\"coordinates\":[]}")).isEqualTo("POINT EMPTY");
    }

    @Test
    void theThirdNumberOfAPositionIsZ() throws IOException {
        assertThat(wktOf("{\"type\":\"LineString\",\"coordinates\":[[1,2,312.25],[3,4,-1.5e1]]}"))
                .isEqualTo("LINESTRING Z(1 2 312.25, 3 4 -15)");
    }

    @Test
    void numbersBeyondZAreIgnoredWithOneNote() throws IOException {
        RawLayer layer = read("{\"type\":\"MultiPoint\",\n\"coordinates\":[[1,2,3,77],[4,5,6,78,79]]}");

        assertThat(wkt(layer.features().get(0))).isEqualTo("MULTIPOINT Z((1 2 3), (4 5 6))");
        assertThat(layer.notes())
                .extracting(Fault::toString)
                .singleElement()
                .asString()
                .startsWith("lot.geojson:2:")
                .contains("2 position(s) have more than 3 numbers");
    }

    @Test
    void propertiesKeepTheirKind() throws IOException {
        RawFeature feature = read("""
                        {"type": "Feature", "geometry": null, "properties":
                         {"name": "Heron \\u00e9", "count": 12, "depth": 1.50, "far": 1e3, "wide": 12345678901234567890,
                          "built": true, "none": null, "tags": {"a": [1, 2.50, "x\\"y"], "b": null}, "list": []}}""").features().get(0);

        assertThat(feature.columns())
                .containsExactly(
                        Map.entry("name", "Heron é"),
                        Map.entry("count", 12L),
                        Map.entry("depth", 1.5),
                        Map.entry("far", 1000.0),
                        Map.entry("wide", 1.2345678901234567E19),
                        Map.entry("built", true),
                        Map.entry("tags", "{\"a\":[1,2.50,\"x\\\"y\"],\"b\":null}"),
                        Map.entry("list", "[]"));
    }

    @Test
    void theFeatureIdIsAColumnUnlessAPropertyHasThatName() throws IOException {
        assertThat(read("{\"type\":\"Feature\",\"id\":7,\"geometry\":null,\"properties\":{\"a\":1}}")
                        .features()
                        .get(0)
                        .columns())
                .containsExactly(Map.entry("id", 7L), Map.entry("a", 1L));
        assertThat(read("{\"type\":\"Feature\",\"id\":7,\"geometry\":null,\"properties\":{\"id\":\"x\"}}")
                        .features()
                        .get(0)
                        .columns())
                .containsExactly(Map.entry("id", "x"));
        assertThat(read("{\"type\":\"Feature\",\"id\":7,\"geometry\":null,\"properties\":{\"id\":null}}")
                        .features()
                        .get(0)
                        .columns())
                .isEmpty();
    }

    @Test
    void aPropertyNamedTwiceIsNotedAndTheLastValueCounts() throws IOException {
        RawLayer layer = read("{\"type\":\"Feature\",\"geometry\":null,\n\"properties\":{\"a\":1,\"a\":2}}");

        assertThat(layer.features().get(0).columns()).containsExactly(Map.entry("a", 2L));
        assertThat(layer.notes()).singleElement().satisfies(note -> {
            assertThat(note.where().line()).isEqualTo(2);
            assertThat(note.where().field()).isEqualTo("a");
            assertThat(note.says()).contains("named twice");
        });
    }

    @Test
    void anAttributeOutsidePropertiesIsNoted() throws IOException {
        RawLayer layer = read("""
                {"type":"FeatureCollection","features":[{"type":"Feature","depth":4,"geometry":null,"properties":{}}]}""");

        assertThat(layer.notes()).singleElement().asString().contains("depth").contains("are ignored");
    }

    @Test
    void aFeatureWithoutAGeometryMemberIsNoted() throws IOException {
        RawLayer layer =
                read("{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{}}]}");

        assertThat(layer.features()).hasSize(1);
        assertThat(layer.notes())
                .singleElement()
                .asString()
                .contains("feature 1")
                .contains("no \"geometry\" member");
    }

    @Test
    void lineByLineAndTextSequencesAndAByteOrderMarkAreRead() throws IOException {
        String one = "{\"type\":\"Feature\",\"geometry\":null,\"properties\":{\"a\":1}}";
        assertThat(read(one + "\n" + one + "\r\n" + one + "\n").features()).hasSize(3);
        assertThat(read("\u001E" + one + "\n\u001E" + one + "\n").features())
                .extracting(RawFeature::label)
                .containsExactly("feature 1", "feature 2");
        assertThat(read("\uFEFF" + one).features()).hasSize(1);
    }

    @Test
    void aMillionCharactersOutsideTheBasicPlaneAcrossBufferEndsAreReadWhole() throws IOException {
        String text = "\uD83D\uDCA7a".repeat(300_000);
        assertThat(read("{\"type\":\"Feature\",\"geometry\":null,\"properties\":{\"t\":\"" + text + "\"}}")
                        .features()
                        .get(0)
                        .columns())
                .containsExactly(Map.entry("t", text));
    }
}
