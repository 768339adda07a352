package org.fallrule.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;

/** With every limit of every rule made tighter, whatever the check, nothing that failed meets its rule. */
class TighterBooksTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final RuleBook BOOK =
            new RuleLibrary(Path.of("rules"), "rules").load("larkmoor", Optional.empty(), DAY);
    private static final SiteAnalysis PLAN =
            SiteAnalysis.of(SiteReader.read(Path.of("sample-sites/harrow-14")), BOOK.locality());

    private static final Map<String, List<Outcome>> BEFORE = outcomes(BOOK.rules());

    @Property(tries = 10)
    void tighteningEveryLimitTurnsNoFailureIntoAPass(@ForAll @DoubleRange(min = 1.0, max = 4.0) double by) {
        Map<String, List<Outcome>> after =
                outcomes(BOOK.rules().stream().map(rule -> tighter(rule, by)).toList());

        assertThat(BEFORE.values()).as("the plan fails some rules").anyMatch(all -> all.contains(Outcome.FAILS));
        BEFORE.forEach((what, all) -> {
            if (all.contains(Outcome.FAILS)) {
                assertThat(after.get(what))
                        .as("%s, %s times as tight", what, by)
                        .isNotNull()
                        .contains(Outcome.FAILS);
            }
        });
    }

    /** The outcomes by rule, feature and other feature; a pipe has one for each stretch with a limit of its own. */
    private static Map<String, List<Outcome>> outcomes(List<Rule> rules) {
        RuleBook book = new RuleBook(BOOK.books(), BOOK.locality(), rules);
        Map<String, List<Outcome>> outcomes = new HashMap<>();
        for (Finding finding : Reviewer.review(PLAN, book, DAY).findings()) {
            String what = finding.rule() + " "
                    + finding.observation().subject().map(Feature::spoken).orElse("the plan") + " "
                    + finding.observation().other().map(Feature::spoken).orElse("");
            outcomes.computeIfAbsent(what, each -> new ArrayList<>()).add(finding.outcome());
        }
        return outcomes;
    }

    private static Rule tighter(Rule rule, double by) {
        Terms terms = rule.terms();
        for (Parameter<?> parameter : rule.check().parameters()) {
            if (!parameter.asksLess()
                    && parameter.form() instanceof Parameter.Form.LimitOf
                    && terms.find(parameter).orElse(null) instanceof Limits limits) {
                terms = with(terms, parameter, tighter(limits, by));
            }
        }
        return new Rule(rule.id(), rule.title(), rule.check(), rule.weight(), terms, rule.basis(), rule.setBy());
    }

    private static <T> Terms with(Terms terms, Parameter<T> parameter, Limits limits) {
        return terms.with(parameter, parameter.type().cast(limits));
    }

    private static Limits tighter(Limits limits, double by) {
        return new Limits(limits.cases().stream()
                .map(each -> new Limits.Case(each.when(), each.limit().map(limit -> tighter(limit, by)), each.setBy()))
                .toList());
    }

    private static Limit tighter(Limit limit, double by) {
        Quantity value = limit.value().quantity();
        double si = limit.bound() == Bound.AT_LEAST ? value.si() * by : value.si() / by;
        Unit unit = limit.value().unit();
        return new Limit(
                limit.bound(), new Written(value.dimension().of(si), unit, si / unit.toSi() + " " + unit.symbol()));
    }
}
