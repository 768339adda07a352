package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.fallrule.check.Limits;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Books laid over each other key by key. */
class LayeringTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void baseline() {
        books = new Books(folder).with("baseline.yaml", """
                        rules:
                          walk:
                            title: Away from the walk
                            check: clearance
                            from: outfall
                            to: walk
                            to_where: "access LIKE 'pub%'"
                            at_least: 5 ft
                            weight: should
                            basis: {kind: practice}
                          slope:
                            title: Least slope
                            check: slope
                            at_least:
                              - {when: "diameter_in <= 2.5", is: 2 %}
                              - {is: 1 %}
                            weight: must
                            basis: {kind: model_code, document: a code, section: "1"}
                        """);
    }

    private Books county(String text) {
        return books.with("counties/c.yaml", "builds_on: ../baseline.yaml\n" + text);
    }

    /** A county that changes nothing, and a house book whose rules begin in line 3. */
    private Books house(String rules) {
        return county("").with("house/h.yaml", "rules:\n" + rules.indent(2));
    }

    @Test
    void aCountyThatSaysNothingTakesTheBaselineAsItIs() {
        RuleBook book = county("").county();

        assertThat(book.rules()).extracting(Rule::id).containsExactly("walk", "slope");
        assertThat(Books.cases(book, "walk", "at_least")).containsExactly("5 ft [rules/baseline.yaml:9]");
        assertThat(Books.cases(book, "slope", "at_least"))
                .containsExactly("diameter_in <= 2.5: 2 % [rules/baseline.yaml:16]", "1 % [rules/baseline.yaml:17]");
        assertThat(Books.rule(book, "walk").setBy()).hasToString("rules/baseline.yaml:3:3");
    }

    @Test
    void aLaterBookChangesSingleKeysAndEachValueRemembersTheLineThatSetIt() {
        RuleBook book = county("""
                        rules:
                          walk:
                            at_least: 10 ft
                            basis: {kind: ordinance, document: Code (invented), section: "4.2"}
                        """)
                .with("house/h.yaml", "rules: {walk: {weight: must}}\n")
                .house();
        Rule walk = Books.rule(book, "walk");

        assertThat(Books.cases(book, "walk", "at_least")).containsExactly("10 ft [rules/counties/c.yaml:5]");
        assertThat(walk.title()).isEqualTo("Away from the walk");
        assertThat(walk.weight()).isEqualTo(Weight.MUST);
        assertThat(walk.basis().kind()).isEqualTo(Basis.Kind.ORDINANCE);
        assertThat(walk.basis().statedAt().fileAndLine()).isEqualTo("rules/counties/c.yaml:6");
        assertThat(walk.setBy()).hasToString("rules/house/h.yaml:2:9");
    }

    @Test
    void aListOfLimitsIsReplacedAsAWhole() {
        RuleBook book = county("""
                        rules:
                          slope:
                            at_least:
                              - {when: "diameter_in < 4", is: none}
                              - {is: 0.5 %}
                            basis: {kind: practice}
                        """).county();

        assertThat(Books.cases(book, "slope", "at_least"))
                .containsExactly("diameter_in < 4: none [rules/counties/c.yaml:6]", "0.5 % [rules/counties/c.yaml:7]");
    }

    @Test
    void underTheLimitNoneNothingIsAsked() {
        RuleBook book = county("""
                        rules:
                          slope:
                            at_least: [{is: none}]
                            basis: {kind: practice}
                        """).county();

        assertThat(Books.limits(Books.rule(book, "slope"), "at_least").of(org.fallrule.site.Attributes.none()))
                .isEqualTo(new Limits.Answer.NotAsked());
    }

    @Test
    void aChangeOfWhatIsAskedNeedsABasisOfItsOwn() {
        assertThat(county("rules:\n  walk:\n    at_least: 6 ft\n").faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:4:3: rule walk is changed here but keeps the basis of"
                        + " rules/baseline.yaml:3; give the basis of the change");
        assertThat(county("rules:\n  walk:\n    at_least: 6 ft\n    basis: ~\n").faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:4:3: rule walk has no basis; give kind, document and section");
    }

    @Test
    void aChangeOfWeightOrTitleKeepsTheBasis() {
        assertThat(county("rules:\n  walk: {weight: note, title: Near the walk}\n")
                        .faultsOfCounty())
                .isEmpty();
    }

    @Test
    void aDroppedRuleIsGone() {
        assertThat(county("rules: {walk: {drop: true, reason: no walks here}}\n")
                        .county()
                        .rules())
                .extracting(Rule::id)
                .containsExactly("slope");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{drop: true} | 3:15: the key reason is missing; give why the rule walk is dropped",
                "{drop: true, reason: } | 3:15: the key reason is missing; give why the rule walk is dropped",
                "{drop: true, reason: ''} | 3:15: the key reason is missing; give why the rule walk is dropped",
                "{drop: true, reason: x, weight: must} | 3:39: unknown key weight in a dropped rule. Known: drop, reason,"
                        + " loosen_because, effective",
                "{drop: false} | 3:22: drop: found \"false\", wanted true; to keep the rule leave the key out",
                "{drop: yes} | 3:22: drop: found \"yes\", wanted true; to keep the rule leave the key out",
                "{drop: [true]} | 3:22: drop: found a list, wanted a single value",
            })
    void aRuleIsDroppedOnlyInSoManyWordsAndWithAReason(String rule, String fault) {
        assertThat(county("rules: {walk: " + rule + "}\n").faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:" + fault);
    }

    @Test
    void aMisspeltRuleIsRefusedWhetherDroppedOrChanged() {
        assertThat(county("rules: {wallk: {drop: true, reason: x}}\n").faultsOfCounty())
                .containsExactly(
                        "rules/counties/c.yaml:3:9: rule wallk is in none of the books below; did you mean walk?"
                                + " To mend it, drop a rule by the id that it has");
        assertThat(county("rules: {wallk: {weight: must}}\n").faultsOfCounty())
                .containsExactly(
                        "rules/counties/c.yaml:3:9: rule wallk is in none of the books below; did you mean walk?"
                                + " To mend it, give check, weight, title and basis if the rule is new");
    }

    @Test
    void aRuleThatTheCountyDroppedIsDroppedAgainWithoutHarmButCannotBeChanged() {
        county("rules: {walk: {drop: true, reason: no walks here}}\n")
                .with("house/h.yaml", "rules: {walk: {drop: true, reason: same}}\n");
        assertThat(books.faultsOfHouse()).isEmpty();

        books.with("house/h.yaml", "rules: {walk: {at_least: 9 ft, basis: {kind: practice}}}\n");
        assertThat(books.faultsOfHouse())
                .containsExactly(
                        "rules/house/h.yaml:2:9: rule walk was dropped in rules/counties/c.yaml:3. To mend it, give"
                                + " check, weight, title and basis if the rule is new");
    }

    @Test
    void aCountyMayLoosen() {
        assertThat(county("rules: {walk: {at_least: 1 ft, weight: note, basis: {kind: practice}}}\n")
                        .faultsOfCounty())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "walk: {at_least: 7 ft, basis: {kind: practice}}",
                "walk: {at_least: 60 in, basis: {kind: practice}}",
                "walk: {at_least: 1.524 m, basis: {kind: practice}}",
                "walk: {weight: must}",
                "walk: {title: Well away}",
                "walk: {at_least: [{when: \"kind = 'curb'\", is: 9 ft}, {is: 6 ft}], basis: {kind: practice}}",
                "slope: {at_least: 2 %, basis: {kind: practice}}",
                "slope: {at_least: [{when: \"diameter_in <= 2.5\", is: 2 %}, {is: 1.5 %}], basis: {kind: practice}}",
                "slope: {at_least: [{when: \"diameter_in<=2.5\", is: 3 %}, {is: 1 %}], basis: {kind: practice}}",
                "slope: {at_most: 20 %, basis: {kind: practice}}",
                "new: {title: x, check: slope, at_most: 9 %, weight: note, basis: {kind: practice}}",
            })
    void aHouseMayTighten(String rule) {
        assertThat(house(rule).faultsOfHouse()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "walk: {at_least: 4 ft | 3:20: rule walk at_least: 4 ft is looser than 5 ft in rules/baseline.yaml:9",
                "walk: {at_least: 1500 mm | 3:20: rule walk at_least: 1500 mm is looser than 5 ft in"
                        + " rules/baseline.yaml:9",
                "walk: {at_least: [{is: none}] | 3:21: rule walk at_least: none is looser than 5 ft in"
                        + " rules/baseline.yaml:9",
                "walk: {at_least: [{when: \"kind = 'curb'\", is: 9 ft}] | 3:21: rule walk at_least: none is looser than 5 ft"
                        + " in rules/baseline.yaml:9",
                "walk: {weight: note | 3:3: rule walk weighs less than the county's should",
                "walk: {to_where: \"access = 'private'\" | 3:3: rule walk changes to, which may loosen it",
                "walk: {to_where: ~ | 3:3: rule walk changes to, which may loosen it",
                "walk: {from: inlet | 3:3: rule walk changes from, which may loosen it",
                "slope: {at_least: 1 % | 3:21: rule slope at_least: 1 % is looser than 2 % when diameter_in <= 2.5 in"
                        + " rules/baseline.yaml:16",
                "slope: {at_least: [{when: \"diameter_in <= 2\", is: 2 %}, {is: 1 %}] | 3:59: rule slope at_least: 1 % is"
                        + " looser than 2 % when diameter_in <= 2.5 in rules/baseline.yaml:16",
                "slope: {at_least: [{when: \"diameter_in <= 2.5\", is: 2 %}] | 3:22: rule slope at_least: none is looser"
                        + " than 1 % in rules/baseline.yaml:17",
                "slope: {at_least: ~, at_most: 9 % | 3:3: rule slope changes at_least, which may loosen it",
            })
    void aHouseMayNotLoosenWithoutSayingWhy(String rule, String fault) {
        String basis = rule.contains("weight") ? "}" : ", basis: {kind: practice}}";

        assertThat(house(rule + basis).faultsOfHouse())
                .containsExactly("rules/house/h.yaml:" + fault
                        + "; a house book may only tighten, or say loosen_because: \"…\"");
        assertThat(house(rule + ", loosen_because: we stand for it" + basis).faultsOfHouse())
                .isEmpty();
        assertThat(house(rule + ", loosen_because: ''" + basis).faultsOfHouse()).isNotEmpty();
        assertThat(house(rule + ", loosen_because: ~" + basis).faultsOfHouse()).isNotEmpty();
    }

    @Test
    void aStretchOfItsOwnWhereTheCountyLooksAlongTheWholeWayLoosens() {
        String way = "way: {title: x, check: flow_path, from: outfall, to: walk, until: street, weight: must,"
                + " basis: {kind: practice}}";
        county("rules: {" + way + "}\n")
                .with("house/h.yaml", "rules: {way: {within: 90 ft, basis: {kind: practice}}}\n");

        assertThat(books.faultsOfHouse())
                .containsExactly(
                        "rules/house/h.yaml:2:9: rule way changes within, which may loosen it; a house book may"
                                + " only tighten, or say loosen_because: \"…\"");
    }

    @Test
    void aHouseMayNotPutCasesInAnotherOrderWhereMoreThanOneCouldHold() {
        county("""
                rules:
                  slope:
                    at_least:
                      - {when: "material = 'abs'", is: 3 %}
                      - {when: "diameter_in > 6", is: 1 %}
                      - {is: 1 %}
                    basis: {kind: practice}
                """).with("house/h.yaml", """
                rules:
                  slope:
                    at_least:
                      - {when: "diameter_in > 6", is: 1 %}
                      - {when: "material = 'abs'", is: 3 %}
                      - {is: 1 %}
                    basis: {kind: practice}
                """);

        assertThat(books.faultsOfHouse())
                .containsExactly(
                        "rules/house/h.yaml:5:9: rule slope at_least: 1 % when diameter_in > 6 is looser than 3 %"
                                + " when material = 'abs' in rules/counties/c.yaml:6; a house book may only tighten, or say"
                                + " loosen_because: \"…\"");
    }

    @Test
    void aHouseDropsARuleOnlyWhereItSaysWhyItLoosens() {
        assertThat(house("walk: {drop: true, reason: x}").faultsOfHouse())
                .containsExactly("rules/house/h.yaml:3:3: rule walk is dropped; a house book may only tighten, or say"
                        + " loosen_because: \"…\"");
        assertThat(house("walk: {drop: true, reason: x, loosen_because: y}").faultsOfHouse())
                .isEmpty();
    }

    @Test
    void aHouseMayNotPutAnotherCheckInTheRulesPlace() {
        assertThat(house("slope: {check: cover, at_least: 12 in, basis: {kind: practice}}")
                        .faultsOfHouse())
                .containsExactly(
                        "rules/house/h.yaml:3:3: rule slope uses another check than the county's; a house book may"
                                + " only tighten, or say loosen_because: \"…\"");
    }

    @Test
    void aHouseIsHeldAgainstWhatTheCountyMadeOfTheBaseline() {
        county("rules: {walk: {at_least: 10 ft, basis: {kind: practice}}}\n")
                .with("house/h.yaml", "rules: {walk: {at_least: 7 ft, basis: {kind: practice}}}\n");

        assertThat(books.faultsOfHouse())
                .singleElement()
                .asString()
                .contains("7 ft is looser than 10 ft in rules/counties/c.yaml:3");
    }

    @Test
    void theSameBooksGiveTheSameRulesInTheSameOrder() {
        house("walk: {at_least: 7 ft, basis: {kind: practice}}");
        List<String> first = books.house().rules().stream().map(Rule::id).toList();

        assertThat(first).containsExactly("walk", "slope");
        assertThat(books.house().rules()).extracting(Rule::id).isEqualTo(first);
        assertThat(Books.cases(books.house(), "walk", "at_least")).containsExactly("7 ft [rules/house/h.yaml:3]");
        assertThat(Books.rule(books.house(), "walk").setBy())
                .isEqualTo(Place.of("rules/house/h.yaml").at(3, 3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{horizontal: 3 ft, vertical: 1 ft} | ",
                "{horizontal: 2 ft, vertical: 1 ft} | ",
                "{horizontal: 2 ft} | ",
                "{horizontal: 1.9 ft, vertical: 1 ft} | mark_accuracy: a mark of quality B is taken as better known than in"
                        + " rules/counties/c.yaml:3; a house book may only take it as worse",
                "{horizontal: 2 ft, vertical: 0.9 ft} | mark_accuracy: a mark of quality B is taken as better known than in"
                        + " rules/counties/c.yaml:3; a house book may only take it as worse",
            })
    void aFirmMayTakeMarksOnlyAsWorseKnownThanTheCounty(String marks, @Nullable String refused) {
        String basis = "basis: {kind: practice}}";
        List<String> faults = new Books(folder)
                .with("counties/c.yaml", "mark_accuracy:\n  B: {horizontal: 2 ft, vertical: 1 ft, " + basis + "\n")
                .with("house/h.yaml", "mark_accuracy:\n  B: " + marks.replace("}", ", " + basis) + "\n")
                .faultsOfHouse();

        assertThat(faults).isEqualTo(refused == null ? List.of() : List.of("rules/house/h.yaml:3:3: " + refused));
    }

    @Test
    void withoutAFigureInPlanAMarkWouldBeTakenAsExactSoOneIsAskedFor() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "mark_accuracy:\n  B: {vertical: 1 ft, basis: {kind: practice}}\n")
                        .faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:3:6: the key horizontal is missing; give within how much of the"
                        + " mark the line lies in plan");
    }

    @Test
    void whereTheCountySaysNothingOfMarksAFirmMay() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "")
                        .with("house/h.yaml", "mark_accuracy:\n  D: {horizontal: 4 ft, basis: {kind: practice}}\n")
                        .faultsOfHouse())
                .isEmpty();
    }

    @Test
    void aWordThatIsNoneOfAParametersIsRefusedWithThoseThatAre() {
        assertThat(new Books(folder).with("counties/c.yaml", """
                        rules:
                          drain: {title: x, check: drain_down, at_most: 24 h, rates: textures, weight: must,
                            basis: {kind: practice}}
                        """).faultsOfCounty())
                .anySatisfy(fault -> assertThat(fault)
                        .startsWith("rules/counties/c.yaml:3:")
                        .contains("textures cannot stand here")
                        .contains("Known: "));
    }
}
