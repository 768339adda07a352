package org.fallrule.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.fallrule.measure.Written;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What codes print stands in the rules of the baseline that rest on them, or the figure says why the rule asks otherwise. */
class CodeFigureTest {
    @TestFactory
    Stream<DynamicTest> ruleAsksWhatTheCodePrints() {
        return CodeFigure.all().stream()
                .map(figure -> DynamicTest.dynamicTest(
                        figure.source() + ": " + figure.what() + ", " + figure.published(),
                        () -> assertStands(figure)));
    }

    private static void assertStands(CodeFigure figure) {
        List<Written> asked = BaselineValues.of(figure.rule(), figure.key());
        Written published = BaselineValues.quantity(figure.published(), figure.rule(), figure.key());
        boolean stands = asked.stream()
                .anyMatch(each ->
                        each.quantity().dimension().equals(published.quantity().dimension())
                                && Math.abs(each.quantity().si()
                                                - published.quantity().si())
                                        <= each.quantity().dimension().tolerance());
        assertThat(stands)
                .as(
                        figure.differs().isPresent()
                                ? "%s of rule %s says %s; take out why it differs"
                                : "%s of rule %s says %s",
                        figure.key(),
                        figure.rule(),
                        asked.stream().map(Written::text).toList())
                .isEqualTo(figure.differs().isEmpty());
    }
}
