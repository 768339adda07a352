package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.docket.BooksInForce;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;

/** Rule books that are read once and again only when their files change. */
final class BooksAtHand {
    private final BookOptions options;
    private final RuleLibrary library;
    private final LocalDate day;
    private BooksInForce books;
    private FolderState read;

    BooksAtHand(BookOptions options, RuleLibrary library, LocalDate day) {
        this.options = options;
        this.library = library;
        this.day = day;
        this.books = options.inForce(library, day);
        this.read = FolderState.of(List.of(folder()));
    }

    /** The folder of rule books. */
    Path folder() {
        Path parent = library.baselineFile().toAbsolutePath().getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** The county or counties whose rules apply to a site. */
    Jurisdiction place(Site site) {
        return asTheyStand().place(site);
    }

    /** The books in force there. */
    RuleBook book(Jurisdiction place, Site site) {
        return asTheyStand().book(place, site);
    }

    private BooksInForce asTheyStand() {
        FolderState now = FolderState.of(List.of(folder()));
        if (!now.equals(read)) {
            books = options.inForce(library, day);
            read = now;
        }
        return books;
    }
}
