package org.fallrule.bookshelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.LayeredBook;
import org.fallrule.rulebook.RuleLibrary;

/** The counties and firms that have a book, as text of 80 columns. */
public final class BookList {
    private static final int WIDTH = 76;
    private static final String INVENTED = "(invented, for demonstration)";

    private final RuleLibrary library;
    private final LocalDate day;
    private final StringBuilder text = new StringBuilder();

    private BookList(RuleLibrary library, LocalDate day) {
        this.library = library;
        this.day = day;
    }

    public static String of(RuleLibrary library, LocalDate day) {
        BookList list = new BookList(library, day);
        list.section("Baseline", BookName.Kind.BASELINE);
        list.section("Counties", BookName.Kind.COUNTY);
        list.section("Firms", BookName.Kind.HOUSE);
        return list.text.toString();
    }

    private void section(String heading, BookName.Kind kind) {
        List<BookName> books = BookName.all(library).stream()
                .filter(book -> book.kind() == kind)
                .toList();
        text.append(heading).append('\n');
        if (books.isEmpty()) {
            text.append("  none\n");
        }
        books.forEach(this::book);
    }

    private void book(BookName name) {
        text.append("  ").append(name.name()).append('\n');
        try {
            LayeredBook book = name.kind() == BookName.Kind.COUNTY
                    ? library.open(name.name(), Optional.empty(), day)
                    : library.baseline(name.house(), day);
            LayeredBook.Page own = book.pages().get(book.pages().size() - 1);
            boolean invented = own.source().title().endsWith(INVENTED);
            line(own.source().title().replace(INVENTED, "").strip()
                    + (invented ? "  INVENTED, for demonstration" : ""));
            line(rules(name, book, own));
            if (book.pages().size() > 1 && name.kind() == BookName.Kind.COUNTY) {
                line("builds on "
                        + book.pages().get(book.pages().size() - 2).source().file());
            }
        } catch (UnusableInput e) {
            line("cannot be used: " + e.faults().size() + (e.faults().size() == 1 ? " fault" : " faults")
                    + ", see: fallrule rules verify " + name.name());
        }
    }

    private static String rules(BookName name, LayeredBook book, LayeredBook.Page own) {
        String file = own.source().file();
        long itsOwn = book.histories().stream()
                .flatMap(history -> history.entries().stream())
                .filter(entry -> entry.book().equals(file))
                .count();
        return name.kind() == BookName.Kind.COUNTY
                ? book.book().rules().size() + " rules apply, " + itsOwn + " of them set or changed here, dropped ones"
                        + " included"
                : itsOwn + " rules set or changed here";
    }

    private void line(String words) {
        Wrapped.lines(words, WIDTH)
                .forEach(each -> text.append("    ").append(each).append('\n'));
    }
}
