package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules of two counties, here c and d, for a lot that lies in both. */
@SuppressWarnings("NullAway") // what is missing fails the test
class StricterBookTest {
    @TempDir
    Path folder;

    private RuleBook both(String c, String d) {
        RuleLibrary library = new Books(folder)
                .with("counties/c.yaml", c)
                .with("counties/d.yaml", d)
                .library();
        return StricterBook.of(
                "c",
                library.load("c", Optional.empty()),
                "d",
                library.load("d", Optional.empty()),
                Place.of("counties.geojson"));
    }

    private static String rule(String id, String limit, String weight) {
        return "  " + id + ": {title: x, check: clearance, from: outfall, to: walk, " + limit + ", weight: " + weight
                + ", basis: {kind: practice}}\n";
    }

    private static List<String> notices(RuleBook book) {
        return book.notices().stream().map(Fault::toString).toList();
    }

    @Test
    void ofARuleThatBothHaveTheStricterIsTakenWhicheverCountyHasIt() {
        RuleBook book = both(
                "rules:\n" + rule("a", "at_least: 5 ft", "must") + rule("b", "at_least: 9 ft", "must"),
                "rules:\n" + rule("a", "at_least: 6 ft", "must") + rule("b", "at_least: 8 ft", "must"));

        assertThat(Books.cases(book, "a", "at_least")).containsExactly("6 ft [rules/counties/d.yaml:3]");
        assertThat(Books.cases(book, "b", "at_least")).containsExactly("9 ft [rules/counties/c.yaml:4]");
        assertThat(book.rules()).hasSize(2);
        assertThat(notices(book))
                .containsExactly(
                        "counties.geojson: d asks more than c, and its word is taken on: a",
                        "counties.geojson: c asks more than d, and its word is taken on: b");
    }

    @Test
    void theSameLimitInAnotherUnitIsNoneTheStricterAndNothingIsSaid() {
        RuleBook book = both(
                "rules:\n" + rule("a", "at_least: 5 ft", "must"), "rules:\n" + rule("a", "at_least: 60 in", "must"));

        assertThat(book.rules()).hasSize(1);
        assertThat(book.notices()).isEmpty();
    }

    @Test
    void aRuleThatOneCountyAloneHasIsAsked() {
        RuleBook book = both(
                "rules:\n" + rule("a", "at_least: 5 ft", "must"), "rules:\n" + rule("b", "at_least: 5 ft", "must"));

        assertThat(book.rules()).extracting(Rule::id).containsExactly("a", "b");
        assertThat(notices(book))
                .containsExactly("counties.geojson: asked by c only: a", "counties.geojson: asked by d only: b");
    }

    @Test
    void whereNeitherIsTheStricterThePlanIsHeldToBothAndEachSaysWhoseItIs() {
        RuleBook book = both(
                "rules:\n" + rule("a", "at_least: 5 ft", "must"), "rules:\n" + rule("a", "at_least: 8 ft", "should"));

        assertThat(book.rules()).extracting(Rule::title).containsExactly("x (c)", "x (d)");
        assertThat(book.rules()).extracting(Rule::id).containsExactly("a", "a");
        assertThat(notices(book))
                .containsExactly(
                        "counties.geojson: neither county asks more in every case, and the plan is held to both: a");
    }

    @Test
    void anotherSelectionIsNeverTakenForTheStricter() {
        RuleBook book = both(
                "rules:\n" + rule("a", "at_least: 5 ft", "must"),
                "rules:\n" + rule("a", "to_where: \"access = 'public'\", at_least: 9 ft", "must"));

        assertThat(book.rules()).hasSize(2);
    }

    @Test
    void theBaselineUnderBothIsNamedAndAskedOnce() {
        new Books(folder).with("baseline.yaml", "rules:\n" + rule("a", "at_least: 5 ft", "must"));
        RuleBook book = both("builds_on: ../baseline.yaml\n", "builds_on: ../baseline.yaml\n");

        assertThat(book.books())
                .extracting(RuleBook.Source::file)
                .containsExactly("rules/baseline.yaml", "rules/counties/c.yaml", "rules/counties/d.yaml");
        assertThat(book.rules()).hasSize(1);
        assertThat(book.notices()).isEmpty();
    }

