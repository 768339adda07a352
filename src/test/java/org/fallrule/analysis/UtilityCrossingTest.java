package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.PROPOSED_GROUND;
import static org.fallrule.site.Role.STREET;
import static org.fallrule.site.Role.UTILITY;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import org.fallrule.check.Baseline;
import org.fallrule.check.PlanInFeet;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class UtilityCrossingTest {
    private static final Length SIZE = Length.inches(4);

    /** A level yard at 100 ft; a pipe of 6 in outside, its bottom and invert at a level, south to north through x = 30. */
    private static PlanInFeet pipeAt(double invert, String... ofUtility) {
        return plan().in(Baseline.locality())
                .absent(DRIVE)
                .absent(WALK)
                .spots("-90 -90 100, 190 -90 100, 0 190 100")
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING Z (30 -20 " + invert + ", 30 20 " + invert + ")",
                        "outside_diameter = 6 in")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", ofUtility);
    }

    private static UtilityCrossing only(PlanInFeet plan) {
        SiteAnalysis analysis = plan.analysis();
        List<UtilityCrossing> all =
                UtilityCrossing.along(analysis, analysis.network().runs().get(0));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static Likelihood likelihood(PlanInFeet plan) {
        return only(plan).likelihood(SIZE, Length.inches(12), Length.inches(12));
    }

    @Test
    void theGapIsFromOutsideToOutsideAndSaysWhichIsOver() {
        VerticalGap over = only(pipeAt(98, "top = 97 ft", "outside_diameter = 4 in", "quality = A"))
                .gap(SIZE)
                .orElseThrow();
        VerticalGap under = only(pipeAt(95, "top = 97 ft", "outside_diameter = 6 in", "quality = A"))
                .gap(SIZE)
                .orElseThrow();

        assertThat(over.isDrainOver()).isTrue();
        assertThat(over.clear().metres()).isCloseTo(0.3048, within(1e-9));
        assertThat(under.isDrainOver()).isFalse();
        // the utility's bottom at 96.5, the pipe's top at 95.5
        assertThat(under.clear().metres()).isCloseTo(0.3048, within(1e-9));
    }

    /** 3 ft under the ground at 100 ft that was marked on, whatever is heaped on it. */
    @Test
    void aUtilityLiesWhereItLayWhenTheGroundIsRaisedOverIt() {
        PlanInFeet raised = pipeAt(98, "depth = 36 in", "quality = A")
                .with(PROPOSED_GROUND, "G-1", "POLYGON Z ((0 -30 103, 60 -30 103, 30 60 103, 0 -30 103))");

        assertThat(raised.analysis().ground().orElseThrow().elevationAt(new Coordinate(30 * 0.3048, 0)))
                .hasValueSatisfying(level -> assertThat(level.metres() / 0.3048).isCloseTo(103, within(1e-9)));
        assertThat(only(raised).top().orElseThrow().metres() / 0.3048).isCloseTo(97, within(1e-9));
    }

    @Test
    void aDepthThatRestsOnPaintIsToldButNotReliedOn() {
        assertThat(only(pipeAt(98, "depth = 36 in", "quality = A")).isHeightKnown())
                .isTrue();
        assertThat(only(pipeAt(98, "depth = 36 in", "quality = C")).isHeightKnown())
                .isFalse();
        assertThat(only(pipeAt(98, "depth = 36 in", "quality = C")).gap(SIZE)).isPresent();
        assertThat(only(pipeAt(98, "quality = A")).isHeightKnown()).isFalse();
    }

    @Test
    void theAngleIsBetweenNoneAndARightOne() {
        assertThat(Math.toDegrees(only(pipeAt(98)).angle().radians())).isCloseTo(90, within(1e-9));

        PlanInFeet slanted =
                plan().with(PIPE, "P-1", "LINESTRING (0 -10, 20 10)").with(UTILITY, "U-1", "LINESTRING (60 0, -60 0)");
        assertThat(Math.toDegrees(only(slanted).angle().radians())).isCloseTo(45, within(1e-9));
    }

    @Test
    void atABendOfTheUtilityTheLesserAngleCounts() {
        PlanInFeet bent = plan().with(PIPE, "P-1", "LINESTRING (10 -10, 10 10)")
                .with(UTILITY, "U-1", "LINESTRING (0 0, 10 0, 20 20)");

        assertThat(Math.toDegrees(only(bent).angle().radians()))
                .isCloseTo(Math.toDegrees(Math.atan2(10, 20)), within(1e-9));
    }

    /**
     * Minimum covers of NEC table 300.5 (2017 to 2020; read in a page with the table): 24 in for direct-buried cables and 18 in
     * for PVC in all places not named below, 24 in under streets. 49 CFR 192.361(a): 12 in over gas services on private
     * property, 18 in in streets (from memory).
     */
    @Test
    void whatCodesAskOfCoverLiesInTheBandThatIsExpected() {
        assertThat(feetOf("electric", "lawn")).satisfies(band -> {
            assertThat(band.from()).isEqualTo(Length.inches(18));
            assertThat(band.to()).isGreaterThanOrEqualTo(Length.inches(24));
        });
        assertThat(feetOf("electric", "street").from()).isEqualTo(Length.inches(24));
        assertThat(feetOf("electric", "drive").from()).isEqualTo(Length.inches(18));
        assertThat(feetOf("lighting", "lawn").from()).isEqualTo(Length.inches(6));
        assertThat(feetOf("lighting", "drive").from()).isEqualTo(Length.inches(18));
        assertThat(feetOf("gas", "lawn").from()).isEqualTo(Length.inches(12));
        assertThat(feetOf("gas", "street").from()).isEqualTo(Length.inches(18));
    }

    private static ExpectedCover.Band feetOf(String kind, String surface) {
        return Baseline.locality()
                .expectedCover()
                .of(java.util.Optional.of(kind))
                .orElseThrow()
                .under(java.util.Optional.of(surface));
    }

    @Test
    void theBandLiesUnderTheGroundThere() {
        ExpectedLevel expected = only(pipeAt(98, "kind = electric")).expected().orElseThrow();

        assertThat(expected.highest().orElseThrow().metres()).isCloseTo(98.5 * 0.3048, within(1e-6));
        assertThat(expected.lowest().orElseThrow().metres()).isCloseTo(97 * 0.3048, within(1e-6));
        assertThat(expected.statedAt().fileAndLine()).startsWith("rules/baseline.yaml:");
    }

    @Test
    void underAStreetTheBandIsTheStreets() {
        PlanInFeet plan =
                pipeAt(98, "kind = electric").with(STREET, "ST-1", "POLYGON ((0 -9, 60 -9, 60 9, 0 9, 0 -9))");

        assertThat(only(plan).expected().orElseThrow().highest().orElseThrow().metres())
                .isCloseTo(98 * 0.3048, within(1e-6));
    }

    /** The electric line's top is expected between 97.0 and 98.5 ft; 12 in are asked either way of a pipe 6 in high. */
    @Test
    void aPipeWithinTheBandLikelyConflicts() {
        assertThat(likelihood(pipeAt(97.6, "kind = electric"))).isEqualTo(Likelihood.CONFLICT);
    }

    @Test
    void aPipeClearOfTheWholeBandIsLikelyClear() {
        assertThat(likelihood(pipeAt(99.6, "kind = electric"))).isEqualTo(Likelihood.CLEAR);
        assertThat(likelihood(pipeAt(95, "kind = electric"))).isEqualTo(Likelihood.CLEAR);
    }

    @Test
    void exactlyClearOfTheBandIsClear() {
        // bottom 12 in over 98.5; and top 12 in and 4 in of line below 97.0
        assertThat(likelihood(pipeAt(99.5, "kind = electric"))).isEqualTo(Likelihood.CLEAR);
        assertThat(likelihood(pipeAt(95.1666667, "kind = electric"))).isEqualTo(Likelihood.CLEAR);
        assertThat(likelihood(pipeAt(99.49, "kind = electric"))).isEqualTo(Likelihood.OPEN);
        assertThat(likelihood(pipeAt(95.18, "kind = electric"))).isEqualTo(Likelihood.OPEN);
    }

    @Test
    void withoutAKindOrAPipeLevelItIsOpen() {
        assertThat(likelihood(pipeAt(97.6))).isEqualTo(Likelihood.OPEN);
        assertThat(likelihood(plan().in(Baseline.locality())
                        .with(PIPE, "P-1", "LINESTRING (30 -20, 30 20)")
                        .with(UTILITY, "U-1", "LINESTRING (0 0, 60 0)", "kind = electric")))
                .isEqualTo(Likelihood.OPEN);
    }
}
