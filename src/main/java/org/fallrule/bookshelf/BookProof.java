package org.fallrule.bookshelf;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.LayeredBook;
import org.fallrule.rulebook.RuleLibrary;

/**
 * Whether a rule book can be used and its examples come out as expected.
 *
 * @param file the book's path as the user knows it
 * @param rules how many rules apply with it, today
 * @param faults what is wrong with it or with its file of examples
 * @param examples how its examples came out
 */
public record BookProof(String file, int rules, List<Fault> faults, List<Example.Held> examples) {

    public BookProof {
        faults = List.copyOf(faults);
        examples = List.copyOf(examples);
    }

    /** Reads a book on a day and on every day on which a part of it begins or ends, and runs its examples. */
    public static BookProof of(RuleLibrary library, BookName name, LocalDate today) {
        return new Proving(library, name, today).proof();
    }

    public boolean usable() {
        return faults.isEmpty();
    }

    /** Whether every example came out as expected. */
    public boolean holds() {
        return examples.stream().allMatch(Example.Held::holds);
    }

    private static final class Proving {
        private final RuleLibrary library;
        private final BookName name;
        private final LocalDate today;
        private final Set<Fault> faults = new LinkedHashSet<>();
        private final Map<String, LayeredBook> opened = new LinkedHashMap<>();

        Proving(RuleLibrary library, BookName name, LocalDate today) {
            this.library = library;
            this.name = name;
            this.today = today;
        }

        BookProof proof() {
            Path file = name.path(library);
            int rules = 0;
            for (Optional<String> county : grounds()) {
                for (LocalDate day : days(county)) {
                    Optional<LayeredBook> book = open(county, day);
                    rules = Math.max(
                            rules, book.map(each -> each.book().rules().size()).orElse(0));
                }
            }
            Path beside = file.resolveSibling(name.name() + ".examples.yaml");
            List<Example.Held> held = Files.exists(beside) ? run(beside) : List.of();
            return new BookProof(library.shown(file), rules, List.copyOf(faults), held);
        }

        /** The counties that the book is read with: its own; for a firm's book every one. */
        private List<Optional<String>> grounds() {
            if (name.kind() == BookName.Kind.COUNTY) {
                return List.of(Optional.of(name.name()));
            }
            List<Optional<String>> grounds = new ArrayList<>();
            grounds.add(Optional.empty());
            if (name.kind() == BookName.Kind.HOUSE) {
                library.counties().forEach(county -> grounds.add(Optional.of(county)));
            }
            return grounds;
        }

        private Set<LocalDate> days(Optional<String> county) {
            Set<LocalDate> days = new TreeSet<>(Set.of(today));
            try {
                days.addAll(library.turns(county, name.house()));
            } catch (UnusableInput e) {
                faults.addAll(e.faults());
            }
            return days;
        }

        private Optional<LayeredBook> open(Optional<String> county, LocalDate day) {
            String key = county.orElse("") + " " + day;
            LayeredBook known = opened.get(key);
            if (known != null) {
                return Optional.of(known);
            }
            try {
                LayeredBook book = county.isPresent()
                        ? library.open(county.get(), name.house(), day)
                        : library.baseline(name.house(), day);
                opened.put(key, book);
                return Optional.of(book);
            } catch (UnusableInput e) {
                faults.addAll(e.faults());
                return Optional.empty();
            }
        }

        private List<Example.Held> run(Path beside) {
            try {
                return ExampleReader.read(beside, library.shown(beside)).stream()
                        .map(this::run)
                        .toList();
            } catch (UnusableInput e) {
                faults.addAll(e.faults());
                return List.of();
            }
        }

        private Example.Held run(Example example) {
            LocalDate day = example.day().orElse(today);
            Optional<String> county = name.kind() == BookName.Kind.COUNTY ? Optional.of(name.name()) : example.county();
            return open(county, day)
                    .map(book -> example.held(book.book(), day))
                    .orElseGet(() -> new Example.Held(
                            example.name(),
                            example.place(),
                            List.of(new Fault(example.place(), "not run, because its book has faults")),
                            Optional.empty()));
        }
    }
}
