package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTest {
    /** A hostile document is meant to be refused within a second; the rest is for a busy machine. */
    private static final Duration PROMPTLY = Duration.ofSeconds(3);

    @TempDir
    Path folder;

    private static Node.Scalar scalar(Node.Mapping mapping, String key) {
        return (Node.Scalar) mapping.get(key).orElseThrow();
    }

    private static void assertRefused(String text, String... parts) {
        assertTimeout(
                PROMPTLY,
                () -> assertThatThrownBy(() -> Yaml.parse(text, "a.yaml"))
                        .isInstanceOf(UnusableInput.class)
                        .hasMessageContainingAll(parts)
                        .message()
                        .startsWith("a.yaml:")
                        .hasSizeLessThan(400));
    }

    @Test
    void everyKeyAndValueKnowsItsLineAndColumn() {
        Node.Mapping outermost = Yaml.parse("a: 1\nb:\n  c: x\n  d: [1, {e: f}]\n", "a.yaml");
        Node.Mapping b = (Node.Mapping) outermost.get("b").orElseThrow();
        Node.Sequence d = (Node.Sequence) b.get("d").orElseThrow();

        assertThat(outermost.placeOf("b")).hasToString("a.yaml:2:1");
        assertThat(scalar(outermost, "a").place()).hasToString("a.yaml:1:4");
        assertThat(b.placeOf("c")).hasToString("a.yaml:3:3");
        assertThat(scalar(b, "c").place()).hasToString("a.yaml:3:6");
        assertThat(d.place()).hasToString("a.yaml:4:6");
        assertThat(d.items().get(0).place()).hasToString("a.yaml:4:7");
        assertThat(((Node.Mapping) d.items().get(1)).placeOf("e")).hasToString("a.yaml:4:11");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1_000 | 1_000",
                "007 | 007",
                "0x1F | 0x1F",
                "1e3 | 1e3",
                "Yes | Yes",
                "True | True",
                "2026-05-04 | 2026-05-04",
                "12:30:45 | 12:30:45",
                "'null' | null",
                "\"5 ft\" | 5 ft",
                "30-12 | 30-12",
            })
    void aValueKeepsTheTextThatWasWritten(String written, String text) {
        assertThat(scalar(Yaml.parse("a: " + written, "a.yaml"), "a").text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ''", " ~", " null", " NULL"})
    void nothingIsBlankHoweverItIsWritten(String nothing) {
        assertThat(scalar(Yaml.parse("a:" + nothing + "\nb: 1", "a.yaml"), "a").blank())
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a remark\n"})
    void anEmptyFileIsAnEmptyMapping(String text) {
        Node.Mapping empty = Yaml.parse(text, "a.yaml");

        assertThat(empty.entries()).isEmpty();
        assertThat(empty.place().file()).isEqualTo("a.yaml");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstKey() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "\uFEFFsite: x\n");

        assertThat(Yaml.read(file, "a.yaml").placeOf("site")).hasToString("a.yaml:1:1");
        assertThat(Yaml.read(file, "a.yaml").entries()).containsOnlyKeys("site");
    }

    @Test
    void lineEndsOfOtherSystemsCountAsLines() {
        assertThat(Yaml.parse("a: 1\r\nb: 2\r\n", "a.yaml").placeOf("b")).hasToString("a.yaml:2:1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a: 1\\nb: 2\\na: 3 | a.yaml:3:1: the key a stands already in line 1; keep one of them",
                "b: {a: 1, a: 2} | a.yaml:1:11: the key a stands already in line 1; keep one of them",
                "- a\\n- b | a.yaml:1:1: found a list, wanted keys with values",
                "hello | a.yaml:1:1: found \"hello\", wanted keys with values",
                "~ | a.yaml:1:1: found nothing, wanted keys with values",
                "a: 1\\n---\\nb: 2 | a.yaml:3:1: a second document starts here; keep one document in a file",
                "a: {b: *x} | a.yaml:1:8: anchors (&) and aliases (*) are not read; write the value out",
                "a:\\n\\tb: 1 | a.yaml:2:1: not readable as YAML: found character '\\t(TAB)' that cannot start any token."
                        + " (Do not use \\t(TAB) for indentation); indent with spaces, not tabs",
                "a: 1\\nb: \"open\\nc: 2 | a.yaml:2:4: not readable as YAML: found unexpected end of stream",
                "a: 1\\nb: [1, 2 | a.yaml:2:4: not readable as YAML: expected ',' or ']', but got <stream end>",
                "a: [1, 2\\nb: 2 | a.yaml:2:2: not readable as YAML: expected ',' or ']', but got :",
                "a: b: c | a.yaml:1:5: not readable as YAML: mapping values are not allowed here",
                "a: 1\\n b: 2 | a.yaml:2:3: not readable as YAML: mapping values are not allowed here",
                "a: 5\\nb: %x | a.yaml:2:4: not readable as YAML: found character '%' that cannot start any token."
                        + " (Do not use % for indentation)",
                "? [a, b]\\n: c | a.yaml:1:4: not readable as YAML: a key must be a single plain value",
                "a: 1\\nb: x\\7y | a.yaml:2:5: the character U+0007 cannot stand in YAML; is this really text?",
                "\\0 | a.yaml:1:1: the character U+0000 cannot stand in YAML; is this really text?",
            })
    void whatCannotBeReadIsRefusedWithItsPlace(String text, String message) {
        assertThatThrownBy(() -> Yaml.parse(text.translateEscapes(), "a.yaml"))
                .isInstanceOf(UnusableInput.class)
                .hasMessage(message);
    }

    @Test
    void anAliasBombDoesNotGoOff() {
        assertRefused("""
                a: &a [x, x, x, x, x, x, x, x, x]
                b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
                c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
                d: [*c, *c, *c, *c, *c, *c, *c, *c, *c]
                """, "a.yaml:1:4: anchors (&) and aliases (*) are not read");
    }

    @Test
    void aTagMakesNothing() {
        assertThat(Yaml.parse("a: !!javax.script.ScriptEngineManager [x]\nb: !!java.net.URL x\n", "a.yaml")
                        .entries()
                        .values())
                .hasExactlyElementsOfTypes(Node.Sequence.class, Node.Scalar.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "- - "})
    void deepNestingIsRefusedWhereItGetsTooDeep(String opening) {
        assertRefused("a:\n " + opening.repeat(100_000), "a.yaml:2:", "nested more than 30 deep; write it flatter");
    }

    @Test
    void nestingThatAPersonMightWriteIsRead() {
        assertThat(Yaml.parse("a: " + "[".repeat(20) + "]".repeat(20), "a.yaml").entries())
                .containsOnlyKeys("a");
    }

    @Test
    void nestedKeysAreRefused() {
        assertRefused("? ".repeat(100_000), "a key must be a single plain value");
    }

    @Test
    void aFileOfTenMegabytesIsRefusedUnread() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "a: b\n".repeat(2_000_000));

        assertTimeout(
                PROMPTLY,
                () -> assertThatThrownBy(() -> Yaml.read(file, "a.yaml"))
                        .hasMessage("a.yaml: the file is larger than 512 kB; is it really YAML?"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "\"", "[", "k: ", "- b\n ", "'", "#", "? x\n ", "!x ", "&x ", "|\n "})
    void theLargestDocumentsAreDoneWithPromptly(String part) {
        String text = "a: " + part.repeat((500 << 10) / part.length());

        assertTimeout(PROMPTLY, () -> {
            try {
                assertThat(Yaml.parse(text, "a.yaml").entries()).containsKey("a");
            } catch (UnusableInput e) {
                assertThat(e).hasMessageStartingWith("a.yaml:1:");
            }
        });
    }

    @Test
    void bytesThatAreNoTextAreUnusableInput() throws IOException {
        Random random = new Random(8259);
        for (int i = 0; i < 300; i++) {
            byte[] garbage = new byte[random.nextInt(400) + 20];
            random.nextBytes(garbage);
            Path file = Files.write(folder.resolve("a.yaml"), garbage);

            assertThatThrownBy(() -> Yaml.read(file, "a.yaml"))
                    .isInstanceOf(UnusableInput.class)
                    .hasMessageStartingWith("a.yaml: cannot be read as UTF-8 text");
        }
    }

    @Test
    void lettersThatMakeNoSenseAreUnusableInputOrADocument() {
        String letters = "ab:-?[]{},#&*!|>'\"%@` \n\t~0é";
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int j = random.nextInt(30); j >= 0; j--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                assertThat(Yaml.parse(text.toString(), "a.yaml").place().line()).isPositive();
            } catch (UnusableInput e) {
                assertThat(e.faults()).allSatisfy(fault -> {
                    assertThat(fault.where().line()).as(text.toString()).isPositive();
                    assertThat(fault.says()).isNotEmpty().doesNotContain("org.yaml");
                });
            }
        }
    }

    @Test
    void aFileThatIsNotThereOrNotUtf8SaysSo() throws IOException {
        Path latin = Files.write(folder.resolve("a.yaml"), "a: é".getBytes(StandardCharsets.ISO_8859_1));
        Path utf16 = Files.write(folder.resolve("b.yaml"), "a: 1".getBytes(StandardCharsets.UTF_16));

        assertThatThrownBy(() -> Yaml.read(folder.resolve("none.yaml"), "none.yaml"))
                .hasMessageStartingWith("none.yaml: cannot be read as UTF-8 text (")
                .hasMessageEndingWith("; check that it is there and is text");
        assertThatThrownBy(() -> Yaml.read(latin, "a.yaml")).hasMessageStartingWith("a.yaml: cannot be read as UTF-8");
        assertThatThrownBy(() -> Yaml.read(utf16, "b.yaml")).hasMessageStartingWith("b.yaml: cannot be read as UTF-8");
        assertThatThrownBy(() -> Yaml.read(folder, "rules")).isInstanceOf(UnusableInput.class);
    }
}
