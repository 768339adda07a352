package org.fallrule.check.utility;

import org.fallrule.check.Selection;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Feature;

/** What is seen of a utility that may not be of the kind that a rule speaks of. */
final class OfKind {
    private OfKind() {}

    /** Where its kind is open, it matters only where it would not meet the rule. */
    static Observation settled(Observation seen, Selection from, Feature utility) {
        if (from.chooses(utility) == Truth.TRUE) {
            return seen;
        }
        return seen.outcome() == Outcome.MEETS
                ? seen.noting(from.lacking(utility).what() + " is not given, but it is far enough away")
                : seen.with(Outcome.CANNOT_TELL).lacking(from.lacking(utility));
    }
}
