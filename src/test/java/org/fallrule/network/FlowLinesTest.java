package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class FlowLinesTest {
    private static final double FOOT = 0.3048;

    /** A trunk of two pipes to an outfall, a short branch into its middle, and another drain with an outfall of its own. */
    private static final PlanInFeet TWO_DRAINS = plan().with(INLET, "IN-1", "POINT (0 0)")
            .with(INLET, "IN-2", "POINT (60 20)")
            .with(OUTFALL, "OF-1", "POINT (100 0)")
            .with(OUTFALL, "OF-2", "POINT (0 90)")
            .with(PIPE, "BRANCH", "LINESTRING (60 20, 60 0)")
            .with(PIPE, "OTHER", "LINESTRING (50 90, 0 90)")
            .with(PIPE, "LOWER", "LINESTRING (100 0, 60 0)")
            .with(PIPE, "UPPER", "LINESTRING (0 0, 60 0)");

    private static List<FlowLine> lines(PlanInFeet plan) {
        return FlowLines.of(plan.analysis().network());
    }

    private static List<List<String>> ids(PlanInFeet plan) {
        return lines(plan).stream()
                .map(line -> line.runs().stream().map(PipeRun::id).toList())
                .toList();
    }

    @Test
    void eachOutfallHasItsLongestLineAndThenTheBranchesThatJoinIt() {
        assertThat(ids(TWO_DRAINS)).containsExactly(List.of("UPPER", "LOWER"), List.of("BRANCH"), List.of("OTHER"));
    }

    @Test
    void aBranchIsNamedByTheStructureItComesFromAndThePipeThatTakesItsWater() {
        assertThat(lines(TWO_DRAINS))
                .extracting(FlowLine::name)
                .containsExactly("IN-1 to OF-1", "IN-2 to LOWER", "upper end of OTHER to OF-2");
        assertThat(lines(TWO_DRAINS).get(1).into().map(PipeRun::id)).contains("LOWER");
        assertThat(lines(TWO_DRAINS).get(0).into()).isEmpty();
    }

    @Test
    void aDrainThatLeadsNowhereIsNamedByItsEnds() {
        assertThat(lines(plan().with(PIPE, "P-1", "LINESTRING (0 0, 60 0)")))
                .extracting(FlowLine::name)
                .containsExactly("upper end of P-1 to lower end of P-1");
    }

    @Test
    void stationsRunOnFromPipeToPipe() {
        FlowLine trunk = lines(TWO_DRAINS).get(0);

        assertThat(trunk.length()).isCloseTo(100 * FOOT, within(1e-9));
        assertThat(trunk.legs()).hasSize(2);
        assertThat(trunk.legs().get(0).start()).isZero();
        assertThat(trunk.legs().get(0).end()).isCloseTo(60 * FOOT, within(1e-9));
        assertThat(trunk.legs().get(1).start()).isCloseTo(60 * FOOT, within(1e-9));
        assertThat(trunk.legs().get(1).end()).isCloseTo(100 * FOOT, within(1e-9));
        assertThat(trunk.from().structure(INLET)).isPresent();
        assertThat(trunk.to().isOutfall()).isTrue();
    }

    @Test
    void theLineEndsAtAnOutfallEvenWhereAPipeLeadsOnFromIt() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(OUTFALL, "OF-2", "POINT (90 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)")
                .with(PIPE, "P-2", "LINESTRING (50 0, 90 0)");

        assertThat(ids(plan)).containsExactly(List.of("P-1"), List.of("P-2"));
    }

    @Test
    void aLoopIsWalkedOnce() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "P-3", "LINESTRING (15 20, 0 0)");

        assertThat(ids(plan))
                .singleElement()
                .satisfies(line -> assertThat(line).containsExactlyInAnyOrder("P-1", "P-2", "P-3"));
    }

    @Test
    void aLineHasAtLeastOnePipe() {
        assertThatThrownBy(() -> new FlowLine(List.of(), Optional.empty())).hasMessageContaining("at least one pipe");
    }
}
