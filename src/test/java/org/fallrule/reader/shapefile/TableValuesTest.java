package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.fallrule.reader.layer.RawFeature;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableValuesTest {
    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void startInTheFolder() {
        made = new Made(folder);
    }

    @ParameterizedTest(name = "\"{0}\" with two decimals is the number {1}")
    @CsvSource({"12.50,12.5", "-.5,-0.5", "7,7.0", "7.,7.0", "+1e3,1000.0", "1E-2,0.01", "'  3.25',3.25"})
    void aNumberWithDecimalsIsADouble(String text, double value) {
        assertThat(value(Table.of("depth", 'N', 8, 2).row(text))).isEqualTo(value);
        assertThat(value(Table.of("depth", 'F', 8, 0).row(text))).isEqualTo(value);
        assertThat(made.notes()).isEmpty();
    }

    @ParameterizedTest(name = "\"{0}\" without decimals is the whole number {1}")
    @CsvSource({"12,12", "-7,-7", "+5,5", "'    007',7", "9223372036854775807,9223372036854775807"})
    void aNumberWithoutDecimalsIsALong(String text, long value) {
        assertThat(value(Table.of("count", 'N', 19, 0).row(text))).isEqualTo(value);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aFractionInAColumnOfWholeNumbersIsKept() {
        assertThat(value(Table.of("count", 'N', 8, 0).row("12.75"))).isEqualTo(12.75);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aWholeNumberOfMoreThan64BitsIsReadWithLessDigitsAndNoted() {
        assertThat(value(Table.of("count", 'N', 20, 0).row("9223372036854775808")))
                .isEqualTo(9.223372036854776e18);
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: feature 1: count: found 9223372036854775808, which is too large for a "
                        + "whole number of 64 bits; read with 15 digits; shorten it, or make the column a text");
    }

    @ParameterizedTest(name = "\"{0}\" is no value")
    @ValueSource(strings = {"", "********", "*", "\0\0\0\0\0\0\0\0"})
    void blanksAndStarsAreNoNumber(String text) {
        assertThat(columnsOf(Table.of("depth", 'N', 8, 2).row(text))).isEmpty();
        assertThat(columnsOf(Table.of("depth", 'N', 8, 0).row(text))).isEmpty();
        assertThat(columnsOf(Table.of("depth", 'F', 8, 2).row(text))).isEmpty();
        assertThat(made.notes()).isEmpty();
    }

    @ParameterizedTest(name = "\"{0}\" is left out and noted")
    @ValueSource(strings = {"12,5", "3 ft", "NaN", "Infinity", "0x1p3", "1d", "1e999", "1 2", "--1", ".", "e5", "1*"})
    void whatIsNoNumberIsLeftOutAndNoted(String text) {
        assertThat(columnsOf(Table.of("depth", 'N', 8, 2).row("1").row(text))).isEmpty();
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: feature 2: depth: found \"" + text
                        + "\"; wanted a number such as 12.5; it was left out; type it again");
    }

    @Test
    void aDateIsADayOfTheCalendar() {
        assertThat(value(Table.of("seen", 'D', 8, 0).row("20240229"))).isEqualTo(LocalDate.of(2024, 2, 29));
        assertThat(columnsOf(Table.of("seen", 'D', 8, 0).row("00000000"))).isEmpty();
        assertThat(columnsOf(Table.of("seen", 'D', 8, 0).row(""))).isEmpty();
        assertThat(made.notes()).isEmpty();
    }

    @ParameterizedTest(name = "\"{0}\" is no date")
    @ValueSource(strings = {"20230229", "20231301", "2023", "2023-1-1", "31122023"})
    void whatIsNoDayIsLeftOutAndNoted(String text) {
        assertThat(columnsOf(Table.of("seen", 'D', 8, 0).row(text))).isEmpty();
        assertThat(made.notes())
                .containsExactly(
                        "in/marks.dbf: feature 1: seen: found \"" + text + "\"; wanted a day of the calendar as "
                                + "eight digits, such as 20260131; it was left out; type it again");
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"T,true", "t,true", "Y,true", "y,true", "F,false", "f,false", "N,false", "n,false"})
    void aLogicalValueIsTrueOrFalse(String text, boolean value) {
        assertThat(value(Table.of("ok", 'L', 1, 0).row(text))).isEqualTo(value);
    }

    @Test
    void aLogicalValueNotGivenIsLeftOutAndAnyOtherNoted() {
        assertThat(columnsOf(Table.of("ok", 'L', 1, 0).row("?"))).isEmpty();
        assertThat(columnsOf(Table.of("ok", 'L', 1, 0).row(" "))).isEmpty();
        assertThat(made.notes()).isEmpty();
        assertThat(columnsOf(Table.of("ok", 'L', 1, 0).row("X"))).isEmpty();
        assertThat(made.notes())
                .containsExactly(
                        "in/marks.dbf: feature 1: ok: found \"X\"; wanted T or F; it was left out; choose one of them");
    }

    @Test
    void aTextKeepsItsLeadingBlanksAndLosesTheTrailing() {
        assertThat(value(Table.of("mark", 'C', 8, 0).row("  A 1   "))).isEqualTo("  A 1");
        assertThat(columnsOf(Table.of("mark", 'C', 8, 0).row(""))).isEmpty();
        assertThat(columnsOf(Table.of("mark", 'C', 8, 0).row("\0\0\0\0"))).isEmpty();
        assertThat(value(Table.of("mark", 'C', 8, 0).row("A 1\0\0\0\0\0"))).isEqualTo("A 1");
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aTextThatGoesOnBehindANulIsNoted() {
        assertThat(value(Table.of("mark", 'C', 8, 0).row("A\0lost"))).isEqualTo("A");
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: feature 1: mark: its text goes on behind a NUL byte; "
                        + "what stands before it was read; clear and retype the text");
    }

    @ParameterizedTest(name = "a .cpg of {0} reads the byte E4 as {1}")
    @CsvSource({
        "1252,ä",
        "ANSI 1252,ä",
        "CP1252,ä",
        "windows-1252,ä",
        "88591,ä",
        "ISO-8859-1,ä",
        "ISO 8859-5,ф",
        "1251,д",
        "OEM 850,õ",
        "437,Σ"
    })
    void theCpgNamesTheEncodingWhateverTheLanguageByteSays(String name, String letter) {
        made.table(1, Table.of("mark", 'C', 8, 0).language(0x64).row("\u00E4"))
                .with("marks.cpg", name.getBytes(StandardCharsets.US_ASCII));

        assertThat(made.read().features().get(0).columns()).containsEntry("mark", letter);
        assertThat(made.notes()).isEmpty();
    }

    @ParameterizedTest(name = "language byte {0} reads the byte E4 as {1}")
    @CsvSource({"1,Σ", "2,õ", "3,ä", "87,ä", "200,ä", "201,д", "101,ф"})
    void theLanguageByteNamesTheEncodingWhenThereIsNoCpg(int language, String letter) {
        assertThat(value(Table.of("mark", 'C', 8, 0).language(language).row("\u00E4")))
                .isEqualTo(letter);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void withoutCpgAndLanguageByteTheTextIsTakenForWindows1252AndNoted() {
        assertThat(value(Table.of("mark", 'C', 8, 0).language(0).row("\u0080\u00E4")))
                .isEqualTo("€ä");
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: says nothing of its encoding; its texts were read as windows-1252; "
                        + "put the encoding's name, such as UTF-8, into a .cpg beside it");
    }

    @ParameterizedTest(name = "the .cpg name \"{0}\" is noted and the language byte used")
    @ValueSource(strings = {"klingon", "UTF-16", "99999", "", "../etc", "8859-99"})
    void anUnknownCpgIsNotedAndTheLanguageByteUsed(String name) {
        made.table(1, Table.of("mark", 'C', 8, 0).language(3).row("\u00E4"))
                .with("marks.cpg", name.getBytes(StandardCharsets.US_ASCII));

        assertThat(made.read().features().get(0).columns()).containsEntry("mark", "ä");
        assertThat(made.notes())
                .containsExactly(
                        "in/marks.cpg: names the encoding \"" + name + "\", which is not known; wanted a name such "
                                + "as UTF-8 or 1252; the table's own mark was used; write the right name into it");
    }

    @Test
    void bytesThatAreNotOfTheEncodingAreNoted() {
        made.table(1, Table.of("mark", 'C', 8, 0).row("\u00E4bc"))
                .with("marks.cpg", "UTF-8".getBytes(StandardCharsets.US_ASCII));

        assertThat(made.read().features().get(0).columns()).containsEntry("mark", "\uFFFDbc");
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: feature 1: mark: its text holds bytes that are not UTF-8; "
                        + "read as \"\uFFFDbc\"; name the right encoding in the .cpg or retype the text");
    }

    @Test
    void aColumnOfAnUnknownTypeIsLeftOutAndNoted() {
        Table table = Table.of("mark", 'C', 3, 0).field("memo", 'M', 10, 0).field("odd", '\u0007', 1, 0);

        assertThat(columnsOf(table.row("A-1         9x"))).containsOnlyKeys("mark");
        assertThat(made.notes())
                .containsExactly(
                        "in/marks.dbf: memo: is a column of type M; wanted C, N, F, L or D; it was left out; "
                                + "change its type if it is needed",
                        "in/marks.dbf: odd: is a column of type byte 7; wanted C, N, F, L or D; it was left out; "
                                + "change its type if it is needed");
    }

    private Object value(Table table) {
        return columnsOf(table).values().iterator().next();
    }

    /** The columns of the last row. */
    private Map<String, Object> columnsOf(Table table) {
        made.table(table.rows(), table);
        List<RawFeature> features = made.read().features();
        return features.get(features.size() - 1).columns();
    }
}
