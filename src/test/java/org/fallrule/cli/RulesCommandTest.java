package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command rules: what there is, what applies and who set it, what is wrong, what differs. */
class RulesCommandTest {
    private static final String RULE = """
            title: Ambermere County (invented, for demonstration)
            builds_on: ../baseline.yaml
            rules:
              outfall-walk-setback:
                at_least: 9 ft
                basis: {kind: ordinance, document: Ambermere Code (invented), section: "1"}
              pipe-cover-advice:
                drop: true
                reason: the binding cover is enough
            """;

    @TempDir
    Path folder;

    private Path rules(String county, String examples) throws IOException {
        Files.createDirectories(folder.resolve("counties"));
        Files.copy(
                Path.of("rules/baseline.yaml"),
                folder.resolve("baseline.yaml"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Files.writeString(folder.resolve("counties/ambermere.yaml"), county);
        if (!examples.isEmpty()) {
            Files.writeString(folder.resolve("counties/ambermere.examples.yaml"), examples);
        }
        return folder;
    }

    private static Ran rulesCommand(Object... words) {
        Object[] all = new Object[words.length + 1];
        all[0] = "rules";
        System.arraycopy(words, 0, all, 1, words.length);
        return Ran.command(all);
    }

    /** What was printed, without the breaks of its lines. */
    private static String unbroken(String printed) {
        return printed.replaceAll("\\n +", "").replaceAll("\\s+", "");
    }

    @Test
    void theListNamesCountiesAndFirmsWithTitlesAndSaysWhichAreInvented() {
        Ran ran = rulesCommand("list");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(
                        "larkmoor",
                        "brackenfell",
                        "saltmeadow",
                        "stonebrook",
                        "tallowbank",
                        "Larkmoor County lot drainage INVENTED, for demonstration",
                        "builds on rules/baseline.yaml");
    }

    @Test
    void everyValueIsShownWithTheLineThatSetItAndWhatItOverrode() throws IOException {
        Ran ran = rulesCommand("show", "ambermere", "--rules", rules(RULE, ""), "--rule", "outfall-walk-setback");

        assertThat(ran.code()).isZero();
        assertThat(ran.out().replace(folder.toString(), "rules").replaceAll("\\s+", " "))
                .contains("at_least: 9 ft [rules/counties/ambermere.yaml:5] overrides 5 ft [rules/baseline.yaml:");
        assertThat(ran.out()).contains("weight: should");
    }

    @Test
    void aDroppedRuleIsShownWithItsReason() throws IOException {
        Ran ran = rulesCommand("show", "ambermere", "--rules", rules(RULE, ""), "--rule", "pipe-cover-advice");

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("DROPPED in ", "ambermere.yaml:7: the binding cover is enough");
    }

    @Test
    void aRuleThatThereIsNotIsRefusedWithTheNearest() {
        Ran ran = rulesCommand("show", "larkmoor", "--rule", "outfal-walk-setback");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("did you mean outfall-walk-setback?");
    }

    @ParameterizedTest
    @CsvSource({"show larkmoor --house stonebrook", "list", "differ larkmoor brackenfell --all", "verify larkmoor"})
    void nothingIsWiderThanEightyColumns(String command) {
        Ran ran = rulesCommand((Object[]) command.split(" "));

        assertThat(ran.out().lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(80));
    }

    @Test
    void theJsonHasTheSameFacts() throws IOException {
        Ran ran = rulesCommand(
                "show", "ambermere", "--rules", rules(RULE, ""), "--rule", "outfall-walk-setback", "--format", "json");

        assertThat(ran.out()).contains("\"format\" : \"fallrule-rules/1\"", "\"value\" : \"9 ft\"", "\"overrides\"");
    }

    @Test
    void twoCountiesStandSideBySideAsFarAsTheyDiffer() {
        Ran ran = rulesCommand("differ", "larkmoor", "saltmeadow");

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("outfall-walk-setback at_least 5 ft 6 ft", "basin-frost asked: 30 in dropped: the ground")
                .doesNotContain("pipe-never-uphill");
    }

    @Test
    void aCountyAsksTheSameAsItself() {
        assertThat(rulesCommand("differ", "larkmoor", "larkmoor").out()).contains("They ask the same.");
    }

    @Test
    void aSoundBookVerifies() throws IOException {
        Ran ran = rulesCommand("verify", "ambermere", "--rules", rules(RULE, ""));

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("no faults");
    }

    @Test
    void allFaultsOfABookAreSaidAtOnceWithTheirPlaces() throws IOException {
        String faulty = RULE.replace("at_least: 9 ft", "at_lest: 9 ft\n    weight: shal");
        Ran ran = rulesCommand("verify", "ambermere", "--rules", rules(faulty, ""));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "ambermere.yaml:5:5: unknown key at_lest",
                        "did you mean at_least?",
                        "ambermere.yaml:6:13: unknown weight shal");
    }

    @Test
    void anExampleThatComesOutOtherwiseIsNamedWithItsLine() throws IOException {
        Ran ran = rulesCommand("verify", "ambermere", "--rules", rules(RULE, """
                unit: ft
                examples:
                  an outfall 8 ft away:
                    features:
                      - {role: walk, id: W-1, access: public, at: "POLYGON ((0 0, 50 0, 50 5, 0 5, 0 0))"}
                      - {role: outfall, id: OF-1, kind: daylight, at: POINT (20 13)}
                    expect:
                      outfall-walk-setback: meets
                """));

        assertThat(ran.code()).isEqualTo(1);
        assertThat(unbroken(ran.out()))
                .contains(
                        unbroken("MISSED an outfall 8 ft away"),
                        unbroken(
                                "ambermere.examples.yaml:8:29: outfall-walk-setback: wanted meets, found fails for OF-1"
                                        + " at 8.00 ft (at least 9 ft)"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{role: outfal, id: A, at: POINT (1 1)} | :5:16: unknown role outfal; did you mean outfall?",
                "{role: outfall, id: A, at: PONT (1 1)} | :5:36: at: \"PONT (1 1)\" is not well-known text",
                "{role: pipe, id: A, diametr: 4 in, at: \"LINESTRING (0 0, 9 9)\"} | :5:29: pipe: there is no attribute"
                        + " diametr; did you mean diameter?",
                "{role: pipe, id: A, diameter: 4, at: \"LINESTRING (0 0, 9 9)\"} | :5:39: diameter: \"4\" has no unit",
                "{role: outfall, id: A, kind: dailight, at: POINT (1 1)} | \"dailight\" is not a known kind",
                "{role: pipe, id: A, at: POINT (1 1)} | is a Point; the pipe layer wants lines",
                "{role: outfall, id: A} | :5:9: the key at is missing",
            })
    void aFaultyPlanOfAnExampleIsRefusedWithItsLine(String feature, String says) throws IOException {
        Ran ran = rulesCommand("verify", "ambermere", "--rules", rules(RULE, """
                unit: ft
                examples:
                  one:
                    features:
                      - FEATURE
                    expect: {outfall-walk-setback: meets}
                """.replace("FEATURE", feature)));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(unbroken(ran.out())).contains(unbroken(says));
    }

    @Test
    void aBookThatThereIsNotIsRefusedWithTheNearest() {
        Ran ran = rulesCommand("verify", "larkmor");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("larkmor: there is no such book; did you mean larkmoor?");
    }

    @Test
    void withoutASubcommandTheFourAreNamed() {
        Ran ran = rulesCommand();

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("list, show, verify, differ");
    }

    @Test
    void theMapOfCountiesIsVerifiedWithTheBooks() throws IOException {
        Path books = rules(RULE, "");
        Files.writeString(books.resolve("counties.geojson"), """
                {"type": "Feature", "properties": {"county": "ambermere"}, "geometry": {"type": "Polygon",
                 "coordinates": [[[0, 0], [1, 0], [1, 1], [0, 0]]]}}
                """);
        assertThat(rulesCommand("verify", "--rules", books).out()).contains("no faults; the map of ambermere");

        Files.writeString(
                books.resolve("counties.geojson"),
                Files.readString(books.resolve("counties.geojson")).replace("ambermere", "ambermeer"));
        Ran ran = rulesCommand("verify", "--rules", books);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(unbroken(ran.out())).contains(unbroken("there is no book of ambermeer; did you mean ambermere?"));
    }
}
