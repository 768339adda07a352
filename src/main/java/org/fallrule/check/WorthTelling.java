package org.fallrule.check;

import java.util.Comparator;
import java.util.List;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;

/** What is worth telling of several answers to one question. */
public final class WorthTelling {
    private WorthTelling() {}

    /** Every answer that does not meet the rule; where all do, the one that comes first alone. */
    public static List<Observation> of(List<Observation> seen, Comparator<Observation> order) {
        List<Observation> notMeeting =
                seen.stream().filter(each -> each.outcome() != Outcome.MEETS).toList();
        return notMeeting.isEmpty() ? seen.stream().min(order).stream().toList() : notMeeting;
    }
}
