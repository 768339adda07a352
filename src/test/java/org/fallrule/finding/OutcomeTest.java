package org.fallrule.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;

import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Standing;
import org.fallrule.measure.Written;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class OutcomeTest {
    private static final Feature OUTFALL_1 =
            plan().with(OUTFALL, "OF-1", "POINT (0 0)").site().features(OUTFALL).get(0);

    private static Observation of(double feet, double accuracy) {
        Limit limit = new Limit(Bound.AT_LEAST, Written.parse("5 ft", Dimension.LENGTH));
        return Observation.measured(
                OUTFALL_1,
                new Measured("plan distance", Length.feet(feet), accuracy, Optional.of(limit), Optional.empty()));
    }

    @Test
    void theLimitDecidesTheOutcome() {
        assertThat(of(4.9, 0).outcome()).isEqualTo(Outcome.FAILS);
        assertThat(of(5, 0).outcome()).isEqualTo(Outcome.MEETS);
        assertThat(of(5.1, 0).outcome()).isEqualTo(Outcome.MEETS);
        assertThat(of(4.9, 0.05).outcome()).isEqualTo(Outcome.BORDERLINE);
    }

    @Test
    void aBareFactMeets() {
        assertThat(Observation.measured(OUTFALL_1, Measured.fact("length", Length.feet(5)))
                        .outcome())
                .isEqualTo(Outcome.MEETS);
    }

    @Test
    void everyStandingHasItsOutcome() {
        for (Standing standing : Standing.values()) {
            assertThat(Outcome.of(standing).name()).isEqualTo(standing.name());
        }
    }

    @Test
    void worseComesFirst() {
        assertThat(Outcome.values())
                .containsExactly(
                        Outcome.FAILS,
                        Outcome.BORDERLINE,
                        Outcome.CANNOT_TELL,
                        Outcome.MEETS,
                        Outcome.NOT_APPLICABLE,
                        Outcome.WAIVED);
    }

    @Test
    void wordsAreForFilesAndForSentences() {
        assertThat(Outcome.CANNOT_TELL.word()).isEqualTo("cannot_tell");
        assertThat(Outcome.CANNOT_TELL.spoken()).isEqualTo("cannot tell");
    }

    @Test
    void missingThingsAndNotesAddUp() {
        Observation seen = Observation.cannotTell(OUTFALL_1, new Missing("a", "give a"))
                .lacking(new Missing("b", "give b"))
                .noting("one")
                .noting("two");

        assertThat(seen.missing()).extracting(Missing::what).containsExactly("a", "b");
        assertThat(seen.notes()).containsExactly("one", "two");
        assertThat(seen.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    }

    @Test
    void aBasisNamesItsSourceAndHowItIsKnown() {
        Basis table = new Basis(
                Basis.Kind.MODEL_CODE,
                Optional.of("International Plumbing Code"),
                Optional.of("table 704.1"),
                Optional.of("from memory"),
                Optional.empty(),
                Place.of("rules.yaml"));
        Basis practice = new Basis(
                Basis.Kind.PRACTICE,
                Optional.empty(),
                Optional.empty(),
                Optional.of("read"),
                Optional.empty(),
                Place.of("rules.yaml"));

        assertThat(table.spoken()).isEqualTo("model code: International Plumbing Code, table 704.1 (from memory)");
        assertThat(practice.spoken()).isEqualTo("common practice");
    }
}
