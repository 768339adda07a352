package org.fallrule.hydraulics.gradeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.hydraulics.UsUnits.pipe;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;

class DrainTreeTest {

    private static DrainNode node(String id, double inflow) {
        return new DrainNode(id, Optional.empty(), new Flow(inflow));
    }

    private static DrainPipe pipeFrom(String from, String to) {
        return new DrainPipe(
                from + "-" + to,
                from,
                to,
                pipe(4, 0.011),
                Length.feet(10),
                Elevation.feet(11),
                Elevation.feet(10),
                LocalLosses.betweenBoxes(0.5));
    }

    private static final List<DrainNode> NODES = List.of(node("A", 1), node("B", 2), node("C", 4), node("OUT", 0));

    @Test
    void addsUpWhatComesInAboveEachPipe() {
        DrainTree tree = DrainTree.of(NODES, List.of(pipeFrom("A", "C"), pipeFrom("C", "OUT"), pipeFrom("B", "C")))
                .value()
                .orElseThrow();

        assertThat(tree.flows()).containsEntry("A-C", new Flow(1)).containsEntry("B-C", new Flow(2));
        assertThat(tree.flows()).containsEntry("C-OUT", new Flow(7));
        assertThat(tree.fromOutfallUp().get(0).id()).isEqualTo("C-OUT");
    }

    @Test
    void mayHaveSeveralOutfalls() {
        DrainTree tree = DrainTree.of(NODES, List.of(pipeFrom("A", "C"), pipeFrom("B", "OUT")))
                .value()
                .orElseThrow();

        assertThat(tree.fromOutfallUp()).hasSize(2);
    }

    @Test
    void aForkIsNoTree() {
        assertThat(DrainTree.of(NODES, List.of(pipeFrom("A", "B"), pipeFrom("A", "C")))
                        .why())
                .isEqualTo("pipes A-B and A-C both leave node A; how the flow parts there is not known");
    }

    @Test
    void aCircleIsNoTree() {
        assertThat(DrainTree.of(NODES, List.of(pipeFrom("A", "B"), pipeFrom("B", "A"), pipeFrom("C", "OUT")))
                        .why())
                .isEqualTo("some pipes run in a circle and reach no outfall: A-B, B-A");
    }

    @Test
    void aPipeToNowhereIsNoTree() {
        assertThat(DrainTree.of(NODES, List.of(pipeFrom("A", "Z"))).why())
                .contains("A-Z")
                .contains("not there");
    }

    @Test
    void twoNodesOfOneNameAreNoTree() {
        assertThat(DrainTree.of(List.of(node("A", 0), node("A", 0)), List.of()).why())
                .contains("called A");
    }
}
