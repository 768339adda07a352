package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.report.Reports.distance;
import static org.fallrule.report.Reports.feature;
import static org.fallrule.report.Reports.finding;

import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Written;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
    private static final Feature OUTFALL = feature(Role.OUTFALL, "OF-1", "POINT (0 0)");
    private static final Feature WALK = feature(Role.WALK, "W-1", "POLYGON ((1 0, 2 0, 2 1, 1 0))");
    private static final Feature PIPE = feature(Role.PIPE, "P-1", "LINESTRING (0 0, 10 0)");

    private static String sentence(Observation seen) {
        return Sentence.of(finding(Weight.MUST, seen));
    }

    @Test
    void aFailureSaysWhatWasMeasuredWhatIsAskedAndHowMuchIsShort() {
        assertThat(sentence(distance(OUTFALL, 3.5, 0).against(WALK)))
                .isEqualTo("Outfall OF-1 and walk W-1: plan distance 3.50 ft, at least 5 ft asked, 1.50 ft short.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.90   | Outfall OF-1: plan distance 4.90 ft, at least 5 ft asked, 0.10 ft short.",
                "4.996  | Outfall OF-1: plan distance 4.996 ft, at least 5 ft asked, 0.004 ft short.",
                "4.998  | Outfall OF-1: plan distance 5.00 ft, at least 5 ft asked.",
                "5      | Outfall OF-1: plan distance 5.00 ft, at least 5 ft asked.",
                "5.01   | Outfall OF-1: plan distance 5.01 ft, at least 5 ft asked.",
            })
    void aPrintedValueNeverContradictsItsOutcome(double feet, String words) {
        assertThat(sentence(distance(OUTFALL, feet, 0))).isEqualTo(words);
    }

    @Test
    void aBorderlineFindingSaysHowWellTheValueIsKnown() {
        assertThat(sentence(distance(OUTFALL, 5.05, 0.1)))
                .isEqualTo("Outfall OF-1: plan distance 5.05 ft, at least 5 ft asked; known only to ±0.10 ft.");
    }

    @Test
    void whatIsOverAGreatestValueIsOver() {
        Limit limit = new Limit(Bound.AT_MOST, Written.parse("20 %", Dimension.SLOPE));

        assertThat(sentence(Observation.measured(
                        PIPE, new Measured("slope", new Slope(0.25), 0, Optional.of(limit), Optional.empty()))))
                .isEqualTo("Pipe P-1: slope 25.00 %, at most 20 % asked, 5.00 % over.");
    }

    @Test
    void anAccuracyOfASlopeIsInPercentLikeTheSlope() {
        Limit limit = new Limit(Bound.AT_LEAST, Written.parse("1/8 in/ft", Dimension.SLOPE));

        assertThat(sentence(Observation.measured(
                        PIPE, new Measured("slope", new Slope(0.0105), 0.002, Optional.of(limit), Optional.empty()))))
                .isEqualTo("Pipe P-1: slope 1.05 %, at least 1/8 in/ft (1.042 %) asked; known only to ±0.20 %.");
    }

    @Test
    void whatIsNotKnownIsNamed() {
        assertThat(sentence(Observation.cannotTell(PIPE, new Missing("its diameter", "give diameter"))
                        .lacking(new Missing("the ground", "supply spots"))))
                .isEqualTo("Pipe P-1: not known: its diameter; the ground.");
    }

    @Test
    void aFactWithoutALimitIsOnlyStated() {
        assertThat(sentence(Observation.measured(PIPE, Measured.fact("length", Dimension.LENGTH.of(3.048)))))
                .isEqualTo("Pipe P-1: length 10.00 ft.");
    }

    @Test
    void withoutAValueTheOutcomeIsSaidInWords() {
        assertThat(sentence(Observation.plain(Outcome.FAILS, OUTFALL))).isEqualTo("Outfall OF-1: fails.");
        assertThat(sentence(Observation.notApplicable("the plan states that there is no well")))
                .isEqualTo("Not applicable: the plan states that there is no well.");
    }

    @Test
    void theVerdictCountsWhatBindsAndWhatIsOpen() {
        Finding fails = finding(Weight.MUST, distance(OUTFALL, 3, 0));
        Finding advice = finding(Weight.SHOULD, distance(OUTFALL, 3, 0));
        Finding borderline = finding(Weight.MUST, distance(OUTFALL, 5.05, 0.1));

        assertThat(Reports.with(java.util.List.of(fails, advice, borderline)).verdict())
                .isEqualTo("Does not meet the rules: 1 binding finding fails, 1 more open.");
        assertThat(Reports.with(java.util.List.of(advice, borderline)).verdict())
                .isEqualTo("Nothing binding fails, but 1 finding is open; 1 piece of advice not followed.");
        assertThat(Reports.with(java.util.List.of(advice)).verdict())
                .isEqualTo("Nothing binding fails and nothing is open; 1 piece of advice not followed.");
        assertThat(Reports.with(java.util.List.of()).verdict()).isEqualTo("Nothing binding fails and nothing is open.");
    }

    @Test
    void theCautionsWarnOfIceUnlessTheGroundNeverFreezes() {
        assertThat(Cautions.in(Reports.of("harrow-14").book().locality().climate()))
                .anyMatch(caution -> caution.contains("ice"))
                .anyMatch(caution -> caution.contains("811"))
                .anyMatch(caution -> caution.contains("screening aid"));
        assertThat(Cautions.in(Reports.of("plumb-line-1").book().locality().climate()))
                .noneMatch(caution -> caution.contains("becomes ice"))
                .hasSizeGreaterThan(5);
    }
}
