package org.fallrule.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;

/**
 * The search for the least change of each finding, begun as soon as a finding is there, while the plan is still reviewed; what it
 * makes worse is looked at once all findings are there. Each finding is sought for by itself, as a few take most of the time.
 */
public final class LeastChanges implements Consumer<Finding> {
    private final CompletableFuture<Findings> before = new CompletableFuture<>();
    private final LeastChange least;
    private final List<ForkJoinTask<LeastChange.Begun>> begun = new ArrayList<>();

    /** @param today the day on which waivers are held against their end */
    public LeastChanges(SiteAnalysis analysis, RuleBook book, LocalDate today) {
        this.least = new LeastChange(new Trial(analysis, book, today, before::join));
    }

    /** Takes the findings of the plan in their order. */
    @Override
    public void accept(Finding finding) {
        boolean isOpen = finding.outcome() == Outcome.FAILS || finding.outcome() == Outcome.BORDERLINE;
        if (isOpen && finding.weight() != Weight.NOTE) {
            begun.add(ForkJoinPool.commonPool().submit(() -> least.begun(finding)));
        }
    }

    /**
     * What is offered, in the order of the findings.
     *
     * @param review what the book makes of the plan
     */
    public Remedies of(Review review) {
        before.complete(new Findings(review.findings()));
        // The last first, so that this thread takes what no other has begun.
        for (int i = begun.size() - 1; i >= 0; i--) {
            begun.get(i).join();
        }
        List<ForkJoinTask<Remedied>> proved = begun.stream()
                .map(task -> ForkJoinTask.adapt(() -> least.proved(task.join())))
                .toList();
        ForkJoinTask.invokeAll(proved);
        return new Remedies(proved.stream().map(ForkJoinTask::join).toList(), Optional.empty());
    }
}
