package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a book says counts from the day on which it takes effect to the day on which it ends. */
class InForceTest {
    @TempDir
    Path folder;

    private static final String BASELINE = """
            rules:
              walk: {title: x, check: clearance, from: outfall, to: walk, at_least: 5 ft, weight: must,
                basis: {kind: practice}}
            """;

    private RuleBook on(String day, String county) {
        return new Books(folder)
                .with("baseline.yaml", BASELINE)
                .with("counties/c.yaml", "builds_on: ../baseline.yaml\n" + county)
                .library()
                .load("c", Optional.empty(), LocalDate.parse(day));
    }

    private static final String CHANGE = """
            rules:
              walk:
                at_least: 8 ft
                effective: {from: 2026-07-01, until: 2027-06-30}
                basis: {kind: practice}
            """;

    @ParameterizedTest
    @CsvSource({
        "2026-06-30, 5 ft",
        "2026-07-01, 8 ft",
        "2027-06-30, 8 ft",
        "2027-07-01, 5 ft",
    })
    void aChangeCountsFromItsFirstToItsLastDay(String day, String limit) {
        assertThat(Books.cases(on(day, CHANGE), "walk", "at_least"))
                .singleElement()
                .asString()
                .startsWith(limit + " ");
    }

    @Test
    void whatIsNotInForceIsSaid() {
        assertThat(on("2026-06-30", CHANGE).notices())
                .extracting(Fault::toString)
                .containsExactly("rules/counties/c.yaml:6:16: what this book says of the rule walk, which stays as it"
                        + " was, is in force from 2026-07-01 to 2027-06-30 and is not applied on 2026-06-30");
        assertThat(on("2026-07-01", CHANGE).notices()).isEmpty();
    }

    @Test
    void aWholeBookThatIsNotYetInForceIsSetAsideAndSaidOnce() {
        RuleBook book = on("2026-06-30", """
                effective: 2026-07-01
                climate: {freezing: true}
                rules:
                  walk: {at_least: 8 ft, basis: {kind: practice}}
                """);

        assertThat(Books.cases(book, "walk", "at_least"))
                .singleElement()
                .asString()
                .startsWith("5 ft");
        assertThat(book.locality().climate().freezing()).isEmpty();
        assertThat(book.notices()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "effective: soon | rules/counties/c.yaml:2:12: \"soon\" is not a date; write it like 2026-07-01",
                "effective: {from: 2026-07-01, until: 2026-06-30} | rules/counties/c.yaml:2:12: effective: ends on"
                        + " 2026-06-30, before it begins on 2026-07-01",
                "effective: {fromm: 2026-07-01} | rules/counties/c.yaml:2:13: unknown key fromm in effective; did you mean from?"
                        + " Known: from, until",
                "effective: [2026-07-01] | rules/counties/c.yaml:2:12: effective: found a list, wanted a day, or {from:"
                        + " day, until: day}",
            })
    void aDayThatCannotBeReadIsAFault(String key, String fault) {
        List<String> faults =
                new Books(folder).with("counties/c.yaml", key + "\n").faultsOfCounty();

        assertThat(faults).containsExactly(fault);
    }

    @Test
    void aHouseBookThatChangesThePlaceSaysWhy() {
        Books books = new Books(folder)
                .with("counties/c.yaml", "climate: {frost_depth: 30 in}\n")
                .with("house/h.yaml", "climate: {frost_depth: 6 in}\n");

        assertThat(books.faultsOfHouse()).singleElement().asString().contains("climate is the county's to say");

        books.with("house/h.yaml", "loosen_because: drained gravel\nclimate: {frost_depth: 6 in}\n");
        assertThat(books.faultsOfHouse()).isEmpty();
    }

    @Test
    void aLinkThatLeadsOutOfTheFolderIsRefused() throws java.io.IOException {
        Path outside = java.nio.file.Files.writeString(folder.resolve("secret.yaml"), "title: secret\n");
        Path rules = folder.resolve("rules");
        Books books = new Books(rules).with("counties/c.yaml", "builds_on: ../link.yaml\n");
        java.nio.file.Files.createSymbolicLink(rules.resolve("link.yaml"), outside);
        java.nio.file.Files.createSymbolicLink(rules.resolve("counties/d.yaml"), outside);

        assertThat(books.faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:12: rules/link.yaml is a link to a place outside of the rules"
                        + " folder rules; copy the book in");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> books.library().load("d", Optional.empty()))
                .hasMessageContaining("is a link to a place outside of the rules folder");
    }

    @Test
    void theDaysOnWhichBooksTurnAreTheirFirstAndTheDayAfterTheirLast() {
        RuleLibrary library = new Books(folder)
                .with("baseline.yaml", "effective: 2025-01-01\n" + BASELINE)
                .with("counties/c.yaml", "builds_on: ../baseline.yaml\n" + CHANGE)
                .library();

        assertThat(library.turns(Optional.of("c"), Optional.empty()))
                .containsExactly(
                        LocalDate.parse("2025-01-01"), LocalDate.parse("2026-07-01"), LocalDate.parse("2027-07-01"));
    }

    @Test
    void aFileBesideTheBooksIsFoundUnlessItIsALinkOutOfTheirFolder() throws java.io.IOException {
        Path rules = folder.resolve("rules");
        RuleLibrary library = new Books(rules)
                .with("counties/c.yaml", "")
                .with("places.yaml", "")
                .library();
        Path outside = java.nio.file.Files.writeString(folder.resolve("secret.yaml"), "title: secret\n");
        java.nio.file.Files.createSymbolicLink(rules.resolve("link.yaml"), outside);

        assertThat(library.file("places.yaml"))
                .hasValueSatisfying(file -> assertThat(file).endsWith(Path.of("places.yaml")));
        assertThat(library.file("nothing.yaml")).isEmpty();
        assertThat(library.file("counties")).isEmpty();
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> library.file("link.yaml"))
                .hasMessageContaining("is a link to a place outside of the rules");
    }
}
