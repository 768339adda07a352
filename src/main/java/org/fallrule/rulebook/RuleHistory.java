package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/**
 * What each book wrote of a rule, the lowest first.
 *
 * @param id the rule's id
 * @param entries one for each book that speaks of it
 */
public record RuleHistory(String id, List<Entry> entries) {

    public RuleHistory {
        entries = List.copyOf(entries);
    }

    /** What became of what a book wrote of a rule. */
    public enum Fate {
        /** Its keys are laid over those below. */
        LAID,
        /** It takes the rule away. */
        DROPS,
        /** It is not in force on the day asked about. */
        NOT_IN_FORCE
    }

    /**
     * What one book wrote of a rule.
     *
     * @param book the book's path as the user knows it
     * @param place where the rule's id stands
     * @param keys its keys
     * @param fate what became of it
     * @param inForce when it is in force
     */
    public record Entry(String book, Place place, Node.Mapping keys, Fate fate, InForce inForce) {
        /** The text under a key that holds a single value. */
        public Optional<String> text(String key) {
            return keys.get(key)
                    .filter(Node.Scalar.class::isInstance)
                    .map(node -> ((Node.Scalar) node).text())
                    .filter(text -> !text.isBlank());
        }
    }

    /** The entry that takes the rule away, if the last one in force does. */
    public Optional<Entry> dropped() {
        return entries.stream()
                .filter(entry -> entry.fate() != Fate.NOT_IN_FORCE)
                .reduce((one, later) -> later)
                .filter(entry -> entry.fate() == Fate.DROPS);
    }

    /** The entries that hold a key and count, the lowest first; the last is what applies, the others it overrode. */
    public List<Entry> of(String key) {
        List<Entry> holding = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.fate() == Fate.DROPS) {
                holding.clear();
            } else if (entry.fate() == Fate.LAID && entry.keys().get(key).isPresent()) {
                holding.add(entry);
            }
        }
        return holding;
    }

    RuleHistory and(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new RuleHistory(id, more);
    }
}