    @Test
    void ofThePlaceTheWorseIsTaken() {
        RuleBook book = both("""
                climate: {freezing: false, frost_depth: 6 in}
                mark_accuracy:
                  D: {horizontal: 2 ft, vertical: 1 ft, basis: {kind: practice}}
                expected_cover:
                  gas: {from: 12 in, to: 30 in, basis: {kind: practice}}
                runoff: {roof: 0.90, basis: {kind: practice}}
                """, """
                climate: {freezing: true, frost_depth: 30 in}
                mark_accuracy:
                  D: {horizontal: 3 ft, basis: {kind: practice}}
                expected_cover:
                  gas: {from: 18 in, to: 36 in, basis: {kind: practice}}
                runoff: {roof: 0.95, basis: {kind: practice}}
                """);

        var place = book.locality();
        assertThat(place.climate().freezing()).contains(true);
        assertThat(place.climate().frostDepth().orElseThrow().text()).isEqualTo("30 in");
        var known = place.markAccuracy().of(Optional.of("D")).orElseThrow();
        assertThat(known.horizontal().orElseThrow().text()).isEqualTo("3 ft");
        assertThat(known.vertical()).as("no figure is the worst").isEmpty();
        var gas = place.expectedCover().of(Optional.of("gas")).orElseThrow().usual();
        assertThat(List.of(gas.from().metres(), gas.to().metres())).containsExactly(12 * 0.0254, 36 * 0.0254);
        assertThat(place.runoff()
                        .surfaces()
                        .get("roof")
                        .cases()
                        .get(0)
                        .is()
                        .value()
                        .si())
                .isEqualTo(0.95);
        assertThat(book.notices()).isEmpty();
    }

    @Test
    void underASurfaceThatOneCountyAloneSpeaksOfTheUsualCoverOfTheOtherCountsToo() {
        RuleBook book = both("""
                expected_cover:
                  gas: {from: 12 in, to: 30 in, under: {walk: {from: 18 in, to: 24 in}}, basis: {kind: practice}}
                """, """
                expected_cover:
                  gas: {from: 10 in, to: 28 in, under: {drive: {from: 24 in, to: 48 in}}, basis: {kind: practice}}
                  storm: {from: 36 in, to: 60 in, basis: {kind: practice}}
                """);
        var gas = book.locality().expectedCover().of(Optional.of("gas")).orElseThrow();

        assertThat(inches(gas.usual())).isEqualTo("10 to 30");
        assertThat(inches(gas.under(Optional.of("walk")))).isEqualTo("10 to 28");
        assertThat(inches(gas.under(Optional.of("drive")))).isEqualTo("12 to 48");
        assertThat(inches(book.locality()
                        .expectedCover()
                        .of(Optional.of("storm"))
                        .orElseThrow()
                        .usual()))
                .isEqualTo("36 to 60");
    }

    private static String inches(ExpectedCover.Band band) {
        return Math.round(band.from().in(Unit.INCH)) + " to "
                + Math.round(band.to().in(Unit.INCH));
    }

    @Test
    void whatOneCountyAloneSaysOfItsClimateIsTaken() {
        var climate = both("climate: {soil: clay}\n", "climate: {freezing: false, frost_depth: 6 in}\n")
                .locality()
                .climate();

        assertThat(climate.soil()).contains("clay");
        assertThat(climate.freezing()).contains(false);
        assertThat(climate.frostDepth().orElseThrow().text()).isEqualTo("6 in");
    }

    @Test
    void theHigherOfTwoRunoffCoefficientsIsTakenWhicheverCountyHasIt() {
        String runoff = "runoff: {lawn: %s, basis: {kind: practice}}\n";
        for (RuleBook book : List.of(
                both(String.format(runoff, 0.2), String.format(runoff, 0.3)),
                both(String.format(runoff, 0.3), String.format(runoff, 0.2)))) {
            assertThat(book.locality()
                            .runoff()
                            .surfaces()
                            .get("lawn")
                            .cases()
                            .get(0)
                            .is()
                            .value()
                            .si())
                    .isEqualTo(0.3);
        }
    }

    @Test
    void theHarderStormIsDesignedForAndWhoseItIsIsSaid() {
        String storm =
                "storm:\n  basis: {kind: practice}\n  return_period: 10 yr\n  intensity: [{minutes: 5, by: %s in/h}]\n";
        RuleBook book = both(String.format(storm, "5.8"), String.format(storm, "6.9"));

        assertThat(book.locality().storm().returnPeriod().orElseThrow().setBy().file())
                .isEqualTo("rules/counties/d.yaml");
        assertThat(notices(book))
                .containsExactly("counties.geojson: d asks more than c, and its word is taken on: storm");
    }

    @Test
    void whereNeitherIsTheWorseItIsLeftOpenAndSaid() {
        RuleBook book = both(
                "climate: {soil: sand}\nrunoff: {lawn: [{when: \"soil = 'sand'\", is: 0.1}, {is: 0.2}],"
                        + " basis: {kind: practice}}\n",
                "climate: {soil: clay}\nrunoff: {lawn: 0.15, basis: {kind: practice}}\n");

        assertThat(book.locality().climate().soil()).isEmpty();
        assertThat(book.locality().runoff().surfaces()).isEmpty();
        assertThat(notices(book)).singleElement().asString().endsWith("cannot be told: climate: soil, runoff: lawn");
    }

    @Test
    void whereNeitherFreezesTheLotDoesNot() {
        var climate = both("climate: {freezing: false}\n", "climate: {freezing: false}\n")
                .locality()
                .climate();

        assertThat(climate.freezing()).contains(false);
    }
}
