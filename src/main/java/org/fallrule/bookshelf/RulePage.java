package org.fallrule.bookshelf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Node;
import org.fallrule.rulebook.RuleHistory;

/**
 * A rule as a person asks after it: every value with the line that set it, and what that overrode.
 *
 * @param id the rule's id
 * @param title what it asks; its id when it was dropped before it had one
 * @param dropped who dropped it and why
 * @param keys its keys in the order of the books
 * @param asleep what is written of it and is not in force
 */
record RulePage(
        String id, String title, Optional<RuleHistory.Entry> dropped, List<Key> keys, List<RuleHistory.Entry> asleep) {
    /** Keys that a page says elsewhere, or that say only when something counts. */
    private static final Set<String> ELSEWHERE = Set.of("title", "effective", "drop", "reason");

    /**
     * A key of a rule.
     *
     * @param name the key
     * @param now what stands under it
     * @param was what that overrode, the latest first
     */
    record Key(String name, Node now, List<Node> was) {}

    static RulePage of(RuleHistory history) {
        Set<String> names = new LinkedHashSet<>();
        String title = history.id();
        for (RuleHistory.Entry entry : history.entries()) {
            names.addAll(entry.keys().entries().keySet());
            title = entry.text("title").orElse(title);
        }
        names.removeAll(ELSEWHERE);
        List<Key> keys = new ArrayList<>();
        for (String name : names) {
            List<Node> written = new ArrayList<>(history.of(name).stream()
                    .map(entry -> entry.keys().get(name).orElseThrow())
                    .toList());
            if (!written.isEmpty()) {
                Collections.reverse(written);
                keys.add(new Key(name, written.get(0), written.subList(1, written.size())));
            }
        }
        return new RulePage(
                history.id(),
                title,
                history.dropped(),
                List.copyOf(keys),
                history.entries().stream()
                        .filter(entry -> entry.fate() == RuleHistory.Fate.NOT_IN_FORCE)
                        .toList());
    }

    /** Whether the rule applies. */
    boolean applies() {
        return dropped.isEmpty() && !keys.isEmpty();
    }

    Optional<Node> now(String key) {
        return keys.stream()
                .filter(each -> each.name().equals(key))
                .map(Key::now)
                .findFirst();
    }
}
