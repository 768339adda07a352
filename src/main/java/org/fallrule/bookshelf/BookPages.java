package org.fallrule.bookshelf;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.LayeredBook;

/** The pages of the rules in a layered book. */
final class BookPages {
    private BookPages() {}

    /**
     * The page of each rule, or of the one that is asked for.
     *
     * @throws UnusableInput if no book speaks of it
     */
    static List<RulePage> rules(LayeredBook book, Optional<String> only) {
        List<RulePage> pages = book.histories().stream().map(RulePage::of).toList();
        if (only.isEmpty()) {
            return pages;
        }
        List<String> known = pages.stream().map(RulePage::id).toList();
        if (!known.contains(only.get())) {
            throw new UnusableInput(
                    Place.of("rule " + Excerpt.of(only.get())),
                    "no book here speaks of it" + Nearest.hint(only.get(), known) + " Known: "
                            + String.join(", ", known));
        }
        return pages.stream().filter(page -> page.id().equals(only.get())).toList();
    }
}
