package org.fallrule.bookshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The examples beside the rule books that come with the program. Nothing here is edited when a rule or a book is added. */
class ShippedExamplesTest {
    private static final RuleLibrary LIBRARY = new RuleLibrary(Path.of("rules"), "rules");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    @TestFactory
    Stream<DynamicContainer> everyBookIsSoundAndItsExamplesComeOutAsExpected() {
        return BookName.all(LIBRARY).stream().map(name -> {
            BookProof proof = BookProof.of(LIBRARY, name, DAY);
            Stream<DynamicTest> sound = Stream.of(
                    DynamicTest.dynamicTest(
                            "has no faults", () -> assertThat(proof.faults()).isEmpty()),
                    DynamicTest.dynamicTest(
                            "has examples",
                            () -> assertThat(proof.examples())
                                    .as("write them in %s", proof.file().replace(".yaml", ".examples.yaml"))
                                    .isNotEmpty()));
            Stream<DynamicTest> examples = proof.examples().stream()
                    .map(example -> DynamicTest.dynamicTest(
                            example.name(), () -> assertThat(example.misses()).isEmpty()));
            return DynamicContainer.dynamicContainer(proof.file(), Stream.concat(sound, examples));
        });
    }

    /** A rule that has never been seen to fail may be one that cannot. */
    @Test
    void everyRuleOfTheBaselineIsSeenToMeetAndToFail() throws IOException {
        Map<String, Set<Outcome>> seen = new TreeMap<>();
        for (BookName name : BookName.all(LIBRARY)) {
            BookProof.of(LIBRARY, name, DAY).examples().stream()
                    .flatMap(example -> example.review().stream())
                    .forEach(review -> note(review, seen));
        }
        try (Stream<Path> sites = Files.list(Path.of("sample-sites"))) {
            for (Path folder : sites.sorted().toList()) {
                Site site = SiteReader.read(folder);
                RuleBook book = LIBRARY.load(site.county().orElseThrow(), site.house(), DAY);
                note(Reviewer.review(SiteAnalysis.of(site, book.locality()), book, DAY), seen);
            }
        }
        Map<String, List<String>> lacking = new LinkedHashMap<>();
        for (Rule rule : LIBRARY.baseline(Optional.empty(), DAY).book().rules()) {
            List<String> never = wanted(rule).stream()
                    .filter(outcome -> !seen.getOrDefault(rule.id(), Set.of()).contains(outcome))
                    .map(Outcome::word)
                    .toList();
            if (!never.isEmpty()) {
                lacking.put(rule.id(), never);
            }
        }
        assertThat(lacking)
                .as(
                        "add to rules/baseline.examples.yaml a plan in which each of these rules comes out so, with the line"
                                + " `RULE: OUTCOME` under its expect; `fallrule rules verify baseline` runs it")
                .isEmpty();
    }

    /** A rule of weight note is a bare fact, which nothing fails. */
    private static Set<Outcome> wanted(Rule rule) {
        return rule.weight() == Weight.NOTE ? EnumSet.of(Outcome.MEETS) : EnumSet.of(Outcome.MEETS, Outcome.FAILS);
    }

    private static void note(Review review, Map<String, Set<Outcome>> seen) {
        for (Finding finding : review.findings()) {
            seen.computeIfAbsent(finding.rule(), rule -> EnumSet.noneOf(Outcome.class))
                    .add(finding.outcome());
        }
    }
}
