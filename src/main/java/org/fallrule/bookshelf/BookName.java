package org.fallrule.bookshelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleLibrary;

/**
 * A book of a folder of rule books.
 *
 * @param kind which layer it is
 * @param name its name, without folder and ending
 */
public record BookName(Kind kind, String name) {
    private static final String ENDING = ".yaml";
    private static final BookName BASELINE = new BookName(Kind.BASELINE, "baseline");

    /** The layers. */
    public enum Kind {
        BASELINE,
        COUNTY,
        HOUSE
    }

    /** Every book, the baseline first. */
    public static List<BookName> all(RuleLibrary library) {
        List<BookName> all = new ArrayList<>();
        all.add(BASELINE);
        library.counties().forEach(name -> all.add(new BookName(Kind.COUNTY, name)));
        library.houses().forEach(name -> all.add(new BookName(Kind.HOUSE, name)));
        return all;
    }

    /** The book that a person means: {@code larkmoor}, {@code counties/larkmoor} or {@code rules/counties/larkmoor.yaml}. */
    public static BookName named(String word, RuleLibrary library) {
        String plain = word.replace('\\', '/');
        String stem = plain.substring(plain.lastIndexOf('/') + 1);
        String name = stem.endsWith(ENDING) ? stem.substring(0, stem.length() - ENDING.length()) : stem;
        boolean house = plain.contains("house/");
        List<BookName> all = all(library);
        return all.stream()
                .filter(book -> book.name.equals(name))
                .filter(book -> !house || book.kind == Kind.HOUSE)
                .findFirst()
                .orElseThrow(() ->
                        unknown(word, name, all.stream().map(BookName::name).toList()));
    }

    private static UnusableInput unknown(String word, String name, List<String> known) {
        return new UnusableInput(
                Place.of(Excerpt.of(word)),
                "there is no such book" + Nearest.hint(name, known) + " Known: " + String.join(", ", known));
    }

    /** The name of the firm, if this is a firm's book. */
    Optional<String> house() {
        return kind == Kind.HOUSE ? Optional.of(name) : Optional.empty();
    }

    Path path(RuleLibrary library) {
        return switch (kind) {
            case BASELINE -> library.baselineFile();
            case COUNTY -> library.countyFile(name);
            case HOUSE -> library.houseFile(name);
        };
    }
}
