package org.fallrule.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Limits;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;

/** A folder of rule books for a test, shown as {@code rules}. */
final class Books {
    private final Path folder;

    Books(Path folder) {
        this.folder = folder;
    }

    /** Writes a book; its first line is the title, so that the given text starts in line 2. */
    Books with(String path, String text) {
        try {
            Path file = folder.resolve(path);
            Files.createDirectories(file.getParent());
            Files.writeString(file, "title: " + path + "\n" + text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    RuleLibrary library() {
        return new RuleLibrary(folder, "rules");
    }

    /** The county {@code c} and the house {@code h}. */
    RuleBook house() {
        return library().load("c", Optional.of("h"));
    }

    /** The county {@code c}. */
    RuleBook county() {
        return library().load("c", Optional.empty());
    }

    List<String> faultsOfCounty() {
        return faults(Optional.empty());
    }

    List<String> faultsOfHouse() {
        return faults(Optional.of("h"));
    }

    private List<String> faults(Optional<String> house) {
        try {
            library().load("c", house);
            return List.of();
        } catch (UnusableInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }

    static Rule rule(RuleBook book, String id) {
        return book.rules().stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Each case of a limit with its condition, and the line that set it: {@code 5 ft [rules/counties/c.yaml:7]}. */
    static List<String> cases(RuleBook book, String id, String parameter) {
        return limits(rule(book, id), parameter).cases().stream()
                .map(each -> (each.when().isAlways() ? "" : each.when().text() + ": ")
                        + each.limit().map(limit -> limit.value().text()).orElse("none") + " ["
                        + each.setBy().fileAndLine() + "]")
                .toList();
    }

    static Limits limits(Rule rule, String parameter) {
        return rule.check().parameters().stream()
                .filter(each -> each.name().equals(parameter))
                .map(each -> (Limits) rule.terms().find(each).orElseThrow())
                .findFirst()
                .orElseThrow();
    }
}
