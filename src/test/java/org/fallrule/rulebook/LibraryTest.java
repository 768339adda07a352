package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which books are found and built on each other. */
class LibraryTest {
    @TempDir
    Path outside;

    private Books books;

    @BeforeEach
    void folder() {
        books = new Books(outside.resolve("rules"));
    }

    @Test
    void booksAreListedInOrderAndExamplesAndHiddenFilesAreNone() throws IOException {
        books.with("counties/saltmeadow.yaml", "")
                .with("counties/larkmoor.yaml", "")
                .with("counties/larkmoor.examples.yaml", "")
                .with("counties/._larkmoor.yaml", "")
                .with("counties/notes.txt", "");

        assertThat(books.library().counties()).containsExactly("larkmoor", "saltmeadow");
        assertThat(books.library().houses()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "larkmor | larkmor.yaml here; did you mean larkmoor? Known: larkmoor, saltmeadow",
                "Larkmoor | Larkmoor.yaml here; did you mean larkmoor? Known: larkmoor, saltmeadow",
                "elsewhere | elsewhere.yaml here. Known: larkmoor, saltmeadow",
                "`` | .yaml here. Known: larkmoor, saltmeadow",
                "../counties/larkmoor | ../counties/larkmoor.yaml here. Known: larkmoor, saltmeadow",
                "../baseline | ../baseline.yaml here. Known: larkmoor, saltmeadow",
                "..\\baseline | ..\\baseline.yaml here. Known: larkmoor, saltmeadow",
                "/etc/passwd | /etc/passwd.yaml here. Known: larkmoor, saltmeadow",
                ".. | ...yaml here. Known: larkmoor, saltmeadow",
            })
    void aCountyThatHasNoBookIsRefusedWithTheNearestAndNeverLooksElsewhere(String name, String says) {
        books.with("baseline.yaml", "").with("counties/larkmoor.yaml", "").with("counties/saltmeadow.yaml", "");

        assertThatThrownBy(() -> books.library().load(name, Optional.empty()))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("rules/counties: there is no book " + says);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../counties/c", "nobody", "h/../h"})
    void aHouseThatHasNoBookIsRefused(String name) {
        books.with("counties/c.yaml", "").with("house/h.yaml", "");

        assertThatThrownBy(() -> books.library().load("c", Optional.of(name)))
                .hasMessage("rules/house: there is no book " + name + ".yaml here. Known: h");
    }

    @Test
    void whereThereAreNoBooksAtAllTheMessageSaysSo() {
        assertThatThrownBy(() -> books.library().load("c", Optional.empty()))
                .hasMessage("rules/counties: there is no book c.yaml here. Known: none");
    }

    @Test
    void aCountyBuildsOnAnotherAndTheBooksAreNamedFromTheLowest() {
        books.with("baseline.yaml", "climate: {freezing: true, soil: clay}\n")
                .with("counties/b.yaml", "builds_on: ../baseline.yaml\nclimate: {frost_depth: 30 in, soil: loam}\n")
                .with("counties/c.yaml", "builds_on: b.yaml\nclimate: {freezing: false}\n")
                .with("house/h.yaml", "");

        assertThat(books.house().books())
                .extracting(RuleBook.Source::file)
                .containsExactly(
                        "rules/baseline.yaml", "rules/counties/b.yaml", "rules/counties/c.yaml", "rules/house/h.yaml");
        assertThat(books.house().books().get(2).title()).isEqualTo("counties/c.yaml");
        assertThat(books.house().locality().climate().freezing()).contains(false);
        assertThat(books.house().locality().climate().soil()).contains("loam");
        assertThat(books.house().locality().climate().frostDepth().orElseThrow().text())
                .isEqualTo("30 in");
    }

    @Test
    void aBookIsKnownByTheDigestOfItsBytes() throws IOException {
        books.with("counties/c.yaml", "");
        String before = books.county().books().get(0).sha256();
        books.with("counties/c.yaml", "# a remark\n");

        assertThat(before).matches("[0-9a-f]{64}");
        books.with("counties/c.yaml", "# a remark\n");
        assertThat(books.county().books().get(0).sha256()).isNotEqualTo(before);
    }

    /** From {@code printf 'title: counties/c.yaml\n# \303\270\n' | sha256sum} of GNU coreutils. */
    @Test
    void theDigestIsThatOfTheBytesOfTheFile() {
        books.with("counties/c.yaml", "# \u00f8\n");

        assertThat(books.county().books().get(0).sha256())
                .isEqualTo("477808a562b2abe06b177da1280139fb1f1897d2a11fbf62511284e8ee20b6cb");
    }

    @Test
    void booksThatBuildOnEachOtherInACircleAreRefused() {
        books.with("counties/b.yaml", "builds_on: c.yaml\n").with("counties/c.yaml", "builds_on: b.yaml\n");

        assertThat(books.faultsOfCounty())
                .containsExactly(
                        "rules/counties/b.yaml:2:12: builds_on: rules/counties/c.yaml builds on itself; take one"
                                + " builds_on out of the circle");
    }

    @Test
    void aBookThatBuildsOnItselfIsRefused() {
        books.with("counties/c.yaml", "builds_on: ../counties/./c.yaml\n");

        assertThat(books.faultsOfCounty())
                .containsExactly(
                        "rules/counties/c.yaml:2:12: builds_on: rules/counties/c.yaml builds on itself; take one"
                                + " builds_on out of the circle");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "../../secret.yaml | \"../../secret.yaml\" lies outside of the rules folder rules; keep books inside",
                "/etc/hostname | \"/etc/hostname\" lies outside of the rules folder rules; keep books inside",
                "../nothing.yaml | there is no book rules/nothing.yaml; give its path from the folder of this book",
                ".. | there is no book rules/; give its path from the folder of this book",
                "\"a\\0b\" | \"a\0b\" is no path; give one such as ../baseline.yaml",
            })
    void aBookIsBuiltOnlyOnOneInsideTheFolder(String on, String says) throws IOException {
        Files.writeString(outside.resolve("secret.yaml"), "title: secret\n");
        books.with("counties/c.yaml", "builds_on: " + on + "\n");

        assertThat(books.faultsOfCounty()).containsExactly("rules/counties/c.yaml:2:12: builds_on: " + says);
    }

    @Test
    void aHouseBookBuildsOnNothing() {
        books.with("counties/c.yaml", "").with("house/h.yaml", "builds_on: ../counties/c.yaml\n");

        assertThat(books.faultsOfHouse())
                .containsExactly(
                        "rules/house/h.yaml:2:12: a house book is laid over whatever county is asked for; leave"
                                + " builds_on out");
    }
}
