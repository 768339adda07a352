package org.fallrule.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Written;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class LimitsTest {
    private static final Place RULE = Place.of("rules.yaml").at(12, 5);

    private static Limits.Case limit(String when, String is) {
        Condition condition = when.isEmpty() ? Condition.ALWAYS : Condition.parse(when, RULE);
        Optional<Limit> limit = is.equals("none")
                ? Optional.empty()
                : Optional.of(new Limit(Bound.AT_LEAST, Written.parse(is, Dimension.LENGTH)));
        return new Limits.Case(condition, limit, RULE);
    }

    private static Feature pipe(String... attributes) {
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 9 0)", attributes)
                .site()
                .features(PIPE)
                .get(0);
    }

    /** The limit as written, {@code none}, or what it lacks. */
    private static String of(Limits limits, String... attributes) {
        Limits.Answer answer = limits.of(pipe(attributes).attributes());
        if (answer instanceof Limits.Answer.Asked asked) {
            return asked.limit().value().text();
        }
        return answer instanceof Limits.Answer.Undecided undecided ? "lacks " + undecided.lacking() : "none";
    }

    @Test
    void theFirstCaseThatHoldsCounts() {
        Limits limits = new Limits(
                List.of(limit("diameter_in <= 4", "6 in"), limit("diameter_in <= 8", "12 in"), limit("", "24 in")));

        assertThat(of(limits, "diameter = 3 in")).isEqualTo("6 in");
        assertThat(of(limits, "diameter = 4 in")).isEqualTo("6 in");
        assertThat(of(limits, "diameter = 101.6 mm")).isEqualTo("6 in");
        assertThat(of(limits, "diameter = 4.1 in")).isEqualTo("12 in");
        assertThat(of(limits, "diameter = 9 in")).isEqualTo("24 in");
    }

    @Test
    void aCaseThatAsksNoneEndsTheSearch() {
        Limits limits = new Limits(List.of(limit("diameter_in <= 4", "none"), limit("", "24 in")));

        assertThat(of(limits, "diameter = 3 in")).isEqualTo("none");
    }

    @Test
    void whereNoCaseHoldsNothingIsAsked() {
        assertThat(of(new Limits(List.of(limit("diameter_in <= 4", "6 in"))), "diameter = 6 in"))
                .isEqualTo("none");
    }

    @Test
    void anUndecidedCaseBeforeAnyThatHoldsNamesWhatItLacks() {
        Limits limits = new Limits(List.of(limit("material = 'abs'", "6 in"), limit("", "24 in")));

        assertThat(of(limits)).isEqualTo("lacks material");
    }

    @Test
    void anUndecidedCaseAfterOneThatHoldsDoesNotMatter() {
        Limits limits = new Limits(List.of(limit("diameter_in <= 4", "6 in"), limit("material = 'abs'", "24 in")));

        assertThat(of(limits, "diameter = 3 in")).isEqualTo("6 in");
    }

    @Test
    void aHalfKnownConditionIsDecidedWhereTheKnownHalfIsEnough() {
        Limits limits = new Limits(List.of(limit("diameter_in <= 4 AND material = 'abs'", "6 in"), limit("", "24 in")));

        assertThat(of(limits, "diameter = 6 in")).isEqualTo("24 in");
        assertThat(of(limits, "diameter = 3 in")).isEqualTo("lacks material");
    }

    @Test
    void anUnknownAttributeInAConditionIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> Condition.parse("diamter_in <= 4", RULE))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("rules.yaml:12:5")
                .hasMessageContaining("diameter_in");
    }

    @Test
    void aSelectionChoosesByItsCondition() {
        Selection walks = new Selection(WALK, Condition.parse("access = 'public'", RULE));
        String square = "POLYGON ((0 0, 1 0, 1 1, 0 0))";
        PlanInFeet plan = plan().with(WALK, "W-1", square, "access = public")
                .with(WALK, "W-2", square, "access = private")
                .with(WALK, "W-3", square);

        assertThat(plan.site().features(WALK))
                .extracting(walks::chooses)
                .containsExactly(Truth.TRUE, Truth.FALSE, Truth.UNKNOWN);
        assertThat(walks.candidates(plan.site())).extracting(Feature::id).containsExactly("W-1", "W-3");
        assertThat(walks.spoken()).isEqualTo("walk with access = 'public'");
    }

    @Test
    void aTermThatEveryRuleGivesMustBeThere() {
        Parameter<Limits> least = Parameter.limit("at_least", Bound.AT_LEAST, Dimension.LENGTH, "least");

        assertThat(Terms.none().find(least)).isEmpty();
        assertThatThrownBy(() -> Terms.none().get(least)).hasMessageContaining("at_least");
    }
}
