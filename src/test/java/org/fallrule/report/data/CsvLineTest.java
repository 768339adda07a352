package org.fallrule.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A table goes into spreadsheets, which take some cells for formulas; names in it come from anybody's plan. */
class CsvLineTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "\t=1+1",
                "\r=1+1",
                "\n=1+1",
                "  =1+1",
                "\u200B=1+1",
                "\uFEFF=1+1",
                "\uFF1D1+1",
                "=HYPERLINK(\"http://example.org\",\"a\")",
                "-2 + cmd",
                "--1",
                "-",
                "=\"a\";=1"
            })
    void aFormulaIsAText(String cell) {
        List<List<String>> read = Csv.parse(CsvLine.of(List.of("before", cell)));

        assertThat(read).hasSize(1);
        assertThat(read.get(0)).hasSize(2);
        assertThat(read.get(0).get(1)).startsWith("'");
    }

    /** OWASP, CSV Injection: the separators of other languages and quotes can begin a cell too (from memory). */
    @ParameterizedTest
    @ValueSource(strings = {"a;=1+1", "a; =1+1", "a;\"=1+1\"", "a;\"\"@x", "OF-1;+1", "a;b;-1-1", "a;\t=1", "=1;=2"})
    void norDoesOneBeginWhereASemicolonPartsCells(String cell) {
        String line = CsvLine.of(List.of("before", cell, "after"));

        for (String part : line.split(";", -1)) {
            assertThat(part.replace("\"", "").strip()).doesNotStartWith("=").doesNotMatch("(?s)[+@-].*");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"-0.25 ft", "-3", "12.5 %", "-1 ft/s", "P-1", "a-b", "2 ft; -1 ft", "e-mail@example", "1+1=2"})
    void numbersAndWordsStayAsTheyAre(String cell) {
        assertThat(Csv.parse(CsvLine.of(List.of(cell))).get(0)).containsExactly(cell);
    }

    @Test
    void aRowIsOneLine() {
        assertThat(CsvLine.of(List.of("a\r\nb", "c\"d", "e,f"))).isEqualTo("a  b,\"c\"\"d\",\"e,f\"\r\n");
    }
}
