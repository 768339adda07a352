package org.fallrule.docket;

import java.time.LocalDate;
import java.util.concurrent.CompletableFuture;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.proposal.Outlook;
import org.fallrule.remedy.Remedies;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;

/** How far to look for what would pass. The names are what a person types. */
public enum RemedySearch {
    /** Nothing is looked for. */
    none,
    /** The least change for each finding. */
    each,
    /** Also changes that together let several findings pass. */
    joint;

    Remedies in(SiteAnalysis analysis, RuleBook book, Review review, LocalDate today) {
        return switch (this) {
            case none -> Remedies.NONE;
            case each -> Remedies.each(analysis, book, review, today);
            case joint -> Remedies.joint(analysis, book, review, today);
        };
    }

    /** Where an outfall and a basin may stand, where anything is looked for; worked out beside whatever goes on meanwhile. */
    CompletableFuture<Outlook> outlook(SiteAnalysis analysis, RuleBook book) {
        return this == none
                ? CompletableFuture.completedFuture(Outlook.NONE)
                : CompletableFuture.supplyAsync(() -> Outlook.of(analysis, book));
    }
}
