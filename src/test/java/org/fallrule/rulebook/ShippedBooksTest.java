package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.check.Limits;
import org.fallrule.finding.Basis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rule books that come with the program. */
class ShippedBooksTest {
    private static final RuleLibrary LIBRARY = new RuleLibrary(Path.of("rules"), "rules");

    /** Every county without a house and with each. */
    static Stream<List<String>> all() {
        List<List<String>> all = new ArrayList<>();
        for (String county : LIBRARY.counties()) {
            all.add(List.of(county));
            LIBRARY.houses().forEach(house -> all.add(List.of(county, house)));
        }
        return all.stream();
    }

    private static RuleBook load(List<String> names) {
        return LIBRARY.load(names.get(0), names.stream().skip(1).findFirst());
    }

    @Test
    void thereAreCountiesAndAHouseAndEachSaysThatItIsInvented() {
        assertThat(LIBRARY.counties()).isNotEmpty();
        assertThat(LIBRARY.houses()).isNotEmpty();
        assertThat(all().flatMap(names -> load(names).books().stream())
                        .filter(book -> !book.file().equals("rules/baseline.yaml")))
                .allSatisfy(book -> assertThat(book.title())
                        .as("the title of " + book.file() + " must say that it is invented")
                        .endsWith("(invented, for demonstration)"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyBookLoadsAndBuildsOnTheBaseline(List<String> names) {
        RuleBook book = load(names);

        assertThat(book.rules()).hasSizeGreaterThan(10);
        assertThat(book.books().get(0).file()).isEqualTo("rules/baseline.yaml");
        assertThat(book.books()).hasSize(names.size() + 1);
        assertThat(book.rules()).extracting(Rule::id).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyRuleHasABasisAndNamesItsDocumentUnlessItIsPractice(List<String> names) {
        assertThat(load(names).rules()).allSatisfy(rule -> {
            assertThat(rule.basis().statedAt().line()).isPositive();
            if (rule.basis().kind() != Basis.Kind.PRACTICE) {
                assertThat(rule.basis().document()).as(rule.id()).isPresent();
            }
        });
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyLimitRemembersTheLineThatSetIt(List<String> names) {
        List<String> files =
                load(names).books().stream().map(RuleBook.Source::file).toList();
        assertThat(load(names).rules())
                .allSatisfy(rule -> rule.check()
                        .parameters()
                        .forEach(parameter -> rule.terms().find(parameter).ifPresent(value -> {
                            if (value instanceof Limits limits) {
                                assertThat(limits.cases()).allSatisfy(each -> {
                                    assertThat(each.setBy().file()).isIn(files);
                                    assertThat(each.setBy().line()).isPositive();
                                });
                            }
                        })));
    }

    @ParameterizedTest
    @MethodSource("all")
    void readingTwiceGivesTheSameRulesInTheSameOrder(List<String> names) {
        RuleBook once = load(names);
        RuleBook twice = load(names);

        assertThat(twice.books()).isEqualTo(once.books());
        assertThat(twice.rules())
                .extracting(Rule::id)
                .isEqualTo(once.rules().stream().map(Rule::id).toList());
        assertThat(twice.rules())
                .extracting(Rule::basis)
                .isEqualTo(once.rules().stream().map(Rule::basis).toList());
        assertThat(twice.rules())
                .allSatisfy(rule -> rule.check()
                        .parameters()
                        .forEach(parameter -> assertThat(rule.terms()
                                        .find(parameter)
                                        .equals(Books.rule(once, rule.id())
                                                .terms()
                                                .find(parameter)))
                                .as(rule.id() + " " + parameter.name())
                                .isTrue()));
    }

    /**
     * International Plumbing Code, table 704.1, slope of horizontal drainage pipe: 2-1/2 in and less 1/4 in/ft, 3 to 6 in
     * 1/8 in/ft, 8 in and more 1/16 in/ft.
     */
    @ParameterizedTest
    @CsvSource({
        "2 in, 1/4 in/ft",
        "2 1/2 in, 1/4 in/ft",
        "3 in, 1/8 in/ft",
        "4 in, 1/8 in/ft",
        "6 in, 1/8 in/ft",
        "8 in, 1/16 in/ft",
        "10 in, 1/16 in/ft",
        "12 in, 1/16 in/ft",
    })
    void theLeastSlopeOfTheBaselineIsThatOfThePlumbingCode(String diameter, String slope) {
        Length size = (Length) Written.parse(diameter, Dimension.LENGTH).quantity();

        assertThat(leastSlope(size)).isEqualTo(slope);
    }

    @ParameterizedTest
    @CsvSource({"63.5 mm, 1/4 in/ft", "76.2 mm, 1/8 in/ft", "152.4 mm, 1/8 in/ft", "203.2 mm, 1/16 in/ft"})
    void aNominalSizeInMillimetresHasTheSameLeastSlope(String diameter, String slope) {
        Length size = (Length) Written.parse(diameter, Dimension.LENGTH).quantity();

        assertThat(leastSlope(size)).isEqualTo(slope);
    }

    @Test
    void withoutADiameterTheLeastSlopeCannotBeTold() {
        Limits limits = Books.limits(Books.rule(baselineAlone(), "pipe-least-slope"), "at_least");

        assertThat(limits.of(Attributes.none())).isEqualTo(new Limits.Answer.Undecided("diameter"));
    }

    private static String leastSlope(Length diameter) {
        Limits limits = Books.limits(Books.rule(baselineAlone(), "pipe-least-slope"), "at_least");
        Limits.Answer answer = limits.of(Attributes.none().with(Attribute.DIAMETER, diameter));
        assertThat(answer).isInstanceOf(Limits.Answer.Asked.class);
        Limits.Answer.Asked asked = (Limits.Answer.Asked) answer;
        assertThat(asked.setBy().file()).isEqualTo("rules/baseline.yaml");
        return asked.limit().value().text();
    }

    /** A county whose rule of least slope is the baseline's. */
    private static RuleBook baselineAlone() {
        return LIBRARY.counties().stream()
                .map(county -> LIBRARY.load(county, Optional.empty()))
                .filter(book ->
                        Books.rule(book, "pipe-least-slope").setBy().file().equals("rules/baseline.yaml"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no county takes the baseline's least slope"));
    }
}
