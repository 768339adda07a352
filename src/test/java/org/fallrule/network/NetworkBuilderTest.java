package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.CLEANOUT;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class NetworkBuilderTest {

    private static PipeNetwork network(PlanInFeet plan) {
        return NetworkBuilder.build(plan.site());
    }

    private static List<String> problems(PlanInFeet plan) {
        return network(plan).problems().stream().map(Fault::says).toList();
    }

    /** The ids of the pipes from an inlet down to an outfall. */
    private static List<String> way(PlanInFeet plan, String inlet) {
        PipeNetwork network = network(plan);
        Feature from = plan.site().features(Role.INLET).stream()
                .filter(each -> each.id().equals(inlet))
                .findFirst()
                .orElseThrow();
        return network.downstreamOf(network.junctionOf(from).orElseThrow()).stream()
                .map(PipeRun::id)
                .toList();
    }

    private static PipeRun run(PlanInFeet plan, String id) {
        return network(plan).runs().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** An inlet, two pipes with so many feet between their ends, and an outfall. */
    private static PlanInFeet twoPipes(String gap) {
        return plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)")
                .with(PIPE, "P-2", "LINESTRING (50 " + gap + ", 100 0)");
    }

    @Test
    void endsLessThanHalfAFootApartMeet() {
        assertThat(way(twoPipes("0.49"), "I-1")).containsExactly("P-1", "P-2");
    }

    @Test
    void endsExactlyHalfAFootApartMeet() {
        assertThat(way(twoPipes("0.5"), "I-1")).containsExactly("P-1", "P-2");
        assertThat(problems(twoPipes("0.5"))).isEmpty();
    }

    @Test
    void endsMoreThanHalfAFootApartDoNotMeet() {
        assertThat(way(twoPipes("0.51"), "I-1")).containsExactly("P-1");
        assertThat(problems(twoPipes("0.51")))
                .containsExactly(
                        "pipe P-1 does not lead to an outfall; end a pipe of its line on one, or within 0.5 ft of the next pipe's end");
    }

    @Test
    void endsAtOnePlaceMeet() {
        assertThat(way(twoPipes("0"), "I-1")).containsExactly("P-1", "P-2");
    }

    @Test
    void anEndNearTwoStructuresBelongsToTheNearerOne() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (100.4 0)")
                .with(OUTFALL, "OF-2", "POINT (99.9 0.2)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)");

        assertThat(network(plan).outfallOf(run(plan, "P-1")).orElseThrow().id()).isEqualTo("OF-2");
    }

    @Test
    void aPipeDrawnFromItsOutfallIsTurned() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 98, 50 0 99, 50 50 100)");
        PipeRun run = run(plan, "P-1");

        assertThat(run.down().isOutfall()).isTrue();
        assertThat(run.invertUp()).contains(Elevation.feet(100));
        assertThat(run.invertDown()).contains(Elevation.feet(98));
    }

    @Test
    void aLineOfPipesDrawnEitherWayRunsToItsOutfall() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (90 0)")
                .with(PIPE, "P-1", "LINESTRING (30 0, 0 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 60 0)")
                .with(PIPE, "P-3", "LINESTRING (90 0, 60 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1", "P-2", "P-3");
    }

    @Test
    void betweenTwoOutfallsAPipeLeadsToTheNearerOne() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (40 0)")
                .with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(OUTFALL, "OF-2", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (40 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (40 0, 0 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-2");
        assertThat(run(plan, "P-1").down().structure(OUTFALL).orElseThrow().id())
                .isEqualTo("OF-2");
    }

    @Test
    void aLoopIsLeftOnItsShorterSide() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 0 40, 40 40, 40 0)")
                .with(PIPE, "P-2", "LINESTRING (0 0, 40 0)")
                .with(PIPE, "P-3", "LINESTRING (40 0, 50 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-2", "P-3");
    }

    /** Each of three junctions in a ring has its own pipe to an outfall 10 ft away; no side of the ring may be walked. */
    @Test
    void aRingOfJunctionsAllEquallyFarFromAnOutfallIsNotWalkedRound() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(PIPE, "R-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "R-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "R-3", "LINESTRING (15 20, 0 0)")
                .with(OUTFALL, "OF-1", "POINT (-10 0)")
                .with(OUTFALL, "OF-2", "POINT (40 0)")
                .with(OUTFALL, "OF-3", "POINT (15 30)")
                .with(PIPE, "P-1", "LINESTRING (0 0, -10 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 40 0)")
                .with(PIPE, "P-3", "LINESTRING (15 20, 15 30)");

        assertThat(way(plan, "I-1")).containsExactly("P-1");
    }

    @Test
    void aLoopWithoutAnOutfallIsAProblemOfEachPipeAndIsWalkedOnce() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "P-3", "LINESTRING (15 20, 0 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1", "P-2", "P-3");
        assertThat(problems(plan)).hasSize(3).allMatch(says -> says.contains("does not lead to an outfall"));
    }

    @Test
    void aPipeWithoutLengthDoesNotStandInTheWay() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-0", "LINESTRING (0 0, 0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1");
        assertThat(run(plan, "P-0").slope()).isEmpty();
    }

    /** Splitting the longer pipe is the designer's to do: where the two meet no invert is given. */
    @Test
    void aPipeThatEndsMidwayOnAnotherIsNotJoinedToIt() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (50 30)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (50 30, 50 0)");

        assertThat(problems(plan))
                .containsExactly(
                        "pipe P-2 does not lead to an outfall; end a pipe of its line on one, or within 0.5 ft of the next pipe's end");
    }

    @Test
    void structuresThatNoPipeReachesAreToldButForCleanouts() {
        PlanInFeet plan = twoPipes("0")
                .with(INLET, "I-9", "POINT (50 9)")
                .with(OUTFALL, "OF-9", "POINT (60 9)")
                .with(CLEANOUT, "C-9", "POINT (70 9)");

        assertThat(problems(plan))
                .containsExactly(
                        "outfall OF-9 no pipe ends on it; bring a pipe's end within 0.5 ft of it",
                        "inlet I-9 no pipe ends on it; bring a pipe's end within 0.5 ft of it");
    }

    @Test
    void aPlanWithoutPipesIsAnEmptyNetwork() {
        assertThat(network(plan()).runs()).isEmpty();
        assertThat(network(plan()).problems()).isEmpty();
    }

    @Test
    void theWayToDaylightIsCountedFromTheEndOfEachPipe() {
        PlanInFeet plan = twoPipes("0");
        PipeNetwork network = network(plan);

        assertThat(network.lengthToDaylight(run(plan, "P-1")))
                .contains(Length.feet(50).metres());
        assertThat(network.lengthToDaylight(run(plan, "P-2"))).contains(0.0);
    }

    @Test
    void aPopUpIsNoDaylight() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (50 0)", "kind = pop_up")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)");

        assertThat(network(plan).lengthToDaylight(run(plan, "P-1"))).isEmpty();
    }

    @Test
    void pipesThatShareAJunctionJoin() {
        PlanInFeet plan = twoPipes("0").with(PIPE, "P-3", "LINESTRING (0 0, 0 50)");

        assertThat(run(plan, "P-1").joins(run(plan, "P-2"))).isTrue();
        assertThat(run(plan, "P-3").joins(run(plan, "P-2"))).isFalse();
    }
}
