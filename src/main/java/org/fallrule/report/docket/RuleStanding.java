package org.fallrule.report.docket;

import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;

/**
 * How one plan stands to one rule.
 *
 * @param rule the rule's id
 * @param title what it asks
 * @param weight what hangs on it
 * @param outcome the outcome of its findings that needs a person most
 * @param findings how many of its findings have that outcome
 */
public record RuleStanding(String rule, String title, Weight weight, Outcome outcome, int findings) {
    /** Whether a person has to look at it. */
    public boolean isOpen() {
        return outcome.isOpen();
    }

    /** Whether this fails the plan. */
    public boolean failsPlan() {
        return outcome == Outcome.FAILS && weight == Weight.MUST;
    }
}
