package org.fallrule.bookshelf;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Sentence;
import org.fallrule.review.Review;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;

/**
 * What an example expects a rule to make of its plan.
 *
 * @param rule the rule's id
 * @param outcome the outcome; of several findings the gravest
 * @param feature the feature that the finding is about; empty for any
 * @param measured the measured value as a report prints it; empty when any will do
 * @param place where the example says so
 */
public record Expectation(
        String rule, Outcome outcome, Optional<String> feature, Optional<String> measured, Place place) {
    /** The gravest first. */
    private static final List<Outcome> GRAVITY = List.of(
            Outcome.FAILS,
            Outcome.BORDERLINE,
            Outcome.CANNOT_TELL,
            Outcome.MEETS,
            Outcome.WAIVED,
            Outcome.NOT_APPLICABLE);

    /** What is otherwise; nothing when it is as expected. */
    Optional<String> missed(Review review, RuleBook book) {
        List<Finding> of = review.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
        if (of.isEmpty()) {
            return Optional.of(noRule(book));
        }
        List<Finding> about = of.stream().filter(this::speaksOf).toList();
        Optional<Finding> gravest = about.stream()
                .min(Comparator.comparing((Finding finding) -> GRAVITY.indexOf(finding.outcome()))
                        .thenComparing(finding -> !hasMeasured(finding)));
        if (gravest.isEmpty()) {
            return Optional.of(rule + ": nothing is said of " + feature.orElse("") + "; found " + shown(of));
        }
        boolean held = gravest.get().outcome() == outcome && (measured.isEmpty() || hasMeasured(gravest.get()));
        return held
                ? Optional.empty()
                : Optional.of(rule + ": wanted " + outcome.word()
                        + measured.map(value -> " at " + value).orElse("") + ", found " + shown(about));
    }

    private String noRule(RuleBook book) {
        return rule + ": no such rule applies here"
                + Nearest.hint(rule, book.rules().stream().map(Rule::id).toList());
    }

    private boolean speaksOf(Finding finding) {
        return feature.isEmpty()
                || finding.observation().subject().map(Feature::id).equals(feature);
    }

    private boolean hasMeasured(Finding finding) {
        return shown(finding).equals(measured);
    }

    private static Optional<String> shown(Finding finding) {
        return finding.observation().measured().map(Sentence::shown);
    }

    private static String shown(List<Finding> findings) {
        return findings.stream().map(Expectation::told).distinct().limit(5).collect(Collectors.joining("; "));
    }

    private static String told(Finding finding) {
        return finding.outcome().word()
                + finding.observation()
                        .subject()
                        .map(subject -> " for " + subject.id())
                        .orElse("")
                + finding.observation()
                        .measured()
                        .map(value -> " at " + Sentence.shown(value)
                                + Sentence.asked(value)
                                        .map(asked -> " (" + asked + ")")
                                        .orElse(""))
                        .orElse("")
                + finding.observation().missing().stream()
                        .map(missing -> ", lacks " + missing.what())
                        .collect(Collectors.joining());
    }
}
