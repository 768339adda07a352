package org.fallrule.reference;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Attribute;
import org.fallrule.site.Site;

/**
 * Finds out which attributes a check cannot do without, by taking each away from a plan and looking what can no longer be told. So it
 * is what the checks do, not what somebody wrote of them.
 */
final class AttributeTrial {
    /** No plan that is tried has a waiver, so the day does not matter. */
    private static final LocalDate ANY_DAY = LocalDate.of(2026, 1, 1);

    private final RuleBook book;
    private final Map<String, Set<String>> wanted = new TreeMap<>();

    private AttributeTrial(RuleBook book) {
        this.book = book;
    }

    /** The attributes by check, each as {@code pipe diameter}. */
    static Map<String, Set<String>> of(List<Site> plans, RuleBook book) {
        AttributeTrial trial = new AttributeTrial(book);
        plans.forEach(trial::take);
        return trial.wanted;
    }

    private void take(Site plan) {
        Map<String, Long> open = open(plan);
        plan.layers().forEach((role, layer) -> {
            for (Attribute<?> attribute : Attribute.of(role)) {
                boolean isGiven = layer.features().stream()
                        .anyMatch(feature -> feature.attributes().has(attribute));
                if (isGiven && attribute != Attribute.ID) {
                    open(plan.without(role, attribute)).forEach((check, count) -> {
                        if (count > open.getOrDefault(check, 0L)) {
                            wanted.computeIfAbsent(check, any -> new TreeSet<>())
                                    .add(role.spoken() + " " + attribute.spoken());
                        }
                    });
                }
            }
        });
    }

    /** How many findings of each check cannot be told. */
    private Map<String, Long> open(Site plan) {
        Map<String, Long> open = new HashMap<>();
        for (Finding finding : Reviewer.review(SiteAnalysis.of(plan, book.locality()), book, ANY_DAY)
                .findings()) {
            if (finding.outcome() == Outcome.CANNOT_TELL) {
                open.merge(finding.check(), 1L, Long::sum);
            }
        }
        return open;
    }
}
