package org.fallrule.proposal;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.review.Review;
import org.fallrule.site.Feature;

/** What a review holds against a line. Advice counts only where the plan without a drain does not miss it just so. */
final class Verdict {
    private final Set<String> setAside;
    private final Set<String> before;
    private final boolean withAdvice;

    /**
     * @param setAside rules that do not count
     * @param without the review of the plan without a drain
     * @param withAdvice whether advice counts
     */
    Verdict(Set<String> setAside, Review without, boolean withAdvice) {
        this.setAside = Set.copyOf(setAside);
        this.before = without.findings().stream()
                .filter(finding -> finding.outcome() == Outcome.FAILS)
                .map(Verdict::key)
                .collect(Collectors.toSet());
        this.withAdvice = withAdvice;
    }

    List<Finding> against(Review review) {
        return review.findings().stream()
                .filter(finding -> finding.outcome() == Outcome.FAILS && !setAside.contains(finding.rule()))
                .filter(finding -> finding.weight() == Weight.MUST
                        || (withAdvice && finding.weight() == Weight.SHOULD && !before.contains(key(finding))))
                .toList();
    }

    private static String key(Finding finding) {
        return finding.rule() + " "
                + finding.observation().subject().map(Feature::id).orElse("");
    }
}
