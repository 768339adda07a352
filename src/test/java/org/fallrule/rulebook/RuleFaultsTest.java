package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with one rule is refused with file, line and column, and with what was wanted. */
class RuleFaultsTest {
    @TempDir
    Path folder;

    /** The faults of a book whose one rule measures from outfalls to walks; the given lines are 7 and on. */
    private List<String> faultsOf(String... lines) {
        return new Books(folder).with("counties/c.yaml", """
                        rules:
                          walk:
                            title: Away from the walk
                            check: clearance
                            from: outfall
                        """ + indented(lines)).faultsOfCounty();
    }

    private static String indented(String... lines) {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            text.append("    ").append(line).append('\n');
        }
        return text.toString();
    }

    private static final String TO = "to: walk";
    private static final String AT_LEAST = "at_least: 5 ft";
    private static final String MUST = "weight: must";
    private static final String PRACTICE = "basis: {kind: practice}";

    @Test
    void aWholeRuleHasNoFault() {
        assertThat(faultsOf(TO, AT_LEAST, MUST, PRACTICE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "at_least: 5 | 7:15: \"5\" has no unit; give a length with m, cm, mm, ft, ft_us or in, such as 18 in",
                "at_least: 5 % | 7:15: \"5 %\": \"%\" is not a unit of length; use m, cm, mm, ft, ft_us or in",
                "at_least: far | 7:15: \"far\" is not a number; give a length such as 18 in",
                "at_least: -5 ft | 7:15: \"-5 ft\" is negative; give zero or more",
                "at_least: {is: 5 ft} | 7:15: found keys with values, wanted a single value",
                "at_least: [] | 7:15: at_least: found an empty list, wanted a limit with its unit",
                "at_least: [5 ft] | 7:16: found \"5 ft\", wanted {when: condition, is: limit}",
                "at_least: [{is: 5}] | 7:21: \"5\" has no unit; give a length with m, cm, mm, ft, ft_us or in, such as"
                        + " 18 in",
                "at_least: [{is: -5 ft}] | 7:21: \"-5 ft\" is negative; give zero or more",
                "at_least: [{when: \"kind = 'curb'\"}] | 7:16: the key is is missing; give the limit with its unit, or"
                        + " none",
                "at_least: [{is: 5 ft, if: x}] | 7:27: unknown key if in a limit; did you mean is? Known: when, is",
                "at_least: [{is: 5 ft}, {when: \"kind = 'curb'\", is: 6 ft}] | 7:28: this can never apply, because line 7"
                        + " before it has no condition; put the one without a condition last",
                "at_least: [{when: [x], is: 5 ft}, {is: 6 ft}] | 7:23: when: found a list, wanted a single value",
            })
    void aLimitThatCannotBeHeldToIsRefused(String atLeast, String fault) {
        assertThat(faultsOf(atLeast, TO, MUST, PRACTICE)).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "to_where: \"acess = 'public'\" | 7:15: unknown attribute acess in the condition acess = 'public'; did you"
                        + " mean access? A quantity is named with its unit, such as diameter_in.",
                "to_where: \"diameter = 4\" | 7:15: unknown attribute diameter in the condition diameter = 4; did you mean"
                        + " diameter_m? A quantity is named with its unit, such as diameter_in.",
                "to_where: \"diameter_in = 4\" | 8:9: the condition diameter_in = 4: a walk has no diameter_in; it has [id,"
                        + " access, surface, width, horizontal_accuracy, vertical_accuracy]",
                "to_where: \"access = public\" | 7:15: the condition access = public wants a number, true, false or a text"
                        + " in single quotes on one side of each comparison; write it like diameter_in <= 6 AND material ="
                        + " 'pvc_sdr35'",
                "to_where: [x] | 7:15: to_where: found a list, wanted a single value",
            })
    void aConditionThatCannotBeTestedIsRefused(String where, String fault) {
        assertThat(faultsOf(where, TO, AT_LEAST, MUST, PRACTICE)).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @Test
    void severalNamesThatTheRoleLacksAreReportedInTheSameOrderEveryTime() {
        String where = "to_where: \"rim_ft > 1 AND own = true AND depth_in > 1 AND quality = 'A' AND top_ft > 1\"";
        for (int i = 0; i < 5; i++) {
            assertThat(faultsOf(where, TO, AT_LEAST, MUST, PRACTICE))
                    .extracting(fault -> fault.replaceAll(".*a walk has no (\\w+);.*", "$1"))
                    .containsExactly("depth_in", "own", "quality", "rim_ft", "top_ft");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "to: wlks | 7:9: to: wlks is not a role that can stand here. Known: lot, building, walk,",
                "to: walks | 7:9: to: walks is not a role that can stand here; did you mean walk? Known: lot, building,",
                "to: [walk] | 7:9: found a list, wanted a single value",
                "to: | 4:5: the key to is missing; give what is measured to",
            })
    void aRoleThatThereIsNotIsRefused(String to, String fault) {
        assertThat(faultsOf(to, AT_LEAST, MUST, PRACTICE))
                .singleElement()
                .asString()
                .startsWith("rules/counties/c.yaml:" + fault);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "weight: shall | 7:13: unknown weight shall; use must, should or note",
                "weight: | 4:5: the key weight is missing; give must, should or note",
                "weight: ['must'] | 7:13: weight: found a list, wanted a single value",
            })
    void aWeightThatThereIsNotIsRefused(String weight, String fault) {
        assertThat(faultsOf(weight, TO, AT_LEAST, PRACTICE)).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "basis: | 3:3: rule walk has no basis; give kind, document and section",
                "basis: practice | 7:12: basis: found \"practice\", wanted keys with values",
                "basis: {note: x} | 7:12: the key kind is missing; give statute, ordinance, model_code, standard, manual"
                        + " or practice",
                "basis: {kind: law} | 7:19: unknown kind of basis law. Known: statute, ordinance, model_code, standard,"
                        + " manual, practice",
                "basis: {kind: ordinanc} | 7:19: unknown kind of basis ordinanc; did you mean ordinance? Known: statute,"
                        + " ordinance, model_code, standard, manual, practice",
                "basis: {kind: ordinance} | 7:12: a basis of kind ordinance must name its document",
                "basis: {kind: ordinance, document: \"\"} | 7:12: a basis of kind ordinance must name its document",
                "basis: {kind: practice, page: 3} | 7:29: unknown key page in a basis. Known: kind, document, section,"
                        + " known, note",
            })
    void aRuleWithoutABasisIsRefused(String basis, String fault) {
        assertThat(faultsOf(basis, TO, AT_LEAST, MUST)).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @Test
    void anUnknownKeyIsRefusedWithTheNearestKnownOne() {
        assertThat(faultsOf(TO, AT_LEAST, MUST, PRACTICE, "at_lest: 6 ft"))
                .singleElement()
                .asString()
                .startsWith(
                        "rules/counties/c.yaml:11:5: unknown key at_lest in rule walk (check clearance); did you mean"
                                + " at_least? Known: ");
    }

    @Test
    void anUnknownCheckIsRefusedWithTheNearestKnownOne() {
        Books books = new Books(folder).with("counties/c.yaml", """
                rules:
                  walk: {title: x, check: clearence, weight: must, basis: {kind: practice}}
                """);

        assertThat(books.faultsOfCounty())
                .singleElement()
                .asString()
                .startsWith("rules/counties/c.yaml:3:27: unknown check clearence; did you mean clearance? Known: ");
    }

    @Test
    void aRuleThatAsksNothingIsRefused() {
        Books books = new Books(folder).with("counties/c.yaml", """
                rules:
                  slope: {title: x, check: slope, weight: must, basis: {kind: practice}}
                """);

        assertThat(books.faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:3:3: rule slope asks nothing; give at_least or at_most");
    }

    @Test
    void aRuleThatIsNoMappingIsRefused() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "rules: {walk: 5 ft}\n")
                        .faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:15: rule walk: found \"5 ft\", wanted keys with values");
        assertThat(new Books(folder).with("counties/c.yaml", "rules: [walk]\n").faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:8: rules: found a list, wanted keys with values");
    }

    @Test
    void aBooksOwnKeysAndItsClimateAreReadStrictly() {
        Books books = new Books(folder).with("counties/c.yaml", """
                rule: {}
                climate: {freezing: maybe, frost_depth: 30, soil: clay, wind: 3}
                """);

        assertThat(books.faultsOfCounty())
                .containsExactly(
                        "rules/counties/c.yaml:3:21: found \"maybe\", wanted true or false",
                        "rules/counties/c.yaml:3:41: \"30\" has no unit; give a length with m, cm, mm, ft, ft_us or in,"
                                + " such as 18 in",
                        "rules/counties/c.yaml:3:57: unknown key wind in climate. Known: freezing, frost_depth, soil",
                        "rules/counties/c.yaml:2:1: unknown key rule in a rule book; did you mean rules? Known: title,"
                                + " builds_on, effective, climate, storm, runoff, mark_accuracy, expected_cover, laying, cost, as_built, rules, checklist");
    }

    @Test
    void aNegativeFrostDepthIsRefused() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "climate: {frost_depth: -3 in}\n")
                        .faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:24: \"-3 in\" is negative; give zero or more");
    }

    @Test
    void allFaultsOfAllBooksAreReportedAtOnce() {
        Books books = new Books(folder)
                .with("baseline.yaml", """
                        rules:
                          walk:
                            {title: x, check: clearance, from: outfall, to: wall, at_least: 5,
                             weight: shall, basis: {kind: practice}}
                        """)
                .with("counties/c.yaml", """
                        builds_on: ../baseline.yaml
                        wether: dry
                        rules:
                          slope: {title: x, check: slope, at_most: 5 ft, weight: must}
                        """)
                .with("house/h.yaml", """
                        rules:
                          walk: {at_least: 6 ft}
                        """);

        assertThat(books.faultsOfHouse().stream().map(fault -> fault.substring(0, fault.indexOf(": "))))
                .containsExactlyInAnyOrder(
                        "rules/baseline.yaml:4:53",
                        "rules/baseline.yaml:5:14",
                        "rules/counties/c.yaml:3:1",
                        "rules/counties/c.yaml:5:44",
                        "rules/counties/c.yaml:5:3",
                        "rules/house/h.yaml:3:3");
    }

    @Test
    void faultsFoundBeforeABookThatCannotBeReadAreNotLost() {
        Books books =
                new Books(folder).with("counties/c.yaml", "wether: dry\n").with("house/h.yaml", "rules: {a: \"open\n");

        assertThat(books.faultsOfHouse())
                .containsExactly(
                        "rules/counties/c.yaml:2:1: unknown key wether in a rule book. Known: title, builds_on, effective,"
                                + " climate, storm, runoff, mark_accuracy, expected_cover, laying, cost, as_built, rules, checklist",
                        "rules/house/h.yaml:2:12: not readable as YAML: found unexpected end of stream");
    }

    // conditions and attributes as parameters

    private List<String> faultsOfCheck(String... lines) {
        return new Books(folder)
                .with("counties/c.yaml", "rules:\n  r:\n    title: x\n" + indented(lines))
                .faultsOfCounty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "must: \"joint = 'gasket'\" | fine",
                "must: \"above = 'lawn' OR wall = 'double'\" | fine",
                "must: \"stands_in = 'lawn'\" | the condition stands_in = 'lawn': a pipe has no stands_in",
                "must: \"rim_ft > 1\" | the condition rim_ft > 1: a pipe has no rim_ft",
                "must: \"jont = 'gasket'\" | unknown attribute jont in the condition jont = 'gasket'; did you mean joint?",
                "must: [x] | found a list, wanted a single value",
                "x: y | the key must is missing; give the condition that each of them must satisfy",
            })
    void aConditionThatFeaturesMustSatisfyNamesWhatTheyHave(String must, String fault) {
        List<String> faults = faultsOfCheck("check: attribute", "of: pipe", must, MUST, PRACTICE);

        if (fault.equals("fine")) {
            assertThat(faults).isEmpty();
        } else {
            assertThat(faults).first().asString().contains(fault);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "shows: material | fine",
                "shows: [material, diameter] | fine",
                "shows: [materal] | shows: materal is not an attribute that can stand here; did you mean material? Known: id,",
                "shows: rim | shows: rim is not an attribute that can stand here. Known: id,",
                "shows: [] | shows: found an empty list, wanted the names of attributes",
                "shows: [{a: b}] | found keys with values, wanted a single value",
            })
    void whatAPlanMustShowOfFeaturesIsSomethingTheyHave(String shows, String fault) {
        List<String> faults = faultsOfCheck("check: stated", "of: pipe", shows, MUST, PRACTICE);

        if (fault.equals("fine")) {
            assertThat(faults).isEmpty();
        } else {
            assertThat(faults).first().asString().contains(fault);
        }
    }

    @Test
    void aDistanceWithoutALimitAsksNothing() {
        assertThat(faultsOf(TO, MUST, PRACTICE))
                .containsExactly("rules/counties/c.yaml:3:3: rule walk asks nothing; give at_least or at_most");
        assertThat(faultsOf(TO, "at_most: 5 ft", MUST, PRACTICE)).isEmpty();
    }
}
