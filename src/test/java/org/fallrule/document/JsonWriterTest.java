package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
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
    void membersThatComeAgainStandAnywhereInAnObject() {
        JsonWriter.Repeated some = new JsonWriter.Repeated(ordered("a", 1, "b", ordered("c", 2)));
        JsonWriter.Part first = json -> {
            json.putAll(some);
            json.put("z", 0);
        };
        JsonWriter.Part last = json -> {
            json.put("z", 0);
            json.putAll(some);
        };
        JsonWriter.Part within = json -> json.putPart("in", last);

        assertThat(JsonWriter.write(Map.of("all", List.of(first, last, within, first))))
                .isEqualTo(JsonWriter.write(Map.of(
                        "all",
                        List.of(
                                ordered("a", 1, "b", ordered("c", 2), "z", 0),
                                ordered("z", 0, "a", 1, "b", ordered("c", 2)),
                                Map.of("in", ordered("z", 0, "a", 1, "b", ordered("c", 2))),
                                ordered("a", 1, "b", ordered("c", 2), "z", 0)))));
    }

    @Test
    void noMembersThatComeAgainAreNone() {
        JsonWriter.Repeated none = new JsonWriter.Repeated(Map.of());
        JsonWriter.Part part = json -> {
            json.putAll(none);
            json.put("a", 1);
            json.putAll(none);
        };

        assertThat(JsonWriter.compact(ordered("x", part, "y", part, "z", none)))
                .isEqualTo("{\"x\":{\"a\":1},\"y\":{\"a\":1},\"z\":{}}");
    }

    @Test
    void aPartThatPutsItsMembersIsWrittenAsAMapOfThem() {
        JsonWriter.Part part = json -> {
            json.put("text", "x");
            json.put("none", null);
            json.put("list", List.of("x", 1.5));
            json.putPart("part", inner -> inner.put("n", 7L));
        };
        Map<String, Object> map =
                ordered("text", "x", "none", null, "list", List.of("x", 1.5), "part", Map.of("n", 7L));

        assertThat(JsonWriter.write(ordered("a", part, "b", List.of(part))))
                .isEqualTo(JsonWriter.write(ordered("a", map, "b", List.of(map))));
        assertThat(JsonWriter.compact(Map.of("a", part))).isEqualTo(JsonWriter.compact(Map.of("a", map)));
    }

    @Test
    void whatIsEmptyStandsOnOneLine() {
        JsonWriter.Part none = json -> {};

        assertThat(JsonWriter.write(ordered("list", List.of(), "object", Map.of(), "part", none)))
                .isEqualTo("""
                        {
                          "list" : [ ],
                          "object" : { },
                          "part" : { }
                        }
                        """);
        assertThat(JsonWriter.compact(ordered("list", List.of(), "object", Map.of(), "part", none)))
                .isEqualTo("{\"list\":[],\"object\":{},\"part\":{}}");
        assertThat(JsonWriter.compact(Map.of())).isEqualTo("{}");
    }

    @Test
    void aTextThatEndsAsAnObjectBeginsIsFollowedByAComma() {
        assertThat(compact(ordered("{", "{", "[", "["))).isEqualTo("{\"{\":\"{\",\"[\":\"[\"}");
    }

    @Test
    void aPositionIsWrittenAsTheListOfItsNumbers() {
        for (double second : new double[] {35.9, 0, -1e-9, 1e300, Double.NaN, Double.NEGATIVE_INFINITY}) {
            assertThat(JsonWriter.write(Map.of("at", List.of(new JsonWriter.Position(-79.1, second)))))
                    .isEqualTo(JsonWriter.write(Map.of("at", List.of(List.of(-79.1, second)))));
        }
    }

    /** Held against the library: {@link Double#toString(double)} of Java 17 has a digit too many for some (JDK-4511638). */
    @Property(tries = 2000)
    void aNumberIsInTheFewestDigitsThatTellIt(@ForAll double number) {
        assertThat(compact(Map.of("a", number))).isEqualTo("{\"a\":" + NumberOutput.toString(number, true) + "}");
    }

    @Property(tries = 2000)
    void soIsOneOfNineDecimals(@ForAll @LongRange(min = -2_000_000_000_000_000L, max = 2_000_000_000_000_000L) long n) {
        for (double number :
                new double[] {n / 1e9, n / 1e6 / 1e9, n / 1e9 + 1e-12, Math.nextUp(n / 1e9), n % 1000 / 1e3}) {
            assertThat(compact(Map.of("a", number))).isEqualTo("{\"a\":" + NumberOutput.toString(number, true) + "}");
        }
    }

    @Test
    void numbersAtTheEdgesOfPlainDecimalsAreWritten() {
        assertThat(compact(Map.of("a", List.of(0.0, -0.0, 0.001, 0.000999999, 999999.999999999, 1e6, 1e7, 5.0, -0.5))))
                .isEqualTo("{\"a\":[0.0,-0.0,0.001,9.99999E-4,999999.999999999,1000000.0,1.0E7,5.0,-0.5]}");
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

    @Test
    void signsBeyondAsciiAreTheirOwnInUtf8() {
        assertThat(JsonWriter.bytes(Map.of("\u00b1", "plain, then \u00b10.1 ft, \"\u201c\", \ud83d\ude00\u007f")))
                .isEqualTo("{\n  \"\u00b1\" : \"plain, then \u00b10.1 ft, \\\"\u201c\\\", \ud83d\ude00\u007f\"\n}\n"
                        .getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void halfOfASurrogatePairIsAQuestionMarkInBytes() {
        assertThat(new String(JsonWriter.bytes(Map.of("a", "x\ud83d", "b\ude00", List.of())), StandardCharsets.UTF_8))
                .contains("\"x?\"", "\"b?\" : [ ]");
    }

    @Property(tries = 500)
    void anyTextComesBackAsItWas(@ForAll String text) throws IOException {
        assertThat(read(JsonWriter.write(Map.of("a", List.of(text, List.of(text))))))
                .containsExactly("a", text, text);
    }

    private static Map<String, Object> ordered(@Nullable Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put(String.valueOf(namesAndValues[i]), namesAndValues[i + 1]);
        }
        return map;
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
