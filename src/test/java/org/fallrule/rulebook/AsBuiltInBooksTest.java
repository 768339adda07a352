package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.fallrule.finding.Weight;
import org.fallrule.rulebook.AsBuiltTolerances.Measure;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far books let the work as built lie from its design. */
class AsBuiltInBooksTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void baseline() {
        books = new Books(folder).with("baseline.yaml", """
                as_built:
                  invert: 0.1 ft
                  slope: 0.25 %
                  basis: {kind: practice}
                """).with("counties/c.yaml", "builds_on: ../baseline.yaml\n");
    }

    private static List<String> words(RuleBook book) {
        return book.asBuilt().byMeasure().entrySet().stream()
                .map(each ->
                        each.getKey().word() + " " + each.getValue().within().text() + " "
                                + each.getValue().weight().word() + " "
                                + each.getValue().setBy().fileAndLine())
                .toList();
    }

    @Test
    void aToleranceIsAdviceUnlessTheBookSaysMust() {
        assertThat(words(books.county()))
                .containsExactly(
                        "invert 0.1 ft should rules/baseline.yaml:3", "slope 0.25 % should rules/baseline.yaml:4");
    }

    @Test
    void aCountyChangesSingleKeysEitherWay() {
        books.with(
                "counties/c.yaml",
                "builds_on: ../baseline.yaml\nas_built: {invert: 0.2 ft, weight: must, basis: {kind: practice}}\n");

        assertThat(words(books.county()))
                .containsExactly(
                        "invert 0.2 ft must rules/counties/c.yaml:3", "slope 0.25 % should rules/baseline.yaml:4");
    }

    @Test
    void aHouseMayTightenWithoutSayingWhy() {
        books.with("house/h.yaml", "as_built: {invert: 1 in, basis: {kind: practice}}\n");

        assertThat(books.faultsOfHouse()).isEmpty();
        assertThat(books.house().asBuilt().of(Measure.INVERT).orElseThrow().weight())
                .isEqualTo(Weight.SHOULD);
    }

    @Test
    void aHouseMayKeepTheToleranceInAnotherUnit() {
        books.with("house/h.yaml", "as_built: {invert: 1.2 in, basis: {kind: practice}}\n");

        assertThat(books.faultsOfHouse()).isEmpty();
    }

    @Test
    void aHouseMayNotLoosenTheToleranceOrItsWeight() {
        books.with("house/h.yaml", "as_built: {invert: 2 in, basis: {kind: practice}}\n");
        assertThat(books.faultsOfHouse())
                .containsExactly("rules/house/h.yaml:2:12: as_built: invert of 2 in (should) is looser than 0.1 ft"
                        + " (should) in rules/baseline.yaml:3; a house book may only tighten");

        books.with(
                "counties/c.yaml",
                "builds_on: ../baseline.yaml\nas_built: {invert: 0.1 ft, weight: must, basis: {kind: practice}}\n");
        books.with("house/h.yaml", "as_built: {invert: 0.05 ft, basis: {kind: practice}}\n");
        assertThat(books.faultsOfHouse()).hasSize(1);
    }

    @Test
    void everyFaultIsSaidWithItsLine() {
        books.with("counties/c.yaml", """
                builds_on: ../baseline.yaml
                as_built:
                  invert: 0.1
                  slope: 0.1 ft
                  rim: -1 ft
                  crown: 1 ft
                  weight: note
                """);

        assertThat(books.faultsOfCounty())
                .hasSize(6)
                .anyMatch(fault -> fault.contains("as_built has no basis"))
                .anyMatch(fault -> fault.startsWith("rules/counties/c.yaml:4:") && fault.contains("unit"))
                .anyMatch(fault -> fault.startsWith("rules/counties/c.yaml:5:"))
                .anyMatch(fault -> fault.startsWith("rules/counties/c.yaml:6:") && fault.contains("negative"))
                .anyMatch(fault -> fault.startsWith("rules/counties/c.yaml:7:") && fault.contains("unknown key crown"))
                .anyMatch(fault ->
                        fault.startsWith("rules/counties/c.yaml:8:") && fault.contains("wanted must or should"));
    }

    private List<String> ofBothCounties() {
        RuleLibrary library = books.library();
        return words(StricterBook.of(
                "c",
                library.load("c", java.util.Optional.empty()),
                "d",
                library.load("d", java.util.Optional.empty()),
                org.fallrule.document.Place.of("counties.geojson")));
    }

    @Test
    void whatMustHoldInOneOfTwoCountiesIsNoMereAdviceInBoth() {
        books.with(
                "counties/c.yaml", "as_built: {invert: 0.2 ft, slope: 1 %, weight: must, basis: {kind: practice}}\n");
        books.with("counties/d.yaml", "as_built: {invert: 0.1 ft, slope: 1 %, basis: {kind: practice}}\n");

        assertThat(ofBothCounties())
                .containsExactly(
                        "invert 0.1 ft must rules/counties/d.yaml:2", "slope 1 % must rules/counties/c.yaml:2");
    }

    @Test
    void ofTwoCountiesTheTighterToleranceIsTaken() {
        books.with("counties/d.yaml", "as_built: {invert: 0.05 ft, rim: 0.1 ft, basis: {kind: practice}}\n");

        assertThat(ofBothCounties())
                .containsExactly(
                        "invert 0.05 ft should rules/counties/d.yaml:2",
                        "rim 0.1 ft should rules/counties/d.yaml:2",
                        "slope 0.25 % should rules/baseline.yaml:4");
    }
}
