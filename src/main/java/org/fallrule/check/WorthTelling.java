package org.fallrule.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;

/** What is worth telling of several answers to one question. */
public final class WorthTelling {
    private WorthTelling() {}

    /** Every answer that does not meet the rule; where all do, the one that comes first alone. */
    public static List<Observation> of(List<Observation> seen, Comparator<Observation> order) {
        return notMeeting(seen)
                .orElseGet(() -> seen.stream().min(order).stream().toList());
    }

    /** Every answer that does not meet the rule; where all do, the first alone. */
    public static List<Observation> of(List<Observation> seen) {
        return notMeeting(seen).orElseGet(() -> seen.stream().limit(1).toList());
    }

    private static Optional<List<Observation>> notMeeting(List<Observation> seen) {
        return Optional.of(seen.stream()
                        .filter(each -> each.outcome() != Outcome.MEETS)
                        .toList())
                .filter(some -> !some.isEmpty());
    }
}
