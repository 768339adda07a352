package org.fallrule.rulebook;

import java.time.LocalDate;
import java.util.List;
import org.fallrule.document.Node;

/**
 * The rules that apply, and what each book wrote of them.
 *
 * @param book the rules as they apply
 * @param day the day on which they do
 * @param histories what each book wrote of each rule, in the order of the books; dropped rules too
 * @param pages the books as written, the lowest first
 */
public record LayeredBook(RuleBook book, LocalDate day, List<RuleHistory> histories, List<Page> pages) {

    public LayeredBook {
        histories = List.copyOf(histories);
        pages = List.copyOf(pages);
    }

    /**
     * A book as written.
     *
     * @param source which book
     * @param layer {@code baseline}, {@code county} or {@code house}
     * @param inForce when it is in force
     * @param place what it says of the place, under its own keys, such as {@code climate}
     */
    public record Page(RuleBook.Source source, String layer, InForce inForce, Node.Mapping place) {}
}
