package org.fallrule.report.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fallrule.report.Reports;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a desktop GIS makes of the files: GDAL's ogr2ogr reads each and writes what it read, which is held against the file. */
class ReadByGdalTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path place;

    private JsonNode read(Path file, String... options) throws IOException, InterruptedException {
        Path out = place.resolve("read.geojson");
        List<String> command = new ArrayList<>(List.of(
                "ogr2ogr", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=12", out.toString(), file.toString()));
        command.addAll(List.of(options));
        Process gdal = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(gdal.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(gdal.waitFor()).as(said).isZero();
        assertThat(said).doesNotContain("ERROR");
        return JSON.readTree(out.toFile()).get("features");
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "quillfeather-8", "thistledown-3"})
    void theGeoJsonIsReadWithEveryFeatureAttributeAndPlace(String sample) throws IOException, InterruptedException {
        String written = FindingsGeoJson.write(Reports.of(sample));
        Path file = Files.writeString(place.resolve("findings.geojson"), written);
        JsonNode ours = JSON.readTree(written).get("features");

        JsonNode theirs = read(file);

        assertThat(theirs).hasSize(ours.size());
        for (int i = 0; i < ours.size(); i++) {
            JsonNode properties = ours.get(i).get("properties");
            JsonNode seen = theirs.get(i).get("properties");
            properties.fieldNames().forEachRemaining(name -> {
                if (properties.get(name).isTextual()) {
                    assertThat(seen.get(name).asText())
                            .as(name)
                            .isEqualTo(properties.get(name).asText());
                }
            });
            samePlaces(ours.get(i).get("geometry"), theirs.get(i).get("geometry"));
        }
    }

    private static void samePlaces(JsonNode ours, JsonNode theirs) {
        assertThat(numbers(theirs)).hasSameSizeAs(numbers(ours));
        for (int i = 0; i < numbers(ours).size(); i++) {
            assertThat(numbers(theirs).get(i)).isCloseTo(numbers(ours).get(i), within(1e-11));
        }
    }

    private static List<Double> numbers(JsonNode node) {
        List<Double> numbers = new ArrayList<>();
        if (node.isNumber()) {
            numbers.add(node.asDouble());
        }
        node.forEach(each -> numbers.addAll(numbers(each)));
        return numbers;
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "quillfeather-8", "thistledown-3"})
    void theTableIsReadWithEveryCell(String sample) throws IOException, InterruptedException {
        String written = FindingsCsv.write(Reports.of(sample));
        Path file = Files.writeString(place.resolve("findings.csv"), written);
        assertThat(written).startsWith("\uFEFF");
        List<List<String>> ours = Csv.parse(written.substring(1));

        JsonNode theirs = read(file);

        assertThat(theirs).hasSize(ours.size() - 1);
        for (int row = 1; row < ours.size(); row++) {
            for (int column = 0; column < ours.get(0).size(); column++) {
                String name = ours.get(0).get(column);
                JsonNode cell = theirs.get(row - 1).get("properties").get(name);
                assertThat(cell == null || cell.isNull() ? "" : cell.asText())
                        .as(name + " in row " + row)
                        .isEqualTo(ours.get(row).get(column));
            }
        }
    }
}
