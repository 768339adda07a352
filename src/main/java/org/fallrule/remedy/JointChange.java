package org.fallrule.remedy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/**
 * Changes that together let several findings pass that fail together.
 *
 * @param site the plan with all of them
 * @param changes what is changed, in the order it is to be read
 * @param passed the findings of the submitted plan that then meet
 * @param failing how many of the submitted plan failed
 */
public record JointChange(Site site, List<String> changes, List<Finding> passed, int failing) {

    static Optional<JointChange> of(SiteAnalysis analysis, RuleBook book, Review review, LocalDate today) {
        return Optional.empty();
    }
}
