package org.fallrule.remedy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;

/**
 * What would pass: for each finding that fails or is borderline the least change, and for several that fail together one joint
 * change.
 *
 * @param each what is offered for single findings, in their order
 * @param joint the changes that together let several pass; empty where none was looked for, or none was found
 */
public record Remedies(List<Remedied> each, Optional<JointChange> joint) {
    public static final Remedies NONE = new Remedies(List.of(), Optional.empty());

    public Remedies {
        each = List.copyOf(each);
    }

    /**
     * Looks for the least change of each finding.
     *
     * @param review what the book makes of the plan
     * @param today the day on which waivers are held against their end
     */
    public static Remedies each(SiteAnalysis analysis, RuleBook book, Review review, LocalDate today) {
        LeastChanges least = new LeastChanges(analysis, book, today);
        review.findings().forEach(least);
        return least.of(review);
    }

    /** These, and one joint change of the findings that fail together. */
    public Remedies joined(SiteAnalysis analysis, RuleBook book, Review review, LocalDate today) {
        return new Remedies(each, JointChange.of(analysis, book, review, today));
    }

    /** What is offered for a finding; nothing for one that needs none. */
    public Optional<Remedied> of(Finding finding) {
        for (Remedied one : each) {
            if (one.finding().equals(finding)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
