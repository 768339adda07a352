package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;

/**
 * The plans of one run.
 *
 * @param entries the plans in the order in which they were given or found
 * @param notices what else a reader should know: folders left out, a site named twice, reports under another name
 * @param day the day that waivers and rule books were held against, such as {@code 2026-06-01}
 */
public record Docket(List<DocketEntry> entries, List<String> notices, String day) {
    public Docket {
        entries = List.copyOf(entries);
        notices = List.copyOf(notices);
    }

    /** The plans by what they need, the most failing findings first, then the most open, then in their order. */
    public List<DocketEntry> byNeed() {
        return entries.stream()
                .sorted(Comparator.comparing(DocketEntry::need)
                        .thenComparing(Comparator.comparingLong(DocketEntry::binding)
                                .thenComparingLong(DocketEntry::open)
                                .thenComparingLong(DocketEntry::advice)
                                .reversed()))
                .toList();
    }

    /** The number of plans by what they need; every need is there. */
    public Map<Need, Long> needs() {
        Map<Need, Long> needs = new EnumMap<>(Need.class);
        for (Need need : Need.values()) {
            needs.put(need, 0L);
        }
        entries.forEach(entry -> needs.merge(entry.need(), 1L, Long::sum));
        return needs;
    }

    /** Every rule that a plan was held against, in the order of the books. */
    public List<RuleTally> rules() {
        Map<String, RuleStanding> first = new LinkedHashMap<>();
        Map<String, Weight> weights = new HashMap<>();
        Map<String, Map<Outcome, Long>> plans = new LinkedHashMap<>();
        for (DocketEntry entry : entries) {
            for (RuleStanding standing : entry.standings()) {
                first.putIfAbsent(standing.rule(), standing);
                weights.merge(
                        standing.rule(), standing.weight(), (one, other) -> one.compareTo(other) < 0 ? one : other);
                plans.computeIfAbsent(standing.rule(), any -> new EnumMap<>(Outcome.class))
                        .merge(standing.outcome(), 1L, Long::sum);
            }
        }
        List<RuleTally> rules = new ArrayList<>();
        first.forEach((rule, standing) -> rules.add(new RuleTally(
                rule,
                standing.title(),
                weights.getOrDefault(rule, standing.weight()),
                plans.getOrDefault(rule, Map.of()))));
        return rules;
    }

    /** The rules that fail in a plan: those that fail in the most plans first, binding ones before advice. */
    public List<RuleTally> mostFailing() {
        return rules().stream()
                .filter(rule -> rule.plans(Outcome.FAILS) > 0 && rule.weight() != Weight.NOTE)
                .sorted(Comparator.comparingLong((RuleTally rule) -> -rule.plans(Outcome.FAILS))
                        .thenComparing(RuleTally::weight))
                .toList();
    }
}
