package org.fallrule.rulebook;

import java.util.List;
import java.util.function.Predicate;
import org.fallrule.document.Fault;
import org.fallrule.locality.Locality;

/**
 * The rules that apply to a plan.
 *
 * @param books the books laid over each other, the lowest first
 * @param locality what they say of the place
 * @param rules the rules in the order of the books
 * @param notices what a reader of a report should know of the books: what is not yet or no longer in force
 * @param checklist what a submittal is looked over for, in the order of the books
 * @param asBuilt how far the work as built may lie from its design
 */
public record RuleBook(
        List<Source> books,
        Locality locality,
        List<Rule> rules,
        List<Fault> notices,
        List<ChecklistItem> checklist,
        AsBuiltTolerances asBuilt) {

    public RuleBook {
        books = List.copyOf(books);
        rules = List.copyOf(rules);
        notices = List.copyOf(notices);
        checklist = List.copyOf(checklist);
    }

    /** Rules that say nothing of the work as built. */
    public RuleBook(
            List<Source> books,
            Locality locality,
            List<Rule> rules,
            List<Fault> notices,
            List<ChecklistItem> checklist) {
        this(books, locality, rules, notices, checklist, AsBuiltTolerances.UNSAID);
    }

    /** Rules that are all in force, without a checklist. */
    public RuleBook(List<Source> books, Locality locality, List<Rule> rules) {
        this(books, locality, rules, List.of(), List.of());
    }

    /** The same books with some of the rules alone. */
    public RuleBook only(Predicate<Rule> which) {
        return new RuleBook(books, locality, rules.stream().filter(which).toList(), notices, checklist, asBuilt);
    }

    /**
     * A book that went into it.
     *
     * @param file its path as the user knows it
     * @param title its title
     * @param sha256 the digest of its bytes
     */
    public record Source(String file, String title, String sha256) {}
}
