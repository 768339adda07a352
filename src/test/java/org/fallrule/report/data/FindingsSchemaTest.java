package org.fallrule.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.report.Reports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The findings file keeps to its published schema, which is closed: a key that the schema does not know is a fault. */
class FindingsSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonSchema SCHEMA = schema();

    private static JsonSchema schema() {
        try {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(Files.readString(Path.of("docs/schema/findings.schema.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode findings(String sample) throws IOException {
        return JSON.readTree(FindingsJson.write(Reports.of(sample)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void everySampleKeepsToIt(String sample) throws IOException {
        assertThat(SCHEMA.validate(findings(sample))).isEmpty();
    }

    @Test
    void aKeyThatItDoesNotKnowIsAFault() throws IOException {
        JsonNode file = findings("thistledown-3");
        ((ObjectNode) file.get("findings").get(0)).put("colour", "red");
        assertThat(SCHEMA.validate(file)).hasSize(1);
    }

    @Test
    void anOutcomeThatItDoesNotKnowIsAFault() throws IOException {
        JsonNode file = findings("thistledown-3");
        ((ObjectNode) file.get("findings").get(0)).put("outcome", "passes");
        assertThat(SCHEMA.validate(file)).hasSize(1);
    }
}
