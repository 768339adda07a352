package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.JsonStream.Token;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsonStreamTest {

    @TempDir
    Path folder;

    private JsonStream open(String json) throws IOException {
        return JsonStream.open(Files.writeString(folder.resolve("a.json"), json), "a.json");
    }

    @Test
    void everyTokenComesWithItsPlace() throws IOException {
        List<String> seen = new ArrayList<>();
        try (JsonStream json = open("{\"a\": [1,\n  \"é\", true], \"b\": null}")) {
            while (json.next() != Token.END) {
                seen.add(json.here() + " " + json.found());
            }
        }

        assertThat(seen)
                .containsExactly(
                        "a.json:1:1 an object",
                        "a.json:1:2 the member \"a\"",
                        "a.json:1:7 an array",
                        "a.json:1:8 the number 1",
                        "a.json:2:3 the text \"é\"",
                        "a.json:2:8 true",
                        "a.json:2:12 the end of an array",
                        "a.json:2:15 the member \"b\"",
                        "a.json:2:20 null",
                        "a.json:2:24 the end of an object");
    }

    @Test
    void aNameIsRepeatedOnlyWithinItsOwnObject() throws IOException {
        List<Boolean> repeated = new ArrayList<>();
        try (JsonStream json = open("{\"a\":{\"a\":1,\"b\":2},\"b\":[{\"a\":1},{\"a\":1}],\"a\":0}")) {
            while (json.next() != Token.END) {
                if (json.token() == Token.NAME) {
                    repeated.add(json.repeatedName());
                }
            }
        }

        assertThat(repeated).containsExactly(false, false, false, false, false, false, true);
    }

    @Test
    void skippingPassesOverAWholeValueAndNoMore() throws IOException {
        try (JsonStream json = open("[[1,{\"a\":[2]}],7,8]")) {
            json.next();
            json.next();
            json.skip();
            assertThat(json.next()).isEqualTo(Token.NUMBER);
            json.skip();
            assertThat(json.number()).isEqualTo(7);
            json.next();
            assertThat(json.longOrDouble()).isEqualTo(8L);
        }
    }

    @Test
    void numbersAreWholeOnlyWhenWrittenSoAndFitting() throws IOException {
        List<Number> numbers = new ArrayList<>();
        try (JsonStream json = open("9223372036854775807 9223372036854775808 1.0 1e2 -0")) {
            while (json.next() != Token.END) {
                numbers.add(json.longOrDouble());
            }
        }

        assertThat(numbers).containsExactly(Long.MAX_VALUE, 9.223372036854776E18, 1.0, 100.0, 0L);
    }

    @Test
    void aValueOfAnotherKindThanAskedForIsAFault() throws IOException {
        try (JsonStream json = open("\n \"deep\"")) {
            json.next();
            assertThatThrownBy(json::number)
                    .isInstanceOf(UnusableInput.class)
                    .hasMessage("a.json:2:2: found the text \"deep\"; wanted a number");
            assertThatThrownBy(json::bool).hasMessageContaining("wanted true or false");
        }
    }

    @Test
    void nestingUpToTheLimitIsReadAndBeyondItRefused() throws IOException {
        int limit = JsonStream.MAX_DEPTH;
        try (JsonStream json = open("[".repeat(limit) + "]".repeat(limit))) {
            json.next();
            assertThat(json.json()).isEqualTo("[".repeat(limit) + "]".repeat(limit));
        }
        try (JsonStream json = open("[".repeat(limit + 1) + "]".repeat(limit + 1))) {
            json.next();
            assertThatThrownBy(json::skip).isInstanceOf(UnusableInput.class).hasMessageContaining("depth");
        }
    }

    @Test
    void aValueTooLongToKeepAsTextIsRefused() throws IOException {
        try (JsonStream json = open("[" + "1234567,".repeat(200_000) + "1]")) {
            json.next();
            assertThatThrownBy(json::json)
                    .isInstanceOf(UnusableInput.class)
                    .hasMessageContaining("longer than 1048576");
        }
    }
}
