package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.CLEANOUT;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.junit.jupiter.api.Test;

/** A drain laid anew from another is the one that is built from the plan. */
class LaidAnewTest {
    /** The second pipe is drawn against its flow. */
    private static PlanInFeet drain(String up, String down, String rim) {
        return plan().with(INLET, "I-1", "POINT (0 0)", "rim = " + rim + " ft", "invert = " + up + " ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)", "invert = " + down + " ft")
                .with(CLEANOUT, "CO-1", "POINT (50 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)", "diameter = 4 in")
                .with(PIPE, "P-2", "LINESTRING Z (100 0 %1$s, 50 0 %1$s)".formatted(down), "diameter = 4 in")
                .with(PIPE, "P-3", "LINESTRING (200 0, 250 0)", "diameter = 4 in");
    }

    private static PipeNetwork laidAnew(PlanInFeet before, PlanInFeet after) {
        return NetworkBuilder.build(before.analysis().network(), before.site(), after.site(), Optional.empty());
    }

    private static void assertSame(PipeNetwork one, PipeNetwork other) {
        assertThat(one.runs()).isEqualTo(other.runs());
        assertThat(one.junctions()).isEqualTo(other.junctions());
        assertThat(says(one)).isEqualTo(says(other));
        assertThat(one.runs().stream().map(one::isTaken))
                .isEqualTo(other.runs().stream().map(other::isTaken).toList());
    }

    private static List<String> says(PipeNetwork network) {
        return network.problems().stream().map(Fault::says).toList();
    }

    @Test
    void atOtherHeightsItIsTheOneThatIsBuilt() {
        PlanInFeet after = drain("97", "95", "100");
        PipeNetwork laid = laidAnew(drain("98", "96", "100"), after);

        assertSame(laid, after.analysis().network());
        assertThat(laid.runs().get(1).axis().getCoordinate().getX()).isLessThan(20);
        assertThat(says(laid)).hasSize(1);
    }

    @Test
    void anInvertAboveItsRimIsAProblemAgainAndOnlyWhileItIsThere() {
        PlanInFeet right = drain("98", "96", "100");
        PlanInFeet wrong = drain("101", "96", "100");

        assertSame(laidAnew(right, wrong), wrong.analysis().network());
        assertSame(laidAnew(wrong, right), right.analysis().network());
        assertThat(says(laidAnew(right, wrong)))
                .hasSizeGreaterThan(says(laidAnew(wrong, right)).size());
    }

    @Test
    void whatIsMovedIsBuiltAnew() {
        PlanInFeet before = drain("98", "96", "100");
        PlanInFeet after = before.without(OUTFALL, "OF-1").with(OUTFALL, "OF-1", "POINT (120 0)", "invert = 96 ft");

        assertSame(laidAnew(before, after), after.analysis().network());
    }

    @Test
    void whatIsAddedIsBuiltAnew() {
        PlanInFeet before = drain("98", "96", "100");
        PlanInFeet after = before.with(PIPE, "P-4", "LINESTRING (50 20, 50 0)", "diameter = 4 in");

        assertSame(laidAnew(before, after), after.analysis().network());
    }
}
