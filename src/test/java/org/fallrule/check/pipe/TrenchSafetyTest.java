package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.junit.jupiter.api.Test;

/** Depths after 29 CFR 1926.652(a)(1)(ii), protective system from 5 ft, and 1926.651(c)(2), way out from 4 ft. */
class TrenchSafetyTest {
    private static final String OSHA = """
            protection_from: 5 ft
            egress_from: 4 ft
            egress_within: 25 ft""";

    private static final String LOOK =
            "; at any depth a competent person must look for signs of a cave-in before somebody goes down";
    private static final String PROTECTED = "; unless it is cut wholly in stable rock";
    private static final String WAY_OUT = "; no more than 25 ft of lateral travel from anybody in it";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new TrenchSafety(), terms);
    }

    /** Ground at 10 ft, flat, over a pipe of 100 ft whose wall has no thickness. */
    private static PlanInFeet pipe(String up, String down) {
        return plan().with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 0, 100 0)",
                        "diameter = 4 in",
                        "invert_up = " + up + " ft",
                        "invert_down = " + down + " ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .spots("-20 -20 10, 120 -20 10, 120 20 10, -20 20 10");
    }

    @Test
    void aShallowTrenchIsNotCalledSafe() {
        assertThat(check(pipe("8", "7"), OSHA)).containsExactly("meets P-1: 3.00 ft; at station 1+00.0" + LOOK);
    }

    @Test
    void fromFourFeetOnThereMustBeAWayOut() {
        assertThat(check(pipe("7", "5.5"), OSHA))
                .containsExactly(
                        "meets P-1: 4.50 ft; at station 1+00.0" + LOOK,
                        "meets P-1: 33.33 ft; station 0+66.7 to 1+00.0; up to 4.50 ft deep" + WAY_OUT);
    }

    @Test
    void exactlyFourFeetCountsOverItsWholeLength() {
        assertThat(check(pipe("6", "6"), OSHA))
                .contains("meets P-1: 100.00 ft; station 0+00.0 to 1+00.0; up to 4.00 ft deep" + WAY_OUT);
    }

    @Test
    void exactlyFiveFeetCountsOverItsWholeLength() {
        assertThat(check(pipe("5", "5"), OSHA))
                .contains("meets P-1: 100.00 ft; station 0+00.0 to 1+00.0; up to 5.00 ft deep" + PROTECTED);
    }

    @Test
    void fiveFeetAtASinglePlaceIsSaidThough() {
        assertThat(check(pipe("6", "5"), OSHA))
                .contains("meets P-1: 0.00 ft; station 1+00.0 to 1+00.0; up to 5.00 ft deep" + PROTECTED);
    }

    @Test
    void justUnderFiveFeetAsksForNoProtectiveSystem() {
        assertThat(check(pipe("5.1", "5.1"), OSHA)).noneMatch(line -> line.contains("stable rock"));
    }

    @Test
    void beddingMakesTheTrenchDeeper() {
        assertThat(check(pipe("5.2", "5.2"), OSHA + "\nbedding: 4 in"))
                .contains("meets P-1: 100.00 ft; station 0+00.0 to 1+00.0; up to 5.13 ft deep" + PROTECTED);
    }

    @Test
    void twoDeepReachesOfOnePipeAreAddedUp() {
        PlanInFeet plan = pipe("6.5", "6.5").spots("20 -20 12, 20 20 12, 50 -20 10, 50 20 10, 80 -20 12, 80 20 12");

        assertThat(check(plan, OSHA))
                .contains("meets P-1: 35.00 ft; station 0+10.0 to 0+27.5, 0+72.5 to 0+90.0; up to 5.50 ft deep"
                        + PROTECTED)
                .doesNotHaveDuplicates();
    }

    @Test
    void eachDeepPipeIsNamedAndTheDeepestFirst() {
        PlanInFeet plan = pipe("7", "5.5")
                .with(
                        PIPE,
                        "P-2",
                        "LINESTRING (0 10, 100 0)",
                        "diameter = 4 in",
                        "invert_up = 4 ft",
                        "invert_down = 4 ft");

        assertThat(check(plan, OSHA)).hasSize(4).first().asString().startsWith("meets P-2: 6.00 ft");
    }

    @Test
    void whereTheGroundIsNotKnownItSaysSo() {
        PlanInFeet plan = plan().with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 0, 100 0)",
                        "diameter = 4 in",
                        "invert_up = 8 ft",
                        "invert_down = 4 ft")
                .spots("-20 -20 10, 80 -20 10, 80 20 10, -20 20 10");

        assertThat(check(plan, OSHA))
                .contains("cannot_tell P-1; lacks ground above pipe P-1 from station 0+80.0 to 1+00.0");
    }

    @Test
    void withoutInvertsItCannotBeTold() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 100 0)")
                .spots("-20 -20 10, 120 -20 10, 120 20 10, -20 20 10");

        assertThat(check(plan, OSHA))
                .containsExactly(
                        "cannot_tell P-1; lacks the upstream invert of pipe P-1; lacks the downstream invert of"
                                + " pipe P-1; lacks diameter of pipe P-1");
    }

    @Property(tries = 50)
    void itNeverFailsAPlan(
            @ForAll @DoubleRange(min = -5, max = 12) double up, @ForAll @DoubleRange(min = -5, max = 12) double down) {
        assertThat(pipe(Double.toString(up), Double.toString(down)).observe(new TrenchSafety(), OSHA))
                .extracting(Observation::outcome)
                .doesNotContain(Outcome.FAILS, Outcome.BORDERLINE);
    }

    /** On flat ground over a straight fall the reach of so much depth follows from similar triangles. */
    @Property(tries = 50)
    void theReachFollowsFromTheFall(@ForAll @DoubleRange(min = 5.2, max = 9) double deep) {
        List<Observation> seen = pipe("10", Double.toString(10 - deep)).observe(new TrenchSafety(), OSHA);

        assertThat(seen.get(1).measured().orElseThrow().value().si() / 0.3048)
                .isCloseTo(100 * (deep - 5) / deep, within(1e-6));
    }
}
