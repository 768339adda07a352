package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;
import static org.fallrule.site.Role.WALK;

import org.fallrule.check.Baseline;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/**
 * The figures for B, C and D are common practice without a published source: ASCE 38-22 gives none. For A 0.1 ft in height is
 * the standard's, 0.2 ft in plan from memory.
 */
class AccuracyTest {
    private static final double FOOT = 0.3048;

    private static PlanInFeet mark(String... attributes) {
        return plan().in(Baseline.locality()).with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", attributes);
    }

    private static Accuracy of(PlanInFeet plan) {
        return Accuracy.inPlan(plan.analysis(), feature(plan, UTILITY));
    }

    private static Feature feature(PlanInFeet plan, Role role) {
        return plan.site().features(role).get(0);
    }

    private static double feet(Accuracy accuracy) {
        return accuracy.metres() / FOOT;
    }

    @Test
    void aMarkIsKnownAsWellAsItsQualityAllows() {
        assertThat(feet(of(mark("quality = A")))).isCloseTo(0.2, within(1e-9));
        assertThat(feet(of(mark("quality = B")))).isCloseTo(2, within(1e-9));
        assertThat(feet(of(mark("quality = C")))).isCloseTo(3, within(1e-9));
        assertThat(feet(of(mark("quality = D")))).isCloseTo(4, within(1e-9));
    }

    @Test
    void aMarkWithoutAQualityCountsAsTheLeast() {
        assertThat(feet(of(mark()))).isCloseTo(4, within(1e-9));
        assertThat(of(mark("kind = gas")).notes(false).get(0))
                .startsWith("gas U-1: quality not given, so D, taken as known to 4 ft in plan by common practice"
                        + " (rules/baseline.yaml:");
    }

    @Test
    void itSaysFromWhichLineOfTheBook() {
        assertThat(of(mark("kind = gas", "quality = C")).notes(false).get(0))
                .matches("gas U-1: quality C, taken as known to 3 ft in plan by common practice"
                        + " \\(rules/baseline.yaml:\\d+\\)");
    }

    @Test
    void theBestSurveyOfPaintKnowsThePaintAndNotTheUtility() {
        assertThat(feet(of(mark("quality = C").surveyedTo(0.1, 0.05)))).isCloseTo(3, within(1e-9));
    }

    @Test
    void aPoorSurveyOfAnExposedUtilityIsThePoorerOfTheTwo() {
        Accuracy accuracy = of(mark("quality = A", "kind = gas").surveyedTo(1, 0.05));

        assertThat(feet(accuracy)).isCloseTo(1, within(1e-9));
        assertThat(accuracy.notes(true)).containsExactly("gas U-1 is known to 1 ft in plan by the survey");
        assertThat(accuracy.notes(false)).isEmpty();
    }

    @Test
    void itsOwnColumnWinsOverQualityAndSurvey() {
        Accuracy better = of(mark("quality = D", "horizontal_accuracy = 0.5 ft", "kind = gas")
                .surveyedTo(1, 1));

        assertThat(feet(better)).isCloseTo(0.5, within(1e-9));
        assertThat(better.notes(true)).containsExactly("gas U-1 is known to 0.50 ft in plan by horizontal_accuracy");
    }

    @Test
    void aDepthIsReliedOnOnlyWhereTheBookOrAColumnSaysHowWell() {
        assertThat(isDepthRelied(mark("quality = A"))).isTrue();
        assertThat(isDepthRelied(mark("quality = B"))).isTrue();
        assertThat(isDepthRelied(mark("quality = C"))).isFalse();
        assertThat(isDepthRelied(mark("quality = D"))).isFalse();
        assertThat(isDepthRelied(mark())).isFalse();
        assertThat(isDepthRelied(mark("quality = D", "vertical_accuracy = 0.1 ft")))
                .isTrue();
    }

    private static boolean isDepthRelied(PlanInFeet plan) {
        return Accuracy.isDepthRelied(plan.analysis(), feature(plan, UTILITY));
    }

    /** Independent errors add in squares: JCGM 100:2008, 5.1.2. */
    @Test
    void whatWasMeasuredCountsAndErrorsAddInSquares() {
        PlanInFeet plan = plan().surveyedTo(0.3, 0.4)
                .with(WALK, "W-1", "POLYGON ((0 0, 9 0, 9 9, 0 0))")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)")
                .with(OUTFALL, "OF-1", "POINT (0 0)");
        SiteAnalysis analysis = plan.analysis();
        Feature walk = feature(plan, WALK);
        Feature utility = feature(plan, UTILITY);
        Feature drawn = feature(plan, OUTFALL);

        assertThat(feet(Accuracy.ofDistance(analysis, walk, utility))).isCloseTo(0.3 * Math.sqrt(2), within(1e-9));
        assertThat(feet(Accuracy.ofDistance(analysis, drawn, walk))).isCloseTo(0.3, within(1e-9));
        assertThat(feet(Accuracy.ofDistance(analysis, drawn, drawn))).isZero();
        assertThat(feet(Accuracy.ofHeight(analysis, utility, drawn))).isCloseTo(0.4, within(1e-9));
        assertThat(feet(Accuracy.ofHeightAtGround(analysis, drawn))).isCloseTo(0.4, within(1e-9));
        assertThat(feet(Accuracy.ofDistanceOnGround(analysis, drawn))).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void withoutSurveyAndBookNothingIsSaid() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "quality = D");

        assertThat(of(plan).metres()).isZero();
        assertThat(of(plan).notes(true)).isEmpty();
        assertThat(isDepthRelied(plan)).isTrue();
    }

    @Test
    void aDesignedPipeHasThePlaceThatTheDesignGivesIt() {
        PlanInFeet plan =
                mark("quality = D").with(PIPE, "P-1", "LINESTRING (0 9, 60 9)").surveyedTo(0.3, 0.3);

        assertThat(feet(Accuracy.ofDistance(plan.analysis(), feature(plan, PIPE), feature(plan, UTILITY))))
                .isCloseTo(4, within(1e-9));
    }
}
