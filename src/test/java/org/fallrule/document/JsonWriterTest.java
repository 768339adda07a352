package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JsonWriterTest {

    @Test
    void mapsListsAndPositionsAreLaidOutForReading() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", "Quillfeather Lane 8");
        tree.put("place", List.of(-79.1, 35.9));
        tree.put("line", List.of(List.of(1, 2), List.of(3, 4)));
        tree.put("flags", List.of(true, false));
        tree.put("none", List.of());

        assertThat(JsonWriter.write(tree)).isEqualTo("""
                        {
                          "name" : "Quillfeather Lane 8",
                          "place" : [-79.1, 35.9],
                          "line" : [
                            [1, 2],
                            [3, 4]
                          ],
                          "flags" : [
                            true,
                            false
                          ],
                          "none" : [ ]
                        }
                        """);
    }

    @Test
    void nothingIsNullInMapsAndInLists() {
        assertThat(compact(Collections.singletonMap("a", null))).isEqualTo("{\"a\":null}");
        assertThat(compact(Map.of("a", Arrays.asList("x", null, 1)))).isEqualTo("{\"a\":[\"x\",null,1]}");
    }

    @Test
    void aNumberThatIsNoneIsNullBecauseJsonHasNoWordForIt() {
        assertThat(compact(Map.of("a", Double.NaN))).isEqualTo("{\"a\":null}");
        assertThat(compact(Map.of("a", List.of(1.5, Double.POSITIVE_INFINITY)))).isEqualTo("{\"a\":[1.5,null]}");
    }

    @Test
    void aPartThatComesAgainIsIndentedByWhereItStands() {
        JsonWriter.Repeated part = new JsonWriter.Repeated(Map.of("a", 1));

        assertThat(JsonWriter.write(Map.of("all", List.of(part, part, Map.of("b", part)))))
                .isEqualTo(JsonWriter.write(Map.of(
                        "all", List.of(Map.of("a", 1), Map.of("a", 1), Map.of("b", Map.of("a", 1))))));
    }

    @Test
    void wholeNumbersStayWhole() {
        assertThat(compact(Map.of("a", Long.MAX_VALUE))).isEqualTo("{\"a\":9223372036854775807}");
        assertThat(compact(Map.of("a", 0.1))).isEqualTo("{\"a\":0.1}");
    }

    @Test
    void hostileTextsComeBackAsTheyWere() throws IOException {
        List<String> hostile = List.of(
                "\"",
                "\\",
                "</script>",
                "\u0000\u0001\u001f",
                "\n\r\t",
                "\u2028\u2029",
                "😀",
                "{\"a\": 1}",
                "null",
                "");
        for (String text : hostile) {
            assertThat(read(JsonWriter.write(Map.of(text, text)))).containsExactly(text, text);
        }
    }

    @Property(tries = 500)
    void anyTextComesBackAsItWas(@ForAll String text) throws IOException {
        assertThat(read(JsonWriter.write(Map.of("a", List.of(text, List.of(text))))))
                .containsExactly("a", text, text);
    }

    /** JSON without the blanks between its parts; for texts that hold none. */
    private static String compact(Map<String, ?> tree) {
        return JsonWriter.write(tree).replaceAll("\\s", "");
    }

    /** Every name and text of a JSON document, in order; throws when it is not JSON. */
    private static List<String> read(String json) throws IOException {
        List<String> texts = new java.util.ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME || token == JsonToken.VALUE_STRING) {
                    texts.add(parser.getText());
                }
            }
        }
        return texts;
    }
}
