package org.fallrule.report.docket;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;

/**
 * One rule over all plans of a docket.
 *
 * @param rule the rule's id
 * @param title what it asks, in the words of the first plan that it was held against
 * @param weight what hangs on it where most does
 * @param plans the number of plans by the outcome that needs a person most
 */
public record RuleTally(String rule, String title, Weight weight, Map<Outcome, Long> plans) {
    public RuleTally {
        EnumMap<Outcome, Long> sorted = new EnumMap<>(Outcome.class);
        sorted.putAll(plans);
        plans = Collections.unmodifiableMap(sorted);
    }

    /** The plans with an outcome. */
    public long plans(Outcome outcome) {
        return plans.getOrDefault(outcome, 0L);
    }

    /** The plans that it was held against. */
    public long all() {
        return plans.values().stream().mapToLong(Long::longValue).sum();
    }

    /** The plans in which a person has to look at it. */
    public long open() {
        return plans(Outcome.FAILS) + plans(Outcome.BORDERLINE) + plans(Outcome.CANNOT_TELL);
    }
}
