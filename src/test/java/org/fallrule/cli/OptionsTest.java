package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OptionsTest {
    private static final Path SAMPLES = Path.of("sample-sites");

    @TempDir
    Path place;

    @ParameterizedTest
    @CsvSource({"quillfeather-8,0", "harrow-14,1", "thistledown-3,0", "plumb-line-1,0", "maple-court-2,0"})
    void theExitCodeSaysWhetherABindingRuleFails(String site, int code) {
        assertThat(Ran.check(SAMPLES.resolve(site), "--quiet").code()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"quillfeather-8,0", "harrow-14,1", "thistledown-3,1", "plumb-line-1,0", "maple-court-2,1"})
    void withStrictWhatIsOpenCountsToo(String site, int code) {
        assertThat(Ran.check(SAMPLES.resolve(site), "--quiet", "--strict").code())
                .isEqualTo(code);
    }

    @Test
    void theWorstOfSeveralSitesGivesTheExitCode() {
        assertThat(Ran.check("--quiet", SAMPLES.resolve("harrow-14"), SAMPLES.resolve("plumb-line-1"))
                        .code())
                .isEqualTo(1);
    }

    @Test
    void theCountyOfTheCommandWins() {
        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), "--county", "larkmoor");

        assertThat(ran.out()).contains("county larkmoor;", "rules/counties/larkmoor.yaml");
        assertThat(ran.code()).isEqualTo(1);
    }

    @Test
    void theHouseOfTheCommandIsLaidOnTop() {
        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), "--house", "stonebrook");

        assertThat(ran.out()).contains("set by\n    rules/house/stonebrook.yaml:6");
        assertThat(ran.code()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"2026-06-01,0,waived 1", "2027-06-02,1,waived 0"})
    void aWaiverHoldsToItsLastDay(String today, int code, String waived) {
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place);
        site.replacing(
                "site.yaml",
                "layers:",
                "waivers: [{rule: outfall-walk-setback, feature: OF-1, by: engineer, date: 2026-05-01, reason: x, until:"
                        + " 2027-06-01}]\nlayers:");
        site.replacing("site.yaml", "county: saltmeadow", "county: saltmeadow\nhouse: stonebrook");

        Ran ran = Ran.command("check", site.path(), "--today", today);

        assertThat(ran.out()).contains(waived);
        assertThat(ran.out().contains("it expired on 2027-06-01")).isEqualTo(code == 1);
    }

    @ParameterizedTest
    @MethodSource("failures")
    void whateverBreaksIsSaidInOneLine(Throwable failure, String says) {
        StringWriter err = new StringWriter();

        assertThat(Fallrule.unusable(failure, new PrintWriter(err, true))).isEqualTo(2);
        assertThat(err.toString().lines()).singleElement().asString().contains(says);
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of(new UnusableInput(Place.of("a.shp"), "is none"), "a.shp: is none"),
                Arguments.of(new StackOverflowError(), "fault of the program"),
                Arguments.of(new IllegalStateException("\u001b[2J"), "fault of the program"),
                Arguments.of(new OutOfMemoryError(), "not enough memory"));
    }

    @Test
    void withoutACommandItsUseIsPrinted() {
        Ran ran = Ran.command();

        assertThat(ran.out()).startsWith("Usage: fallrule").contains("check", "explain");
        assertThat(ran.code()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--outt", "--forma", "-x"})
    void anUnknownOptionIsRefused(String option) {
        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), option, "x");

        assertThat(ran.err()).contains("Unknown option", option);
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void anUnknownFormatIsRefusedWithTheKnownOnes() {
        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), "--format", "docx");

        assertThat(ran.err()).contains("--format", "docx", "text, json, geojson, csv");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void anUnknownCommandIsRefused() {
        Ran ran = Ran.command("chek", "x");

        assertThat(ran.err()).isEqualToNormalizingNewlines("""
                        fallrule: there is no command chek; did you mean check?
                        "fallrule help" lists the commands.
                        """);
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void aCheckWithoutASiteIsRefused() {
        Ran ran = Ran.check();

        assertThat(ran.err())
                .contains("Missing required parameter", "SITE")
                .endsWith("\"fallrule help check\" lists the options.\n");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void aDayThatIsNoneIsRefused() {
        Ran ran = Ran.command("check", SAMPLES.resolve("plumb-line-1"), "--today", "tomorrow");

        assertThat(ran.err()).contains("'--today': \"tomorrow\" is not a day; give it as 2026-05-04");
        assertThat(ran.code()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({
        "check, Usage: fallrule check ",
        "rules, Usage: fallrule rules [",
        "rules show, Usage: fallrule rules show ",
        "rules verify, Usage: fallrule rules verify "
    })
    void helpOfACommandListsItsOptionsInEightyColumns(String command, String start) {
        Ran ran = Ran.command((Object[]) ("help " + command).split(" "));

        assertThat(ran.out()).startsWith(start);
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(ran.code()).isZero();
    }

    @Test
    void noSitesAtTheSameTimeAreRefusedForOneSiteToo() {
        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), "--jobs", "0");

        assertThat(ran.err()).contains("--jobs: 0 sites at the same time are none; give 1 or more");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void theScreenClosesWithTheVerdictAndWhatToOpen() {
        assertThat(Ran.check(SAMPLES.resolve("plumb-line-1")).out())
                .endsWith(
                        "\nNothing binding fails and nothing is open; 7 pieces of advice not followed.\nWith --out DIR the report is written too, to read"
                                + " and to print, with a map of\neach finding.\n");

        Ran ran = Ran.check(SAMPLES.resolve("plumb-line-1"), "--out", place.resolve("out"), "--format", "text,csv");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(" Report written to " + place.resolve("out/plumb-line-1") + "; ")
                .endsWith(" open report.txt there. ");
    }

    @Test
    void explainPrintsACheckAndListsAll() {
        assertThat(Ran.command("explain").out()).contains("clearance\n", "cover\n", "slope\n");
        assertThat(Ran.command("explain", "cover").out()).contains("cover");
        assertThat(Ran.command("explain", "manning_full").out())
                .contains("Q = (1/n) A R^(2/3) S^(1/2)", "computed here 115.3");
        assertThat(Ran.command("explain", "flotation").out()).contains("WHAT IT CANNOT SEE", "Fb = FS gw V - W");
        Ran unknown = Ran.command("explain", "covr");
        assertThat(unknown.err()).contains("explain: there is no check, method or rule covr; did you mean cover?");
        assertThat(unknown.code()).isEqualTo(2);
    }

    @Test
    void explainLeadsFromARuleToItsCheck() {
        assertThat(Ran.command("explain", "pipe-cover").out())
                .startsWith("pipe-cover is a rule of the baseline.")
                .contains("fallrule rules show\nCOUNTY --rule pipe-cover", "\n\ncover\n\nThe least and greatest cover");
    }

    @ParameterizedTest
    @ValueSource(strings = {"separation", "ground_fall", "riprap_apron", "rational_flows"})
    void whatExplainPrintsFitsTheTerminal(String name) {
        assertThat(Ran.command("explain", name).out().lines())
                .allMatch(line -> line.length() <= 80)
                .noneMatch(line -> line.matches(".*[|`].*|#.*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
    void theComputersLanguageChangesNothing(String language) {
        Ran plain = Ran.check(SAMPLES.resolve("harrow-14"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            assertThat(Ran.check(SAMPLES.resolve("harrow-14"))).isEqualTo(plain);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nothingOfAPlanSteersTheTerminal() {
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place)
                .replacing("site.yaml", "site: Plumb", "site: \"\\e]0;x\\a\\x9b2J\\u202E\" #")
                .replacing("outfall.geojson", "\"OF-1\"", "\"OF\\u001b[2J\\u0085\"");

        Ran ran = Ran.check(site.path(), "--county", "larkmoor");

        assertThat(ran.out())
                .contains("OF [2J")
                .matches("[\\P{Cntrl}\n]*")
                .doesNotContain("\u009b", "\u0085", "\u202e");
    }
}
