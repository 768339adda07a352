package org.fallrule.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.WALK;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.fallrule.check.Terms;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Locality;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Waiver;
import org.junit.jupiter.api.Test;

class ReviewerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
    private static final PlanInFeet TWO_OUTFALLS =
            plan().with(OUTFALL, "OF-1", "POINT (0 0)").with(OUTFALL, "OF-2", "POINT (9 9)");

    /** Says the same of every outfall, or breaks down. */
    private record Stub(List<Need> needs, Outcome outcome, boolean breaksDown) implements Check {
        @Override
        public String name() {
            return "stub";
        }

        @Override
        public CheckPage page() {
            return new CheckPage("", "", "", List.of());
        }

        @Override
        public List<Parameter<?>> parameters() {
            return List.of();
        }

        @Override
        public List<Need> needs(Terms terms) {
            return needs;
        }

        @Override
        public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
            if (breaksDown) {
                throw new IllegalStateException("no bottom");
            }
            return analysis.site().features(OUTFALL).stream()
                    .map(outfall -> Observation.plain(outcome, outfall))
                    .toList();
        }
    }

    private static Rule rule(String id, Weight weight, Outcome outcome, Need... needs) {
        return rule(id, weight, new Stub(List.of(needs), outcome, false));
    }

    private static Rule rule(String id, Weight weight, Check check) {
        Basis basis = new Basis(
                Basis.Kind.PRACTICE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Place.of("rules.yaml"));
        return new Rule(
                id,
                "a rule",
                check,
                weight,
                Terms.none(),
                basis,
                Place.of("rules.yaml").at(4, 1));
    }

    private static Review review(PlanInFeet plan, Rule... rules) {
        Locality unsaid = Locality.UNSAID;
        return Reviewer.review(plan.analysis(), new RuleBook(List.of(), unsaid, List.of(rules)), TODAY);
    }

    private static Waiver waiver(String rule, String feature, String until) {
        return new Waiver(
                rule,
                Optional.of(feature).filter(text -> !text.isEmpty()),
                "county engineer",
                LocalDate.of(2026, 1, 2),
                "rock",
                Optional.of(until).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                Place.of("site.yaml").at(9, 5));
    }

    /** {@code rule outcome subject; note}. */
    private static List<String> lines(Review review) {
        return review.findings().stream().map(ReviewerTest::line).toList();
    }

    private static String line(Finding finding) {
        return finding.rule() + ": " + PlanInFeet.line(finding.observation());
    }

    private static List<String> problems(Review review) {
        return review.problems().stream().map(Fault::toString).toList();
    }

    @Test
    void whatARuleOnlyNotesIsNeverHeldAgainstThePlan() {
        Review review = review(
                TWO_OUTFALLS,
                rule("failing", Weight.NOTE, Outcome.FAILS),
                rule("borderline", Weight.NOTE, Outcome.BORDERLINE),
                rule("open", Weight.NOTE, Outcome.CANNOT_TELL));

        assertThat(review.findings().stream().map(Finding::outcome).distinct())
                .containsExactly(Outcome.MEETS, Outcome.CANNOT_TELL);
        assertThat(review.failsPlan()).isFalse();
    }

    @Test
    void findingsStandInTheOrderOfTheRulesAndThenOfThePlan() {
        Review review = review(
                TWO_OUTFALLS,
                rule("z-first", Weight.MUST, Outcome.MEETS),
                rule("a-second", Weight.SHOULD, Outcome.FAILS));

        assertThat(lines(review))
                .containsExactly(
                        "z-first: meets OF-1", "z-first: meets OF-2", "a-second: fails OF-1", "a-second: fails OF-2");
        assertThat(lines(review(TWO_OUTFALLS, rule("z-first", Weight.MUST, Outcome.MEETS))))
                .isEqualTo(lines(review).subList(0, 2));
    }

    @Test
    void aLayerThatIsNotSuppliedIsToldOnceForTheRule() {
        Review review = review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.MEETS, new Need.OfLayer(WALK)));

        assertThat(lines(review)).containsExactly("r: cannot_tell; lacks the walk layer");
    }

    @Test
    void twoNeedsOfOneLayerAreToldOnce() {
        Need walks = new Need.OfLayer(WALK);

        assertThat(lines(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.MEETS, walks, walks))))
                .containsExactly("r: cannot_tell; lacks the walk layer");
    }

    @Test
    void allThatARuleLacksIsToldTogether() {
        Review review = review(
                TWO_OUTFALLS,
                rule(
                        "r",
                        Weight.MUST,
                        Outcome.MEETS,
                        new Need.OfLayer(WALK),
                        new Need.OfGround(),
                        new Need.OfLayer(PIPE)));

        assertThat(lines(review))
                .containsExactly("r: cannot_tell; lacks the walk layer; lacks the ground; lacks the pipe layer");
    }

    @Test
    void anEmptyLayerIsNoStatementThatThereIsNone() {
        Review review = review(TWO_OUTFALLS.empty(WALK), rule("r", Weight.MUST, Outcome.MEETS, new Need.OfLayer(WALK)));

        assertThat(lines(review)).containsExactly("r: cannot_tell; lacks the walk layer, which is empty");
    }

    @Test
    void aLayerStatedAbsentMakesTheRuleNotApplicable() {
        Review review = review(
                TWO_OUTFALLS.absent(WALK),
                rule("r", Weight.MUST, Outcome.MEETS, new Need.OfLayer(PIPE), new Need.OfLayer(WALK)));

        assertThat(lines(review))
                .containsExactly("r: not_applicable; the plan states that there is no walk (site.yaml:7)");
    }

    @Test
    void aSuppliedLayerMeetsTheNeed() {
        assertThat(lines(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.MEETS, new Need.OfLayer(OUTFALL)))))
                .containsExactly("r: meets OF-1", "r: meets OF-2");
    }

    @Test
    void twoSpotsAreNoGroundAndThreeAre() {
        Rule rule = rule("r", Weight.MUST, Outcome.MEETS, new Need.OfGround());

        assertThat(lines(review(TWO_OUTFALLS.spots("0 0 9, 9 0 9"), rule)))
                .containsExactly("r: cannot_tell; lacks the ground");
        assertThat(lines(review(TWO_OUTFALLS.spots("0 0 9, 9 0 9, 0 9 9"), rule)))
                .containsExactly("r: meets OF-1", "r: meets OF-2");
    }

    @Test
    void aRuleAboutWaterWithoutADesignStormSaysWhatIsNotStated() {
        Rule rule = rule("r", Weight.MUST, Outcome.MEETS, new Need.OfStorm());

        assertThat(lines(review(TWO_OUTFALLS, rule)))
                .singleElement()
                .asString()
                .startsWith("r: cannot_tell; lacks the rain to design for (no return period is stated");
        assertThat(lines(review(TWO_OUTFALLS.in(Raining.SIX_INCHES_AN_HOUR), rule)))
                .containsExactly("r: meets OF-1", "r: meets OF-2");
    }

    @Test
    void theOwnLotMustBeKnownWhereItIsNeeded() {
        Rule rule = rule("r", Weight.MUST, Outcome.MEETS, new Need.OfLayer(LOT), new Need.OfOwnLot());
        PlanInFeet one = TWO_OUTFALLS.with(LOT, "L-1", "POLYGON ((0 0, 9 0, 9 9, 0 0))");
        PlanInFeet two = one.with(LOT, "L-2", "POLYGON ((20 0, 29 0, 29 9, 20 0))");

        assertThat(lines(review(one, rule))).containsExactly("r: meets OF-1", "r: meets OF-2");
        assertThat(lines(review(two, rule))).containsExactly("r: cannot_tell; lacks which lot is the site's own");
        assertThat(lines(review(TWO_OUTFALLS, rule))).containsExactly("r: cannot_tell; lacks the lot layer");
    }

    @Test
    void aRuleThatSpeaksOfNothingInThePlanIsNotApplicable() {
        assertThat(lines(review(plan(), rule("r", Weight.MUST, Outcome.FAILS))))
                .containsExactly("r: not_applicable; there is nothing in the plan that the rule speaks of");
    }

    @Test
    void aCheckThatBreaksDownIsAProblemAndNeverAPass() {
        Review review = review(
                TWO_OUTFALLS,
                rule("broken", Weight.MUST, new Stub(List.of(), Outcome.MEETS, true)),
                rule("next", Weight.MUST, Outcome.MEETS));

        assertThat(lines(review))
                .containsExactly(
                        "broken: cannot_tell; lacks a result of the check stub",
                        "next: meets OF-1",
                        "next: meets OF-2");
        assertThat(problems(review))
                .filteredOn(says -> says.contains("broke down"))
                .containsExactly(
                        "rules.yaml:4:1: the check stub broke down on rule broken"
                                + " (java.lang.IllegalStateException: no bottom); this is a fault of the program, please report it");
    }

    @Test
    void aCheckThatBreaksDownOverItsNeedsIsAProblemToo() {
        Check broken = new Check() {
            @Override
            public String name() {
                return "broken";
            }

            @Override
            public CheckPage page() {
                return new CheckPage("", "", "", List.of());
            }

            @Override
            public List<Parameter<?>> parameters() {
                return List.of();
            }

            @Override
            public List<Need> needs(Terms terms) {
                throw new IllegalStateException("no term");
            }

            @Override
            public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
                return List.of();
            }
        };

        assertThat(lines(review(TWO_OUTFALLS, rule("r", Weight.MUST, broken))))
                .containsExactly("r: cannot_tell; lacks a result of the check broken");
    }

    @Test
    void theProblemsOfThePipesAreTold() {
        Review review = review(TWO_OUTFALLS.with(PIPE, "P-1", "LINESTRING (50 50, 60 60)"));

        assertThat(problems(review))
                .hasSize(3)
                .first()
                .asString()
                .startsWith("pipe.geojson: P-1: pipe P-1 does not lead");
    }

    @Test
    void aWaiverInForceExcusesAFailureOfItsFeature() {
        Review review =
                review(TWO_OUTFALLS.waived(waiver("r", "OF-1", "2026-06-15")), rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(lines(review))
                .containsExactly("r: waived OF-1; waiver by county engineer of 2026-01-02: rock", "r: fails OF-2");
        assertThat(review.failsPlan()).isTrue();
    }

    @Test
    void aWaiverWithoutAFeatureExcusesAllOfThem() {
        Review review = review(TWO_OUTFALLS.waived(waiver("r", "", "")), rule("r", Weight.MUST, Outcome.BORDERLINE));

        assertThat(review.count(Outcome.WAIVED)).isEqualTo(2);
        assertThat(review.failsPlan()).isFalse();
    }

    @Test
    void anExpiredWaiverIsToldAndDoesNotCount() {
        Review review =
                review(TWO_OUTFALLS.waived(waiver("r", "OF-1", "2026-06-14")), rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(lines(review).get(0))
                .isEqualTo("r: fails OF-1; waiver by county engineer of 2026-01-02: rock;"
                        + " it expired on 2026-06-14 and does not count");
    }

    @Test
    void aWaiverDatedInTheFutureIsToldAndDoesNotCount() {
        Waiver ahead = new Waiver(
                "r",
                Optional.of("OF-1"),
                "county engineer",
                TODAY.plusDays(1),
                "rock",
                Optional.empty(),
                Place.of("site.yaml").at(9, 5));
        Review review = review(TWO_OUTFALLS.waived(ahead), rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(lines(review).get(0))
                .isEqualTo("r: fails OF-1; waiver by county engineer of 2026-06-16: rock;"
                        + " that day is still to come and it does not count");
        assertThat(problems(review))
                .contains("site.yaml:9:5: the waiver of r is dated 2026-06-16, later than the day of this review,"
                        + " 2026-06-15, and does not count; check its date");
    }

    @Test
    void aWaiverGrantedTodayCounts() {
        Waiver today = new Waiver(
                "r", Optional.empty(), "county engineer", TODAY, "rock", Optional.empty(), Place.of("site.yaml"));

        assertThat(review(TWO_OUTFALLS.waived(today), rule("r", Weight.MUST, Outcome.FAILS))
                        .failsPlan())
                .isFalse();
    }

    @Test
    void aRenewedWaiverCountsThoughTheExpiredOneStandsFirst() {
        PlanInFeet plan = TWO_OUTFALLS.waived(waiver("r", "OF-1", "2026-03-01"), waiver("r", "OF-1", "2027-03-01"));
        Review review = review(plan, rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(lines(review)).first().asString().startsWith("r: waived OF-1");
        assertThat(problems(review)).noneMatch(says -> says.contains("waiver"));
    }

    @Test
    void whatMeetsOrCannotBeToldIsNotWaived() {
        PlanInFeet plan = TWO_OUTFALLS.waived(waiver("open", "", ""), waiver("good", "", ""));
        Review review =
                review(plan, rule("open", Weight.MUST, Outcome.CANNOT_TELL), rule("good", Weight.MUST, Outcome.MEETS));

        assertThat(lines(review))
                .containsExactly(
                        "open: cannot_tell OF-1", "open: cannot_tell OF-2", "good: meets OF-1", "good: meets OF-2");
    }

    @Test
    void aWaiverOfAnUnknownRuleIsAProblem() {
        Review review = review(TWO_OUTFALLS.waived(waiver("roof", "OF-1", "")), rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(problems(review))
                .contains(
                        "site.yaml:9:5: the waiver speaks of the rule roof, which does not apply here; check its name");
    }

    @Test
    void aWaiverOfAnUnknownFeatureIsAProblem() {
        Review review = review(TWO_OUTFALLS.waived(waiver("r", "OF-7", "")), rule("r", Weight.MUST, Outcome.FAILS));

        assertThat(problems(review))
                .contains("site.yaml:9:5: the waiver of r speaks of nothing that was found; check its feature");
    }

    @Test
    void onlyARuleThatMustBeMetFailsThePlanButAnyRuleLeavesItOpen() {
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.SHOULD, Outcome.FAILS)).failsPlan())
                .isFalse();
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.FAILS)).failsPlan())
                .isTrue();
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.SHOULD, Outcome.CANNOT_TELL))
                        .leavesOpen())
                .isTrue();
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.CANNOT_TELL))
                        .leavesOpen())
                .isTrue();
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.BORDERLINE))
                        .leavesOpen())
                .isTrue();
        assertThat(review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.FAILS)).leavesOpen())
                .isFalse();
    }

    @Test
    void aFindingNamesTheLineThatSetItsLimit() {
        Feature outfall = TWO_OUTFALLS.site().features(OUTFALL).get(0);
        Finding finding = review(TWO_OUTFALLS, rule("r", Weight.MUST, Outcome.MEETS))
                .findings()
                .get(0);

        assertThat(finding.setBy().fileAndLine()).isEqualTo("rules.yaml:4");
        assertThat(finding.with(Observation.cannotTell(outfall, new Missing("a", "b")))
                        .outcome())
                .isEqualTo(Outcome.CANNOT_TELL);
    }
}
