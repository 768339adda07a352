package org.fallrule.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Written;
import org.fallrule.review.Review;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of findings from one state to the next: outfalls that are to stay 5 ft from something. */
class CourseTest {
    private static final Place HERE = Place.of("rules/a.yaml").at(3, 1);
    private static final Basis BASIS = new Basis(
            Basis.Kind.PRACTICE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), HERE);
    private static final Limit FIVE_FEET = new Limit(Bound.AT_LEAST, Written.parse("5 ft", Dimension.LENGTH));

    private static Feature outfall(String id) {
        return PlanInFeet.plan()
                .with(Role.OUTFALL, id, "POINT (0 0)")
                .site()
                .features(Role.OUTFALL)
                .get(0);
    }

    private static Finding finding(String rule, Observation seen) {
        return new Finding(rule, "Away", "clearance", Weight.MUST, BASIS, HERE, seen);
    }

    private static Finding away(String id, double feet, double accuracyFeet) {
        return finding(
                "away",
                Observation.measured(
                        outfall(id),
                        new Measured(
                                "plan distance",
                                Length.feet(feet),
                                Length.feet(accuracyFeet).metres(),
                                Optional.of(FIVE_FEET),
                                Optional.empty())));
    }

    private static Finding untold(String id, int lacks) {
        UnaryOperator<Observation> more = seen -> seen.lacking(new Missing("something else", "say it"));
        Observation seen = Observation.cannotTell(outfall(id), new Missing("where it is", "draw it"));
        return finding("away", lacks > 1 ? more.apply(seen) : seen);
    }

    private static List<String> changes(List<Finding> before, List<Finding> after, String... outfallsAfter) {
        PlanInFeet then = PlanInFeet.plan().with(Role.OUTFALL, "OF-1", "POINT (0 0)");
        PlanInFeet now = PlanInFeet.plan();
        for (String id : outfallsAfter) {
            now = now.with(Role.OUTFALL, id, "POINT (0 0)");
        }
        FeaturePairs pairs = FeaturePairs.of(then.site(), now.site());
        return FindingChanges.of(new Review(before, List.of()), new Review(after, List.of()), pairs).stream()
                .map(change -> change.change().word() + ": " + change.why())
                .toList();
    }

    private static String change(Finding before, Finding after) {
        List<String> changes = changes(List.of(before), List.of(after), "OF-1");
        assertThat(changes).hasSize(1);
        return changes.get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "6.00, 4.00, 'worse: meets, now fails'",
        "4.00, 6.00, 'gone: fails, now meets'",
        "4.00, 5.00, 'gone: fails, now meets'",
        "5.00, 4.99, 'worse: meets, now fails'",
        "3.00, 4.00, 'better: 1 ft nearer to what is asked'",
        "4.00, 3.25, 'worse: 0.75 ft farther from what is asked'",
        "4.00, 4.00, 'unchanged: as it was'",
        "4.00, 4.003, 'unchanged: as it was'",
        "6.00, 9.00, 'unchanged: settled in both'",
    })
    void aValueHeldAgainstTheSameLimit(double before, double after, String course) {
        assertThat(change(away("OF-1", before, 0), away("OF-1", after, 0))).isEqualTo(course);
    }

    @Test
    void aBorderlineFindingStandsBetween() {
        assertThat(change(away("OF-1", 4, 0), away("OF-1", 4.9, 0.2))).isEqualTo("better: fails, now borderline");
        assertThat(change(away("OF-1", 4.9, 0.2), away("OF-1", 4, 0))).isEqualTo("worse: borderline, now fails");
    }

    @Test
    void toLeaveOutWhatWasKnownIsNeverBetter() {
        assertThat(change(away("OF-1", 4, 0), untold("OF-1", 1))).isEqualTo("worse: fails, now cannot tell");
        assertThat(change(away("OF-1", 6, 0), untold("OF-1", 1))).isEqualTo("worse: meets, now cannot tell");
        Finding ofPlan = finding("away", Observation.cannotTell(new Missing("the outfall layer", "supply it")));
        assertThat(changes(List.of(away("OF-1", 4, 0)), List.of(ofPlan))).contains("worse: fails, now no longer told");
    }

    @Test
    void whatCanBeToldNowCountsByWhatItTells() {
        assertThat(change(untold("OF-1", 1), away("OF-1", 4, 0))).isEqualTo("worse: cannot tell, now fails");
        assertThat(change(untold("OF-1", 1), away("OF-1", 4.9, 0.2))).isEqualTo("better: cannot tell, now borderline");
        assertThat(change(untold("OF-1", 1), away("OF-1", 6, 0))).isEqualTo("gone: cannot tell, now meets");
        assertThat(change(untold("OF-1", 2), untold("OF-1", 1))).isEqualTo("better: less is missing");
        assertThat(change(untold("OF-1", 1), untold("OF-1", 2))).isEqualTo("worse: more is missing");
    }

    @ParameterizedTest
    @CsvSource({
        "6.00, 5.50, 'unchanged: as it was'",
        "4.50, 4.00, 'worse: 0.50 ft farther from what is asked'",
        "6.00, 4.00, 'worse: 2 ft farther from what is asked'",
    })
    void whatIsKnownOfSomethingThatCannotBeToldCountsOnceItMisses(double before, double after, String course) {
        assertThat(change(partlyTold(before), partlyTold(after))).isEqualTo(course);
    }

    private static Finding partlyTold(double feet) {
        Observation seen = away("OF-1", feet, 0).observation();
        return finding("away", seen.with(Outcome.CANNOT_TELL).lacking(new Missing("something else", "say it")));
    }

    @Test
    void aFindingOfARenamedThingIsStillThatFinding() {
        assertThat(changes(List.of(away("OF-1", 4, 0)), List.of(away("OUT", 4, 0)), "OUT"))
                .containsExactly("unchanged: as it was");
    }

    @Test
    void aThingThatIsNoMoreTakesItsFindingsAlong() {
        assertThat(changes(List.of(away("OF-1", 4, 0)), List.of()))
                .containsExactly("gone: outfall OF-1 is no longer in the plan");
        assertThat(changes(List.of(away("OF-1", 6, 0)), List.of()))
                .containsExactly("unchanged: outfall OF-1 is no longer in the plan");
    }

    @Test
    void aThingThatIsNewBringsItsOwn() {
        assertThat(changes(
                        List.of(away("OF-1", 4, 0)), List.of(away("OF-1", 4, 0), away("OF-2", 3, 0)), "OF-1", "OF-2"))
                .containsExactly("new: was not there before", "unchanged: as it was");
    }

    @Test
    void whatCouldNotBeToldOfTheWholePlanIsNotNewWhenItIsToldOfThings() {
        Finding ofPlan = finding("away", Observation.cannotTell(new Missing("the walk layer", "supply it")));

        assertThat(changes(List.of(ofPlan), List.of(untold("OF-1", 1)), "OF-1"))
                .containsExactly("better: could not be told before", "gone: the plan says enough now");
        assertThat(changes(List.of(ofPlan), List.of(away("OF-1", 4, 0)), "OF-1"))
                .containsExactly("new: could not be told before", "gone: the plan says enough now");
    }
}
