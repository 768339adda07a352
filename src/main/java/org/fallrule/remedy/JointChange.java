package org.fallrule.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/**
 * Changes that together let findings pass that fail together, where they stand in each other's way one by one. Found by adding
 * least changes to each other, keeping at each step the few drafts that fail least (a beam search); proved by one review of
 * the plan with all of them.
 *
 * @param site the plan with all of them
 * @param changes what is changed, in the order in which it was found
 * @param passed the findings of the submitted plan that fail there and then meet
 * @param failing how many of the submitted plan's findings fail, advice among them
 */
public record JointChange(Site site, List<String> changes, List<Finding> passed, int failing) {
    private static final int MOST_CHANGES = 5;
    private static final int BEAM = 2;
    private static final int CHANGES_OF_A_KIND = 2;

    /** Findings that are worked on in one draft, the binding ones first. */
    private static final int MOST_FINDINGS = 6;

    public JointChange {
        changes = List.copyOf(changes);
        passed = List.copyOf(passed);
    }

    /** How many of those that pass are binding. */
    public long binding() {
        return passed.stream().filter(Finding::failsPlan).count();
    }

    /** The joint change of a plan in which several findings fail; nothing where there is none that takes more than one change. */
    static Optional<JointChange> of(SiteAnalysis analysis, RuleBook book, Review review, LocalDate today) {
        List<Finding> failing = review.findings().stream()
                .filter(JointChange::counts)
                .sorted(Comparator.comparing(Finding::weight))
                .toList();
        if (failing.size() < 2) {
            return Optional.empty();
        }
        Trial trial = new Trial(analysis, book, today, review);
        Draft start = new Draft(analysis, List.of(), review.findings(), trial);
        return best(start, book, today)
                .filter(draft -> draft.changes.size() > 1)
                .map(draft -> draft.joint(failing))
                .filter(joint -> joint.passed().size() > 1);
    }

    private static boolean counts(Finding finding) {
        return finding.weight() != Weight.NOTE
                && finding.outcome() == Outcome.FAILS
                && !finding.check().equals("ground_fall");
    }

    private static Optional<Draft> best(Draft start, RuleBook book, LocalDate today) {
        Optional<Draft> best = Optional.empty();
        List<Draft> beam = List.of(start);
        for (int i = 0; i < MOST_CHANGES && !beam.isEmpty(); i++) {
            beam = beam.parallelStream()
                    .flatMap(draft -> draft.next(book, today))
                    .sorted(Draft.BY_FAILING)
                    .limit(BEAM)
                    .toList();
            best = Stream.concat(best.stream(), beam.stream().filter(Draft::isProved))
                    .min(Draft.BY_FAILING);
        }
        return best;
    }

    /**
     * A plan with some changes in it.
     *
     * @param findings what fails and does not fail in it
     * @param submitted the trial of the submitted plan, which says what is worse than it was
     */
    private record Draft(SiteAnalysis analysis, List<String> changes, List<Finding> findings, Trial submitted) {
        /** Those first that fail the fewest binding rules, then the fewest others; then by trench volume and length of pipe. */
        static final Comparator<Draft> BY_FAILING = Comparator.comparingLong(Draft::score)
                .thenComparingDouble(draft -> TrenchVolume.of(draft.analysis))
                .thenComparingDouble(draft -> TrenchVolume.length(draft.analysis));

        long score() {
            return findings.stream()
                    .filter(JointChange::counts)
                    .mapToLong(finding -> finding.weight() == Weight.MUST ? 10 : 1)
                    .sum();
        }

        boolean isProved() {
            return submitted.drawback(analysis).isEmpty();
        }

        Stream<Draft> next(RuleBook book, LocalDate today) {
            Trial here = new Trial(analysis, book, today, new Review(findings, List.of()));
            LeastChange least = new LeastChange(here);
            return findings.stream()
                    .filter(JointChange::counts)
                    .sorted(Comparator.comparing(Finding::weight))
                    .limit(MOST_FINDINGS)
                    .flatMap(finding -> LeastChange.KINDS.stream()
                            .flatMap(kind -> least.candidates(kind, finding, CHANGES_OF_A_KIND).stream()))
                    .map(candidate -> candidate.least().change())
                    .map(change -> with(here, change));
        }

        private Draft with(Trial here, Change change) {
            SiteAnalysis changed = analysis.with(change.site());
            List<String> more = new ArrayList<>(changes);
            more.add(change.says());
            return new Draft(changed, more, here.review(changed), submitted);
        }

        JointChange joint(List<Finding> failing) {
            List<Finding> passed = failing.stream()
                    .filter(finding -> Trial.turns(finding, findings))
                    .toList();
            return new JointChange(analysis.site(), changes, passed, failing.size());
        }
    }
}
