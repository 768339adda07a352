package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fallrule.docket.BooksInForce;
import org.fallrule.rulebook.RuleLibrary;

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

    /** The books as their files are now. */
    BooksInForce asTheyStand() {
        FolderState now = FolderState.of(List.of(folder()));
        if (!now.equals(read)) {
            books = options.inForce(library, day);
            read = now;
        }
        return books;
    }
}
