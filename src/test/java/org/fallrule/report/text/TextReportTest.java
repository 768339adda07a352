package org.fallrule.report.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.report.Reports.distance;
import static org.fallrule.report.Reports.feature;
import static org.fallrule.report.Reports.finding;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.report.Visible;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextReportTest {

    private static Report named(String id) {
        return Reports.with(
                List.of(finding(Weight.MUST, distance(feature(Role.OUTFALL, id, "POINT (0 0)"), 3.5, 0))),
                new Fault(Place.of("a.shp").feature("feature 1").field(id), "\"" + id + "\" is not known"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void theHeadingsCountWhatTheHeadCounts(String sample) {
        Report report = Reports.of(sample);
        String text = TextReport.write(report, Ink.PLAIN);

        for (Outcome outcome : Outcome.values()) {
            assertThat(text).contains(outcome.spoken() + " " + report.review().count(outcome));
        }
        Matcher headings = Pattern.compile("(?m)^(?!PROBLEMS|SUBMITTAL)[A-Z ]+ \\((\\d+)\\)$")
                .matcher(text);
        long counted = headings.results()
                .mapToLong(heading -> Long.parseLong(heading.group(1)))
                .sum();
        assertThat(counted).isEqualTo(report.review().findings().size());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 70, 79, 80, 81, 10_000})
    void noLineIsWiderThan80ColumnsHoweverLongAName(int length) {
        String text = TextReport.write(named("X".repeat(length)), Ink.PLAIN);

        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text.replaceAll("\\s", "")).contains("X".repeat(length));
    }

    @Test
    void ideographsTakeTwoColumnsAndAreNeverCutInTwo() {
        // U+2000B lies outside of the basic plane, so that Java holds it as two chars.
        String text = TextReport.write(named("\uD840\uDC0B".repeat(100)), Ink.PLAIN);

        assertThat(text.lines())
                .allMatch(line -> line.codePoints()
                                .map(letter -> letter == 0x2000B ? 2 : 1)
                                .sum()
                        <= 80);
        assertThat(text.codePoints()).noneMatch(letter -> letter >= 0xD800 && letter <= 0xDFFF);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001b[2J",
                "\u001b]0;title\u0007",
                "\u009b31m",
                "a\rb",
                "a\bb",
                "\u202egnp",
                "\u2028x",
                "\u0000"
            })
    void whatWouldSteerATerminalIsBlanked(String name) {
        String plain = TextReport.write(named(name), Ink.PLAIN);
        String coloured = TextReport.write(named(name), Ink.COLOUR).replaceAll("\u001b\\[(0|1|1;3[136])m", "");

        assertThat(plain.codePoints().filter(letter -> letter != '\n'))
                .noneMatch(letter -> Character.isISOControl(letter) || letter == 0x202E || letter == 0x2028);
        assertThat(coloured).isEqualTo(plain);
    }

    @Test
    void colourStandsOnlyOnTheVerdictAndTheHeadings() {
        String text = TextReport.write(named("OF-1"), Ink.COLOUR);

        assertThat(text.lines().filter(line -> line.contains("\u001b")))
                .allMatch(line -> line.startsWith("\u001b[1") && line.endsWith("\u001b[0m"))
                .hasSize(3);
    }

    @Test
    void whatNeedsAPersonComesFirst() {
        String text = TextReport.write(Reports.of("harrow-14"), Ink.PLAIN);

        assertThat(text.indexOf("FAILS (")).isBetween(0, text.indexOf("MEETS ("));
        assertThat(text).endsWith("\n").contains("RULE BOOKS\n  rules/baseline.yaml", "CAUTIONS\n");
    }

    @Property
    void wrappedWordsAreTheWordsAndFit(
            @ForAll @StringLength(max = 300) String words, @ForAll @IntRange(min = 2, max = 80) int width) {
        List<String> lines = Wrapped.lines(words, width);

        assertThat(letters(String.join("", lines))).isEqualTo(letters(Visible.of(words)));
        assertThat(lines).allMatch(line -> line.codePointCount(0, line.length()) <= width + marks(line));
    }

    private static String letters(String text) {
        return text.codePoints()
                .filter(letter -> !Character.isWhitespace(letter))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static long marks(String line) {
        return line.codePoints()
                .filter(letter -> Character.getType(letter) == Character.NON_SPACING_MARK
                        || Character.getType(letter) == Character.ENCLOSING_MARK)
                .count();
    }
}
