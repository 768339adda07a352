package org.fallrule.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code TREE 24"} stands on a training page of surveyors; the other forms are common practice without a source. */
class SizedCodeTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "TREE 24\", TREE, 24 in, 24 in",
                "TREE24, TREE, 24, 24",
                "TREE-24, TREE, 24, 24",
                "tree_24in, tree, 24 in, 24 in",
                "TREE 24'', TREE, 24 in, 24 in",
                "TREE 24\u201d OAK, TREE, 24 in, 24 in",
                "TREE OAK 24\", TREE OAK, 24 in, 24 in",
                "24\" OAK, OAK, 24 in, 24 in",
                "24 IN. OAK, OAK, 24 in, 24 in",
                "12INLET, INLET, 12, 12",
                "TREE 30', TREE, 30 ft, 30 ft",
                "CB 12, CB, 12, 12",
                "CB12X18, CB, 12, 18",
                "CB 12\"x18\", CB, 12 in, 18 in",
                "MH-48, MH, 48, 48",
                "WV 1-1/2\", WV, 1 1/2 in, 1 1/2 in",
                "PIPE 100 mm, PIPE, 100 mm, 100 mm",
                "DS4, DS, 4, 4",
            })
    void aCodeAndItsSizeAreTakenApart(String text, String code, String one, String other) {
        SizedCode read = SizedCode.of(text).orElseThrow();

        assertThat(read.code()).isEqualTo(code);
        assertThat(read.written(0)).isEqualTo(one);
        assertThat(read.written(1)).isEqualTo(other);
    }

    @ParameterizedTest
    @CsvSource({"GS", "24", "TREE x", "P-2-B", "C-STRM-PIPE", "T12T4", "''", "TREE 24 18", "TREE 123456", "2026-05-04"})
    void anythingElseHasNoSize(String text) {
        assertThat(SizedCode.of(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"25000", "100000"})
    void aLongTextIsNoneEither(int length) {
        assertThat(SizedCode.of("A ".repeat(length) + "1")).isEmpty();
    }
}
