package org.fallrule.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Condition;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever amount a rule book lets a rule give, its check must not break down on it. */
class TermsAtTheirEndsTest {
    private static final Site SITE = SiteReader.read(Path.of("sample-sites", "harrow-14"));
    private static final RuleBook BOOK = new RuleLibrary(Path.of("rules"), "rules")
            .load(SITE.county().orElseThrow(), Optional.empty(), LocalDate.of(2026, 6, 1));
    private static SiteAnalysis analysis;

    @BeforeAll
    static void analyse() {
        analysis = SiteAnalysis.of(SITE, BOOK.locality());
    }

    /** One rule of the book for each check, so that all parameters come up. */
    static List<Rule> rules() {
        Set<String> checks = new LinkedHashSet<>();
        return BOOK.rules().stream()
                .filter(rule -> checks.add(rule.check().name()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void noAmountThatABookMayGiveBreaksTheCheckDown(Rule rule) {
        for (Parameter<?> parameter : rule.check().parameters()) {
            for (Terms terms : atTheEnds(parameter, rule.terms())) {
                Rule asked = new Rule(
                        rule.id(), rule.title(), rule.check(), rule.weight(), terms, rule.basis(), rule.setBy());
                Review review = Reviewer.review(
                        analysis, new RuleBook(List.of(), BOOK.locality(), List.of(asked)), LocalDate.of(2026, 6, 1));

                assertThat(review.problems())
                        .extracting(fault -> fault.says())
                        .as(parameter.name() + " of " + rule.check().name())
                        .noneMatch(says -> says.contains("broke down"));
            }
        }
    }

    private static List<Terms> atTheEnds(Parameter<?> parameter, Terms terms) {
        List<Terms> all = new ArrayList<>();
        if (parameter.form() instanceof Parameter.Form.LimitOf of) {
            for (Quantity end : ends(of.dimension(), of.range())) {
                all.add(terms.with(limits(parameter), limits(of.bound(), end)));
            }
        }
        if (parameter.form() instanceof Parameter.Form.QuantityOf of) {
            for (Quantity end : ends(of.dimension(), of.range())) {
                all.add(terms.with(quantity(parameter), end));
            }
        }
        return all;
    }

    private static List<Quantity> ends(Dimension dimension, Range range) {
        double greatest = range.hasGreatest() ? range.greatest() : Written.GREATEST;
        double least = range.leastItself() ? range.least() : Math.max(range.least(), 1e-9);
        return List.of(dimension.of(least), dimension.of(greatest));
    }

    private static Limits limits(Bound bound, Quantity amount) {
        Unit unit = Arrays.stream(Unit.values())
                .filter(each -> each.dimension() == amount.dimension())
                .findFirst()
                .orElseThrow();
        Limit limit = new Limit(bound, Written.of(amount.in(unit), unit));
        return new Limits(List.of(new Limits.Case(
                Condition.ALWAYS, Optional.of(limit), BOOK.rules().get(0).setBy())));
    }

    @SuppressWarnings("unchecked")
    private static Parameter<Limits> limits(Parameter<?> parameter) {
        return (Parameter<Limits>) parameter;
    }

    @SuppressWarnings("unchecked")
    private static Parameter<Quantity> quantity(Parameter<?> parameter) {
        return (Parameter<Quantity>) parameter;
    }
}
