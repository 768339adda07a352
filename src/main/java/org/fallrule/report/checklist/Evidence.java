package org.fallrule.report.checklist;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a plan has of something that is asked for.
 *
 * @param standing how it stands
 * @param says what was found
 * @param settledBy what would show it; empty when nothing is wanted
 */
record Evidence(Standing standing, String says, String settledBy) {
    private static final String BETWEEN = "; ";

    static Evidence shown(String says) {
        return new Evidence(Standing.SHOWN, says, "");
    }

    static Evidence missing(String says, String settledBy) {
        return new Evidence(Standing.MISSING, says, settledBy);
    }

    /** What several come to when each is wanted: what is open counts, and a part that is stated absent is enough. */
    static Evidence all(List<Evidence> parts) {
        for (Standing open : List.of(Standing.MISSING, Standing.TO_BE_SHOWN_BY_HAND)) {
            if (parts.stream().anyMatch(part -> part.standing() == open)) {
                return joined(open, parts, part -> part.standing() == open);
            }
        }
        boolean shown = parts.stream().anyMatch(part -> part.standing() == Standing.SHOWN);
        return joined(shown ? Standing.SHOWN : Standing.STATED_ABSENT, parts, part -> true);
    }

    /** What several come to when one is enough. */
    static Evidence any(List<Evidence> parts) {
        Standing best = parts.stream()
                .map(Evidence::standing)
                .min(Comparator.naturalOrder())
                .orElse(Standing.TO_BE_SHOWN_BY_HAND);
        return best == Standing.MISSING
                ? new Evidence(best, join(parts, Evidence::says, BETWEEN), join(parts, Evidence::settledBy, ", or "))
                : joined(best, parts, part -> part.standing() == best);
    }

    private static Evidence joined(Standing standing, List<Evidence> parts, Predicate<Evidence> counts) {
        List<Evidence> counted = parts.stream().filter(counts).toList();
        return new Evidence(
                standing, join(counted, Evidence::says, BETWEEN), join(counted, Evidence::settledBy, BETWEEN));
    }

    private static String join(List<Evidence> parts, Function<Evidence, String> words, String between) {
        return parts.stream()
                .map(words)
                .filter(text -> !text.isEmpty())
                .distinct()
                .collect(Collectors.joining(between));
    }
}
