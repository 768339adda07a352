package org.fallrule.terrain.flow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order in which a flood takes its nodes: that of a stable sort by level. More nodes than the arrays begin with. */
class NodesInOrderTest {
    private static final int NODES = 5000;

    /** So many different levels, so that many nodes are level with each other. */
    private static double[] levels(int different) {
        Random random = new Random(4);
        return IntStream.range(0, NODES)
                .mapToDouble(node -> 90 + random.nextInt(different) / 100.0)
                .toArray();
    }

    private static Integer[] sorted(double[] level) {
        return IntStream.range(0, level.length)
                .boxed()
                .sorted(Comparator.comparingDouble(node -> level[node]))
                .toArray(Integer[]::new);
    }

    @ParameterizedTest(name = "{0} different levels")
    @ValueSource(ints = {1, 7, 300, 1_000_000})
    void aHeapGivesTheLowestFirstAndOfEqualOnesTheFirstThatCame(int different) {
        double[] level = levels(different);
        NodeHeap heap = new NodeHeap();
        IntStream.range(0, NODES).forEach(node -> heap.add(node, level[node]));

        List<Integer> out = new ArrayList<>();
        while (!heap.isEmpty()) {
            double lowest = heap.lowest();
            out.add(heap.poll());
            assertThat(level[out.get(out.size() - 1)]).isEqualTo(lowest);
        }
        assertThat(out).containsExactly(sorted(level));
    }

    @ParameterizedTest(name = "{0} different levels")
    @ValueSource(ints = {1, 7, 300, 1_000_000})
    void layersGiveTheSameOrderAsOneHeap(int different) {
        double[] level = levels(different);
        NodeLevels layers = new NodeLevels(level, 90, 90 + different / 100.0);
        IntStream.range(0, NODES).forEach(layers::add);

        List<Integer> out = new ArrayList<>();
        while (!layers.isEmpty()) {
            double lowest = layers.lowest();
            out.add(layers.poll());
            assertThat(level[out.get(out.size() - 1)]).isEqualTo(lowest);
        }
        assertThat(out).containsExactly(sorted(level));
    }

    @ParameterizedTest(name = "{0} taken out for every ten that come in")
    @ValueSource(ints = {0, 3, 9})
    void aQueueGivesThemAsTheyCame(int outOfTen) {
        NodeQueue queue = new NodeQueue();
        List<Integer> out = new ArrayList<>();
        for (int node = 0; node < NODES; node++) {
            queue.add(node);
            if (node % 10 < outOfTen) {
                out.add(queue.poll());
            }
        }
        while (!queue.isEmpty()) {
            out.add(queue.poll());
        }
        assertThat(out)
                .containsExactlyElementsOf(IntStream.range(0, NODES).boxed().toList());
    }
}
