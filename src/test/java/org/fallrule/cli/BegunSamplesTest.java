package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.UnusableInput;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Outcome;
import org.fallrule.intake.Draft;
import org.fallrule.intake.Intake;
import org.fallrule.intake.Question;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Sentence;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sample sites without their site.yaml: once what only a person can know is answered, the draft leads to the very findings of
 * the file that was written by hand. The answers here are all that has to be typed.
 */
class BegunSamplesTest {

    /**
     * A sample.
     *
     * @param answers what a person answers, by question
     * @param open questions that may stay open, as the file that was written by hand says nothing of them either
     */
    record Sample(String site, Map<String, String> answers, Set<String> open) {
        @Override
        public String toString() {
            return site;
        }
    }

    static List<Sample> samples() {
        return List.of(
                new Sample(
                        "quillfeather-8",
                        Map.of(
                                "datum", "NAVD88",
                                "units.elevation", "ft",
                                "units.diameter", "in",
                                "units.depth", "in",
                                "units.footing_depth", "in",
                                "survey.horizontal", "0.1 ft",
                                "survey.vertical", "0.05 ft",
                                "absent", "septic, well, easement, tree, water_body, flood_zone"),
                        Set.of()),
                new Sample(
                        "harrow-14",
                        Map.ofEntries(
                                Map.entry("datum", "NAVD88"),
                                Map.entry("units.elevation", "ft"),
                                Map.entry("units.diameter", "in"),
                                Map.entry("units.depth", "in"),
                                Map.entry("units.grate_length", "in"),
                                Map.entry("units.grate_width", "in"),
                                Map.entry("units.box_length", "in"),
                                Map.entry("units.box_width", "in"),
                                Map.entry("survey.horizontal", "0.1 ft"),
                                Map.entry("survey.vertical", "0.05 ft"),
                                Map.entry("abandoned.marks.shp", "leave them out"),
                                Map.entry("absent", "septic, well, water_body, flood_zone")),
                        Set.of()),
                new Sample(
                        "thistledown-3",
                        Map.of("crs", "3734", "units.elevation", "ft", "units.diameter", "in"),
                        Set.of("datum", "survey.horizontal", "survey.vertical", "absent")),
                new Sample(
                        "plumb-line-1",
                        Map.of(
                                "datum", "NAVD88",
                                "units.elevation", "ft",
                                "units.diameter", "in",
                                "units.depth", "in",
                                "units.horizontal_accuracy", "in",
                                "units.vertical_accuracy", "in",
                                "absent", "septic, well, easement, tree, water_body, flood_zone"),
                        Set.of("survey.horizontal", "survey.vertical")),
                new Sample(
                        "maple-court-2",
                        Map.of(
                                "datum", "NAVD88",
                                "survey.horizontal", "0.3 ft",
                                "survey.vertical", "0.05 ft",
                                "code.structures.shp.CO", "cleanout",
                                "column.structures.shp.inlet.grate_length", "GRATE_MM",
                                "column.structures.shp.inlet.grate_width", "GRATE_MM",
                                "column.structures.shp.inlet.box_length", "BOX_MM",
                                "column.structures.shp.inlet.box_width", "BOX_MM",
                                "value.structures.shp.outfall.kind.OUT", "daylight",
                                "absent", "easement, tree"),
                        Set.of()));
    }

    private static SiteOnDisk undescribed(String sample, Path place) {
        return SiteOnDisk.copied(sample, place).without("site.yaml");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void answeredTheDraftLeadsToTheFindingsOfTheFileThatWasWrittenByHand(Sample sample, @TempDir Path place) {
        SiteOnDisk folder = undescribed(sample.site(), place);
        Set<String> asked = new LinkedHashSet<>();

        Draft draft = Intake.draft(folder.path(), Optional.empty(), question -> {
            asked.add(question.key());
            return answer(sample, question);
        });

        Set<String> expected = new LinkedHashSet<>(sample.answers().keySet());
        expected.addAll(sample.open());
        assertThat(asked).containsExactlyInAnyOrderElementsOf(expected);
        folder.with("site.yaml", draft.yaml());
        assertThat(findings(folder.path())).isEqualTo(findings(Path.of("sample-sites", sample.site())));
    }

    private static Optional<String> answer(Sample sample, Question question) {
        Optional<String> typed = Optional.ofNullable(sample.answers().get(question.key()));
        Optional<String> answer = typed.flatMap(question::read);
        assertThat(answer.isPresent())
                .as("%s takes %s; choices: %s", question.key(), typed, question.choices())
                .isEqualTo(typed.isPresent());
        return answer;
    }

    /**
     * What is not answered may make a finding open. It may not make one meet that does not. (How good the survey is decides what is
     * borderline, and is answered here.)
     */
    @ParameterizedTest
    @MethodSource("samples")
    void unansweredTheDraftPassesNothingMore(Sample sample, @TempDir Path place) {
        SiteOnDisk folder = undescribed(sample.site(), place);
        Draft draft = Intake.draft(
                folder.path(),
                Optional.empty(),
                question -> question.key().startsWith("survey.") ? answer(sample, question) : Optional.empty());
        folder.with("site.yaml", draft.yaml());

        Path byHand = Path.of("sample-sites", sample.site());
        List<String> looked = found(byHand).map(BegunSamplesTest::subject).toList();
        try {
            assertThat(passed(byHand))
                    .containsAll(passed(folder.path()).stream()
                            .filter(looked::contains)
                            .toList());
            assertThat(SiteReader.read(folder.path()).problems())
                    .filteredOn(problem -> problem.says().startsWith("is open: "))
                    .hasSize(open(folder))
                    .allSatisfy(problem -> assertThat(problem.where().line()).isPositive());
        } catch (UnusableInput refused) {
            assertThat(refused.faults())
                    .filteredOn(fault -> fault.says().startsWith("is open: "))
                    .hasSize(open(folder));
        }
    }

    private static int open(SiteOnDisk folder) {
        try {
            return (int) Files.readString(folder.path("site.yaml"))
                    .lines()
                    .filter(line -> line.contains("# ask: "))
                    .count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Finding> found(Path folder) {
        Site site = SiteReader.read(folder);
        String county = folder.getFileName().toString().matches("harrow.*|thistle.*") ? "larkmoor" : "saltmeadow";
        var book = new RuleLibrary(Path.of("rules"), "rules").load(county, site.house());
        return Reviewer.review(SiteAnalysis.of(site, book.locality()), book, LocalDate.of(2026, 6, 1))
                .findings()
                .stream();
    }

    private static List<String> findings(Path folder) {
        List<String> all = new ArrayList<>();
        found(folder)
                .forEach(finding -> all.add(subject(finding) + " " + finding.outcome() + " "
                        + finding.observation().measured().map(Sentence::shown).orElse("-") + " lacks "
                        + finding.observation().missing().stream()
                                .map(Missing::what)
                                .toList()));
        return all;
    }

    private static List<String> passed(Path folder) {
        return found(folder)
                .filter(finding -> finding.outcome() == Outcome.MEETS)
                .map(BegunSamplesTest::subject)
                .toList();
    }

    private static String subject(Finding finding) {
        return finding.rule() + " "
                + finding.observation().subject().map(Feature::id).orElse("-") + " "
                + finding.observation().other().map(Feature::id).orElse("-");
    }
}
