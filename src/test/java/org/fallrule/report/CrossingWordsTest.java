package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;

class CrossingWordsTest {
    private static final RuleBook LARKMOOR =
            new RuleLibrary(Path.of("rules"), "rules").load("larkmoor", Optional.empty());

    private static List<CrossedUtility> crossed(Site site) {
        SiteAnalysis analysis = SiteAnalysis.of(site, LARKMOOR.locality());
        return CrossedUtility.of(new Report(
                analysis, "larkmoor", LARKMOOR, Reviewer.review(analysis, LARKMOOR, LocalDate.of(2026, 6, 1))));
    }

    private static List<CrossingWords> words(Site site) {
        return crossed(site).stream().map(CrossingWords::of).toList();
    }

    /** A pipe of 4.215 in outside whose invert lies 4 ft below level ground, and a utility square across it. */
    private static PlanInFeet crossedBy(String... attributes) {
        return PlanInFeet.plan()
                .spots("-50 -50 100, 50 -50 100, 50 50 100, -50 50 100")
                .with(
                        Role.PIPE,
                        "P-1",
                        "LINESTRING (-20 0, 20 0)",
                        "diameter = 4 in",
                        "outside_diameter = 4 in",
                        "invert_up = 96 ft",
                        "invert_down = 96 ft")
                .with(Role.UTILITY, "U-1", "LINESTRING (0 -20, 0 20)", attributes);
    }

    // Values: sample-sites/harrow-14/README.md, worked out there from the drawing.

    @Test
    void everyCrossingOfTheSampleIsListedAlongThePipes() {
        List<CrossingWords> rows = words(SiteReader.read(Path.of("sample-sites/harrow-14")));

        assertThat(rows)
                .extracting(row -> row.pipe() + " " + row.utility() + ": " + row.gap())
                .containsExactly(
                        "P-2 electric M07: 22.9 in, drain above",
                        "P-2 communication M08: 18.7 in, drain above",
                        "P-4 gas M06: 16.1 in, drain above",
                        "P-9 water service M02: 5.5 in, drain above",
                        "P-10 irrigation M09: not known");
        assertThat(rows.get(3))
                .isEqualTo(new CrossingWords(
                        "P-9",
                        "0+06.0",
                        "water service M02",
                        "1 in",
                        "A",
                        "28 in",
                        "5.5 in, drain above",
                        "90.0 deg",
                        Optional.of(Outcome.FAILS),
                        "one-call 811, and the owner of a private line"));
        assertThat(rows.get(4).outcome()).isEmpty();
        assertThat(rows.get(4).stands()).isEqualTo("no rule");
        assertThat(rows.get(4).depth()).isEqualTo("12 in, not relied on, expected 6 in to 18 in");
    }

    @Test
    void aUtilityOverTheDrainIsSaidToBe() {
        // top 24 in deep, 2 in high: bottom at 97.833 ft, over the pipe's top at 96.333 ft
        assertThat(words(crossedBy("kind = gas", "depth = 24 in", "diameter = 2 in", "quality = A")
                        .site()))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.gap()).isEqualTo("18.0 in, drain below");
                    assertThat(row.station()).isEqualTo("0+20.0");
                });
    }

    @Test
    void whereTheTwoMeetTheGapIsNegative() {
        assertThat(words(crossedBy("kind = gas", "depth = 44 in", "diameter = 2 in", "quality = A")
                        .site()))
                .singleElement()
                .satisfies(row -> assertThat(row.gap()).isEqualTo("-2.0 in, the two overlap"));
    }

    @Test
    void ofUnknownDepthTheUsualDepthOfItsKindIsTold() {
        assertThat(words(crossedBy("kind = irrigation", "quality = B").site()))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.depth()).isEqualTo("expected 6 in to 18 in");
                    assertThat(row.gap()).isEqualTo("not known");
                });
    }

    @Test
    void aSizeThatIsNotGivenMattersOnlyWhereTheUtilityLiesAbove() {
        assertThat(words(crossedBy("kind = gas", "depth = 24 in", "quality = A").site()))
                .singleElement()
                .satisfies(row -> assertThat(row.gap()).isEqualTo("not known"));
        assertThat(words(crossedBy("kind = gas", "depth = 60 in", "quality = A").site()))
                .singleElement()
                .satisfies(row -> assertThat(row.gap()).isEqualTo("12.0 in, drain above"));
    }

    @Test
    void theGapShownIsTheOneThatTheRuleWasHeldAgainst() {
        assertThat(crossed(crossedBy("kind = gas", "depth = 24 in", "diameter = 2 in", "quality = A")
                        .site()))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.findings()).isNotEmpty();
                    assertThat(row.findings()
                                    .get(0)
                                    .observation()
                                    .measured()
                                    .orElseThrow()
                                    .value()
                                    .si())
                            .isCloseTo(
                                    row.gap().orElseThrow().clear().metres(),
                                    org.assertj.core.api.Assertions.within(Dimension.LENGTH.tolerance()));
                });
    }

    @Test
    void withoutACrossingThereIsNoRow() {
        assertThat(words(PlanInFeet.plan()
                        .with(Role.PIPE, "P-1", "LINESTRING (-20 0, 20 0)")
                        .with(Role.UTILITY, "U-1", "LINESTRING (-20 5, 20 5)", "kind = gas")
                        .site()))
                .isEmpty();
    }
}
