package org.fallrule.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Terms;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;

/**
 * A submitted plan against which changes of its drain and of the ground beside its walls are held. A trial runs one rule; the
 * proof runs every rule that looks at what is changed.
 */
final class Trial {
    /** What is quickly looked at and often stands against a change; looked at first, so that most proofs that fail fail soon. */
    private static final Set<String> QUICK = Set.of(
            "slope",
            "continuous_fall",
            "fall_available",
            "diameter_downstream",
            "clearance",
            "within",
            "outside",
            "attribute",
            "cleanout_spacing",
            "bend_cleanout");

    private final SiteAnalysis submitted;
    private final RuleBook book;
    private final LocalDate today;
    private final Supplier<Findings> before;
    private final Set<String> problems;
    private final List<Rule> rules;

    Trial(SiteAnalysis submitted, RuleBook book, LocalDate today, Review review) {
        this(submitted, book, today, new Findings(review.findings()));
    }

    private Trial(SiteAnalysis submitted, RuleBook book, LocalDate today, Findings before) {
        this(submitted, book, today, () -> before);
    }

    /** @param before the findings of the submitted plan, which may still be being looked for */
    Trial(SiteAnalysis submitted, RuleBook book, LocalDate today, Supplier<Findings> before) {
        this.submitted = submitted;
        this.book = book;
        this.today = today;
        this.before = before;
        this.problems = new HashSet<>(said(submitted));
        this.rules = book.rules().stream()
                .filter(rule -> rule.weight() != Weight.NOTE)
                .sorted(Comparator.comparing(
                        rule -> !QUICK.contains(rule.check().name())))
                .toList();
    }

    SiteAnalysis submitted() {
        return submitted;
    }

    /** A finding of the submitted plan, with what its rule tells its check. */
    Situation situation(Finding finding) {
        Terms terms = book.rules().stream()
                .filter(rule -> rule.id().equals(finding.rule()))
                .findFirst()
                .map(Rule::terms)
                .orElse(Terms.none());
        return new Situation(submitted, finding, terms);
    }

    private static List<String> said(SiteAnalysis analysis) {
        return analysis.network().problems().stream().map(Fault::says).toList();
    }

    /** Whether the finding's own rule is met once the change is made, and outfalls still open to the air. */
    boolean turns(Finding finding, Change change) {
        SiteAnalysis changed = submitted.with(change.site());
        return Daylight.buried(submitted, changed).isEmpty() && turns(finding, changed);
    }

    /** Whether the finding's own rule is met once the change is made, even if an outfall then lies in the ground. */
    boolean turnsEvenBuried(Finding finding, Change change) {
        return turns(finding, submitted.with(change.site()));
    }

    private boolean turns(Finding finding, SiteAnalysis changed) {
        SiteAnalysis asked = changed.asking(Subject.of(finding)::mayBe);
        return turns(finding, run(asked, rule -> rule.id().equals(finding.rule())));
    }

    /**
     * Whether the review of a changed plan answers a finding: nothing of its kind is open, and the rule still has something to
     * say. Of what is not joined to a sewer nothing is said while other parts of the drain are.
     */
    static boolean turns(Finding finding, List<Finding> after) {
        Subject subject = Subject.of(finding);
        List<Finding> answers = after.stream()
                .filter(each -> subject.isAnsweredBy(Subject.of(each)))
                .toList();
        boolean open = answers.stream().anyMatch(Findings::isOpen);
        boolean met = after.stream()
                .anyMatch(each -> each.rule().equals(finding.rule())
                        && (each.outcome() == Outcome.MEETS
                                || each.outcome() == Outcome.NOT_APPLICABLE
                                || each.check().equals("not_joined")));
        return !open && (met || !answers.isEmpty());
    }

    /** What a change makes worse: nothing where it is proved. */
    Optional<Drawback> drawback(SiteAnalysis changed) {
        Optional<Drawback> buried = Daylight.buried(submitted, changed).or(() -> Rims.drawback(submitted, changed));
        if (buried.isPresent()) {
            return buried;
        }
        Optional<String> problem = said(changed).stream()
                .filter(says -> !problems.contains(says.replaceAll(Subject.PART + "\\d+", "")))
                .findFirst();
        if (problem.isPresent()) {
            return problem.map(Drawback.Problem::new);
        }
        Touched touched = Touched.between(submitted.site(), changed.site());
        for (Rule rule : rules) {
            Optional<Finding> worse =
                    touched.mayTouch(rule) ? before.get().firstWorse(run(changed, rule::equals)) : Optional.empty();
            if (worse.isPresent()) {
                return worse.map(finding -> new Drawback.Worse(finding, changed));
            }
        }
        return Optional.empty();
    }

    /** Every finding that may change with the drain, in the order of the rules. */
    List<Finding> review(SiteAnalysis changed) {
        return run(changed, Trial::isProved);
    }

    private static boolean isProved(Rule rule) {
        return rule.check().looksAtDrain() && rule.weight() != Weight.NOTE;
    }

    private List<Finding> run(SiteAnalysis changed, Predicate<Rule> which) {
        return new ArrayList<>(Reviewer.review(changed, book.only(which), today).findings());
    }
}
