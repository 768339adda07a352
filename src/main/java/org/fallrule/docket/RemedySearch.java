package org.fallrule.docket;

import java.time.LocalDate;
import java.util.concurrent.CompletableFuture;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.proposal.Outlook;
import org.fallrule.remedy.LeastChanges;
import org.fallrule.remedy.Remedies;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;

/** How far to look for what would pass. The names are what a person types. */
public enum RemedySearch {
    /** Nothing is looked for. */
    none,
    /** The least change for each finding. */
    each,
    /** Also changes that together let several findings pass. */
    joint;

    /** Reviews a plan, and looks for what would pass while it does. */
    Reviewed reviewed(SiteAnalysis analysis, RuleBook book, LocalDate today) {
        if (this == none) {
            return new Reviewed(Reviewer.review(analysis, book, today), Remedies.NONE);
        }
        LeastChanges least = new LeastChanges(analysis, book, today);
        Review review = Reviewer.review(analysis, book, today, least);
        Remedies each = least.of(review);
        return new Reviewed(review, this == joint ? each.joined(analysis, book, review, today) : each);
    }

    /** The review of a plan, and what would pass. */
    record Reviewed(Review review, Remedies remedies) {}

    /** Where an outfall and a basin may stand, where anything is looked for; worked out beside whatever goes on meanwhile. */
    CompletableFuture<Outlook> outlook(SiteAnalysis analysis, RuleBook book) {
        return this == none
                ? CompletableFuture.completedFuture(Outlook.NONE)
                : CompletableFuture.supplyAsync(() -> Outlook.of(analysis, book));
    }
}
