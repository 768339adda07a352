package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;

/** Rule books that are read once and again only when their files change. */
final class BooksAtHand {
    private final BookOptions options;
    private final RuleLibrary library;
    private final LocalDate day;
    private final Map<Asked, RuleBook> books = new HashMap<>();
    private FolderState read;

    BooksAtHand(BookOptions options, RuleLibrary library, LocalDate day) {
        this.options = options;
        this.library = library;
        this.day = day;
        this.read = FolderState.of(List.of(folder()));
    }

    private record Asked(Jurisdiction place, Optional<String> house) {}

    /** The folder of rule books. */
    Path folder() {
        Path parent = library.baselineFile().toAbsolutePath().getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** The county or counties whose rules apply to a site. */
    Jurisdiction place(Site site) {
        return options.place(site, library);
    }

    /** The books in force there. */
    RuleBook book(Jurisdiction place, Site site) {
        FolderState now = FolderState.of(List.of(folder()));
        if (!now.equals(read)) {
            books.clear();
            read = now;
        }
        Asked asked = new Asked(place, options.house(site));
        RuleBook known = books.get(asked);
        if (known != null) {
            return known;
        }
        RuleBook book = options.book(place, site, library, day);
        books.put(asked, book);
        return book;
    }
}
