package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** A frost depth of 30 in is invented; that a storm basin is held to it at all is common practice without a source. */
class FrostTest {
    private static final String BASINS = """
            of: inlet
            of_where: kind <> 'downspout'
            at_least: 30 in""";
    private static final String TRAPS = """
            of: pipe
            at_least: 30 in""";

    private static final String OF_PIPE = "; its invert is taken from the end of pipe P-1";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Frost(), terms);
    }

    /** A basin whose outgoing pipe lies 24 in below its rim. */
    private static PlanInFeet basin(String... attributes) {
        return plan().with(INLET, "CB-1", "POINT (0 0)", attributes)
                .with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 0, 100 0)",
                        "diameter = 4 in",
                        "invert_up = 8 ft",
                        "invert_down = 6 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)");
    }

    private static PlanInFeet withSump(String sump) {
        return basin("kind = basin", "rim = 10 ft", "sump = " + sump);
    }

    @Test
    void aSumpThatReachesBelowTheFrostMeets() {
        assertThat(check(withSump("8 in"), BASINS)).containsExactly("meets CB-1: 32.0 in" + OF_PIPE);
    }

    @Test
    void aSumpExactlyAsDeepAsTheFrostMeets() {
        assertThat(check(withSump("6 in"), BASINS)).containsExactly("meets CB-1: 30.0 in" + OF_PIPE);
    }

    @Test
    void aShallowSumpFails() {
        assertThat(check(withSump("4 in"), BASINS)).containsExactly("fails CB-1: 28.0 in" + OF_PIPE);
    }

    @Test
    void aBasinThatDrainsIsNotAsked() {
        assertThat(check(withSump("0 in"), BASINS)).isEmpty();
    }

    @Test
    void aBasinOfWhichThePlanSaysNoSumpLeavesItOpen() {
        assertThat(check(basin("kind = basin", "rim = 10 ft"), BASINS))
                .containsExactly("cannot_tell CB-1; lacks sump of inlet CB-1");
    }

    @Test
    void withoutARimTheGroundCounts() {
        PlanInFeet plan = basin("kind = basin", "sump = 6 in").spots("-9 -9 10, 120 -9 10, 120 9 10, -9 9 10");

        assertThat(check(plan, BASINS)).containsExactly("meets CB-1: 30.0 in" + OF_PIPE);
    }

    @Test
    void withoutRimAndGroundItCannotBeTold() {
        assertThat(check(basin("kind = basin", "sump = 6 in"), BASINS))
                .containsExactly("cannot_tell CB-1; lacks the ground at inlet CB-1");
    }

    @Test
    void aBasinWithoutAPipeNeedsItsOwnInvert() {
        PlanInFeet alone = plan().with(
                        INLET, "CB-1", "POINT (0 0)", "kind = basin", "rim = 10 ft", "sump = 6 in", "invert = 8 ft");
        PlanInFeet bare = plan().with(INLET, "CB-1", "POINT (0 0)", "kind = basin", "rim = 10 ft", "sump = 6 in");

        assertThat(check(alone, BASINS)).containsExactly("meets CB-1: 30.0 in");
        assertThat(check(bare, BASINS)).containsExactly("cannot_tell CB-1; lacks the outgoing invert of inlet CB-1");
    }

    @Test
    void aDownspoutHoldsNoWater() {
        assertThat(check(basin("kind = downspout"), BASINS)).isEmpty();
    }

    @Test
    void anInletOfUnknownKindLeavesItOpenUnlessItIsDeepEnough() {
        assertThat(check(basin("rim = 10 ft", "sump = 8 in"), BASINS)).containsExactly("meets CB-1: 32.0 in" + OF_PIPE);
        assertThat(check(basin("rim = 10 ft", "sump = 2 in"), BASINS))
                .containsExactly("cannot_tell CB-1: 26.0 in; lacks kind of inlet CB-1" + OF_PIPE);
    }

    @Test
    void whereTheGroundDoesNotFreezeNothingIsAsked() {
        assertThat(check(withSump("4 in"), "of: inlet\nat_least: none")).isEmpty();
    }

    @Test
    void anExistingBasinIsKnownOnlyAsWellAsItWasSurveyed() {
        PlanInFeet plan = basin("kind = basin", "rim = 10 ft", "sump = 6.2 in", "status = existing");

        assertThat(check(plan.surveyedTo(0.1, 0.05), BASINS)).containsExactly("borderline CB-1: 30.2 in" + OF_PIPE);
    }

    @Test
    void pipeThatDrainsFreelyIsNotHeldToTheFrost() {
        assertThat(check(trap(), TRAPS)).isEmpty();
        assertThat(check(trap("holds_water = false"), TRAPS)).isEmpty();
    }

    @Test
    void aTrapIsHeldByItsCover() {
        assertThat(check(trap("holds_water = true"), TRAPS)).containsExactly("fails P-1: 26.0 in; at station 0+00.0");
        assertThat(check(trap("holds_water = true"), "of: pipe\nat_least: 26 in"))
                .containsExactly("meets P-1: 26.0 in; at station 0+00.0");
    }

    @Test
    void aTrapWithoutInvertsCannotBeTold() {
        PlanInFeet plan = plan().with(
                        PIPE,
                        "P-1",
                        "LINESTRING (0 0, 10 0)",
                        "diameter = 4 in",
                        "invert_up = 8 ft",
                        "holds_water = true");

        assertThat(check(plan, TRAPS)).containsExactly("cannot_tell P-1; lacks the downstream invert of pipe P-1");
    }

    private static PlanInFeet trap(String... more) {
        String[] attributes = Stream.concat(
                        Stream.of("diameter = 4 in", "invert_up = 7.5 ft", "invert_down = 7.4 ft"), Stream.of(more))
                .toArray(String[]::new);
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 10 0)", attributes)
                .spots("-9 -9 10, 120 -9 10, 120 9 10, -9 9 10")
                .empty(DRIVE)
                .empty(WALK);
    }

    /** Digging a sump deeper never makes a basin that meets the rule fail it. */
    @Property(tries = 100)
    void aDeeperSumpIsNeverWorse(
            @ForAll @DoubleRange(min = 0.1, max = 20) double sump,
            @ForAll @DoubleRange(min = 0, max = 20) double more) {
        boolean meets = check(withSump(sump + " in"), BASINS).get(0).startsWith("meets");
        boolean deeper = check(withSump((sump + more) + " in"), BASINS).get(0).startsWith("meets");

        assertThat(deeper || !meets).isTrue();
    }

    @Test
    void theInletsOwnInvertCountsBeforeThePipes() {
        assertThat(check(basin("kind = basin", "rim = 10 ft", "sump = 6 in", "invert = 7.9 ft"), BASINS))
                .containsExactly("meets CB-1: 31.2 in");
    }
}
