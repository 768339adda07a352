package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Sentence;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sample sites against the reports that are expected of them. After a wanted change, renew those with {@code mvn test
 * -Dtest=SampleSitesTest -Dfallrule.renew=true}, and read what changed before committing it.
 */
class SampleSitesTest {
    private static final Path EXPECTED = Path.of("src/test/resources/org/fallrule/expected");
    private static final String HOW_TO_RENEW =
            "If the change is wanted: mvn test -Dtest=SampleSitesTest -Dfallrule.renew=true,"
                    + " then read the difference in " + EXPECTED + " before committing it.";

    static List<String> sites() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("sample-sites"))) {
            return folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("sites")
    void theReportIsTheExpectedOne(String site, @TempDir Path out) throws IOException {
        Ran.check("--out", out, "--format", "text,json", "--quiet", Path.of("sample-sites", site));

        List<String> changed = new ArrayList<>();
        for (String file : List.of("findings.json", "report.txt")) {
            Path expected = EXPECTED.resolve(site).resolve(file);
            String was = Files.exists(expected) ? Files.readString(expected) : "";
            String now = Files.readString(out.resolve(site).resolve(file));
            if (!was.equals(now)) {
                changed.add(difference(expected, was, now));
                if (Boolean.getBoolean("fallrule.renew")) {
                    Files.createDirectories(expected.getParent());
                    Files.writeString(expected, now);
                }
            }
        }
        assertThat(changed)
                .withFailMessage(() -> String.join("\n", changed) + "\n" + HOW_TO_RENEW)
                .isEmpty();
    }

    private static String difference(Path file, String was, String now) {
        List<String> before = was.lines().toList();
        List<String> after = now.lines().toList();
        int first = 0;
        while (first < Math.min(before.size(), after.size())
                && before.get(first).equals(after.get(first))) {
            first++;
        }
        return file + " differs from line " + (first + 1) + " on (" + before.size() + " lines before, " + after.size()
                + " now)\n" + lines("- ", before, first) + lines("+ ", after, first);
    }

    private static String lines(String sign, List<String> lines, int first) {
        StringBuilder text = new StringBuilder();
        lines.stream()
                .skip(first)
                .limit(5)
                .forEach(line -> text.append(sign).append(line).append('\n'));
        return text.toString();
    }

    // What matters, by hand. Values: sample-sites/*/README.md, worked out there from the drawings.

    private static List<Finding> findings(String folder) {
        Site site = SiteReader.read(Path.of("sample-sites", folder));
        RuleBook book =
                new RuleLibrary(Path.of("rules"), "rules").load(site.county().orElseThrow(), site.house());
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        return Reviewer.review(analysis, book, LocalDate.of(2026, 6, 1)).findings();
    }

    private static List<Finding> of(List<Finding> findings, Outcome outcome) {
        return findings.stream().filter(finding -> finding.outcome() == outcome).toList();
    }

    private static String ruleAndSubject(Finding finding) {
        return finding.rule() + " "
                + finding.observation().subject().map(Feature::id).orElse("-");
    }

    private static String shown(List<Finding> findings, String rule, String subject) {
        return findings.stream()
                .filter(finding -> ruleAndSubject(finding).equals(rule + " " + subject))
                .filter(finding -> finding.outcome() == Outcome.FAILS)
                .map(finding -> Sentence.shown(finding.observation().measured().orElseThrow()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void quillfeatherMeetsEverything() {
        assertThat(findings("quillfeather-8"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.outcome())
                        .as(ruleAndSubject(finding))
                        .isIn(Outcome.MEETS, Outcome.NOT_APPLICABLE));
    }

    @Test
    void harrowFailsInEveryFamilyByWhatIsDrawn() {
        List<Finding> findings = findings("harrow-14");

        assertThat(of(findings, Outcome.FAILS))
                .extracting(SampleSitesTest::ruleAndSubject)
                .containsExactly(
                        "outfall-lot-line-setback OF-1",
                        "outfall-walk-setback OF-1",
                        "outfall-flow-across-walk OF-1",
                        "pipe-never-uphill P-9",
                        "pipe-least-slope P-2",
                        "pipe-least-slope P-9",
                        "fall-available DS-4",
                        "fall-available CB-3",
                        "continuous-fall P-9",
                        "pipe-cover P-8",
                        "basin-frost CB-3",
                        "ground-falls-from-house B1",
                        "ground-falls-from-house B2",
                        "drain-outside-easements P-2",
                        "drain-outside-easements P-3",
                        "drain-outside-easements P-4",
                        "drain-outside-easements P-5",
                        "drain-outside-easements P-6",
                        "drain-outside-easements P-7",
                        "root-zone P-1",
                        "root-zone P-2",
                        "root-zone-perforated P-2",
                        "water-service-separation P-9",
                        "pipe-capacity P-9",
                        "pipe-least-velocity P-2",
                        "pipe-least-velocity P-9",
                        "outfall-holds-against-erosion OF-1",
                        "basin-drains-down CB-1",
                        "basin-drains-down CB-3",
                        "basin-does-not-float CB-1");
        assertThat(shown(findings, "outfall-walk-setback", "OF-1")).isEqualTo("3.50 ft");
        assertThat(shown(findings, "outfall-lot-line-setback", "OF-1")).isEqualTo("2.50 ft");
        assertThat(shown(findings, "pipe-least-slope", "P-2")).isEqualTo("0.59 %");
        assertThat(shown(findings, "pipe-never-uphill", "P-9")).isEqualTo("-0.51 %");
        assertThat(shown(findings, "pipe-cover", "P-8")).isEqualTo("15.6 in");
        assertThat(shown(findings, "water-service-separation", "P-9")).isEqualTo("5.5 in");
        assertThat(shown(findings, "drain-outside-easements", "P-4")).isEqualTo("21.00 ft");
        assertThat(shown(findings, "root-zone", "P-2")).isEqualTo("21.92 ft");
        assertThat(shown(findings, "outfall-holds-against-erosion", "OF-1")).isEqualTo("0.00 ft");
        assertThat(findings.stream()
                        .filter(finding -> finding.rule().equals("pipe-cover") && finding.outcome() == Outcome.FAILS)
                        .map(finding ->
                                finding.observation().measured().orElseThrow().of()))
                .containsExactly("cover under drive");
    }

    @Test
    void thistledownFailsInNothingButWhatAPlanMustShowAndSaysWhatIsMissing() {
        List<Finding> findings = findings("thistledown-3");

        assertThat(of(findings, Outcome.FAILS))
                .extracting(SampleSitesTest::ruleAndSubject)
                .containsExactly(
                        "plan-shows-easements -",
                        "plan-shows-septic -",
                        "plan-shows-wells -",
                        "plan-shows-flood-zones -",
                        "plan-shows-pipes P-5");
        assertThat(of(findings, Outcome.BORDERLINE)).isEmpty();
        assertThat(of(findings, Outcome.CANNOT_TELL).stream()
                        .flatMap(finding -> finding.observation().missing().stream())
                        .map(Missing::what)
                        .distinct())
                .contains(
                        "the utility layer",
                        "the septic layer",
                        "the well layer",
                        "the water body layer",
                        "the flood zone layer",
                        "the easement layer",
                        "the tree layer",
                        "the ground",
                        "the upstream invert of pipe P-4",
                        "the downstream invert of pipe P-4",
                        "diameter of pipe P-5, on which the limit depends",
                        "the diameter of pipe P-5",
                        "the plan's cleanouts",
                        "how deep the footing of building B-1 lies",
                        "sump of inlet CB-1",
                        "what pipe P-5 carries (the diameter of pipe P-5 is not given)",
                        "the design flow in pipe P-6 (no ground is given that could drain to inlet CB-1; give spot"
                                + " elevations around it, or a drainage_area that drains to it)",
                        "width of the grate, of inlet CB-1",
                        "ground_cover of outfall OF-1, on which the limit depends");
    }

    @Test
    void everythingOnThePlumbLineMeetsAndNothingIsBorderline() {
        // its ground is exact planes that run past the buildings and have no hollow, which no yard's grading would be;
        // leads of 3 in
        List<String> advice = List.of("ground-falls-from-house", "basin-at-low-point", "pipe-least-diameter");
        assertThat(findings("plumb-line-1").stream().filter(finding -> !advice.contains(finding.rule())))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.outcome())
                        .as(ruleAndSubject(finding))
                        .isIn(Outcome.MEETS, Outcome.NOT_APPLICABLE));
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({
        "outfall-walk-setback, 1.8288",
        "outfall-lot-line-setback, 1.524",
        "outfall-building-setback, 1.524",
        "pipe-least-slope, 0.01",
        "pipe-least-slope, 0.005",
        "pipe-greatest-slope, 0.2",
        "pipe-cover, 0.1524",
        "pipe-cover, 0.3048",
        "pipe-cover, 0.4572",
        "water-service-separation, 0.9144",
        "water-service-separation, 0.3048",
        "gas-separation, 0.6096",
        "gas-separation, 0.3048",
    })
    void onThePlumbLineAValueOfEachFamilyStandsOnItsLimit(String rule, double limit) {
        Optional<Measured> onIt = findings("plumb-line-1").stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(finding -> finding.observation().measured().orElseThrow())
                .filter(measured -> Math.abs(asked(measured) - limit) < 1e-9)
                .filter(measured -> Math.abs(measured.value().si() - limit)
                        <= measured.value().dimension().tolerance())
                .findFirst();

        // The README promises far less than 0.001 mm on the ground.
        assertThat(onIt.map(Measured::value).map(Quantity::si).orElse(Double.NaN))
                .isCloseTo(limit, within(1e-6));
    }

    private static double asked(Measured measured) {
        return measured.limit()
                .map(Limit::value)
                .map(value -> value.quantity().si())
                .orElse(Double.NaN);
    }

    @Test
    void mapleCourtHasThreeBorderlineFindings() {
        List<Finding> findings = findings("maple-court-2");

        assertThat(of(findings, Outcome.FAILS)).isEmpty();
        assertThat(of(findings, Outcome.CANNOT_TELL)).isEmpty();
        assertThat(of(findings, Outcome.BORDERLINE))
                .extracting(Finding::rule)
                .containsExactly(
                        "outfall-walk-setback",
                        "electric-communication-separation",
                        "electric-communication-separation");
        assertThat(Sentence.of(of(findings, Outcome.BORDERLINE).get(0)))
                .isEqualTo(
                        "Outfall OF-1 and walk W-1: plan distance 1.875 m, at least 6 ft (1.829 m) asked; known only to"
                                + " ±0.091 m.");
    }

    @Test
    void everySiteHasAnExpectedReportAndNoOtherHas() throws IOException {
        String[] expected = EXPECTED.toFile().list();

        assertThat(expected == null ? List.of() : Arrays.asList(expected)).containsExactlyInAnyOrderElementsOf(sites());
    }
}
