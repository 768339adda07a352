package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeysTest {
    private final List<Fault> faults = new ArrayList<>();

    private Keys keys(String yaml) {
        return new Keys(Yaml.parse(yaml, "a.yaml"), faults);
    }

    private List<String> faults() {
        return faults.stream().map(Fault::toString).toList();
    }

    @Test
    void everyKeyThatNobodyAskedForIsRefusedWithTheNearestKnownOne() {
        Keys keys = keys("at_leest: 5 ft\ncheck: slope\nzzz: 1\n");
        keys.text("check");
        keys.text("at_least");
        keys.refuseOthers("a rule");

        assertThat(faults())
                .containsExactly(
                        "a.yaml:1:1: unknown key at_leest in a rule; did you mean at_least? Known: check, at_least",
                        "a.yaml:3:1: unknown key zzz in a rule. Known: check, at_least");
    }

    @Test
    void aListWhereASingleValueIsWantedIsAFault() {
        assertThat(keys("a: [1, 2]").text("a")).isEmpty();
        assertThat(keys("a: {b: 1}").scalar("a")).isEmpty();
        assertThat(faults())
                .containsExactly(
                        "a.yaml:1:4: a: found a list, wanted a single value",
                        "a.yaml:1:4: a: found keys with values, wanted a single value");
    }

    @Test
    void aSingleValueWhereKeysAreWantedIsAFault() {
        assertThat(keys("a: 1").mapping("a")).isEmpty();
        assertThat(faults()).containsExactly("a.yaml:1:4: a: found \"1\", wanted keys with values");
    }

    @ParameterizedTest
    @ValueSource(strings = {"b: 1", "a:\nb: 1", "a: ~\nb: 1", "a: ''\nb: 1", "a: '  '\nb: 1"})
    void aRequiredKeyThatSaysNothingIsMissing(String yaml) {
        assertThat(keys(yaml).required("a", "a reason")).isEmpty();
        assertThat(faults()).containsExactly("a.yaml:1:1: the key a is missing; give a reason");
    }

    @Test
    void aRequiredKeyOfTheWrongKindIsOneFaultAndNotTwo() {
        assertThat(keys("a: [1]").required("a", "a reason")).isEmpty();
        assertThat(faults()).containsExactly("a.yaml:1:4: a: found a list, wanted a single value");
    }

    @Test
    void aSingleValueStandsForAListOfOne() {
        assertThat(keys("a: x").scalars("a")).extracting(Node.Scalar::text).containsExactly("x");
        assertThat(keys("a: [x, y]").scalars("a")).extracting(Node.Scalar::text).containsExactly("x", "y");
        assertThat(keys("b: 1").scalars("a")).isEmpty();
        assertThat(faults).isEmpty();
    }

    @Test
    void aListOfWordsHoldsNeitherListsNorNothing() {
        assertThat(keys("a: [x, [y], ~]").scalars("a"))
                .extracting(Node.Scalar::text)
                .containsExactly("x");
        assertThat(faults())
                .containsExactly(
                        "a.yaml:1:8: a: found a list, wanted single values",
                        "a.yaml:1:13: a: found nothing, wanted single values");
    }

    @Test
    void aTableOfWordsKeepsItsOrderAndRefusesWhatIsNoWord() {
        assertThat(keys("fields: {kind: UTIL, depth: COVER, x: [1]}").texts("fields"))
                .containsOnlyKeys("kind", "depth");
        assertThat(faults()).containsExactly("a.yaml:1:39: fields: x: found a list, wanted a single value");
    }

    @Test
    void aPageOfTextIsNotRepeatedInAMessage() {
        keys("a: " + "x".repeat(50_000)).mapping("a");
        keys("? " + "y".repeat(50_000) + "\n: 1").refuseOthers("a rule");

        assertThat(faults()).allSatisfy(fault -> assertThat(fault).hasSizeLessThan(300));
    }

    @Test
    void entriesLaidOverOthersBringTheirPlaces() {
        Node.Mapping under = Yaml.parse("a: 1\nb: 2\n", "under.yaml");
        Node.Mapping over = Yaml.parse("# later\nb: 3\nc: 4\n", "over.yaml");
        Node.Mapping both = under.overlaid(over);

        assertThat(both.entries().keySet()).containsExactly("a", "b", "c");
        assertThat(both.placeOf("a")).hasToString("under.yaml:1:1");
        assertThat(both.placeOf("b")).hasToString("over.yaml:2:1");
        assertThat(both.get("b").orElseThrow().place()).hasToString("over.yaml:2:4");
        assertThat(both.placeOf("nobody")).hasToString("under.yaml:1:1");
    }
}
