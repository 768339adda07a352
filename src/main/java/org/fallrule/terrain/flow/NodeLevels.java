package org.fallrule.terrain.flow;

import java.util.Arrays;

/**
 * Nodes, lowest level first; of equal level, the one that came in first. For levels that are never lower than the last one taken
 * out, as a flood's are. The range of heights is parted into a layer for every few nodes; those of the layer that is being
 * taken out lie in a heap, those above wait in lists. Heights spread over the layers make every heap small; if all fall into one
 * layer, it is the heap that one would have had.
 */
final class NodeLevels {
    private static final int NONE = -1;

    /** A few in a heap take no longer than one alone, and the lists stay near each other in memory. */
    private static final int NODES_IN_A_LAYER = 4;

    private final double[] level;
    private final double lowest;
    private final double layersPerMetre;
    private final int[] lastOf;

    /** The node beside each in the list of its layer: the one that came in before it, and once the list is turned, after it. */
    private final int[] beside;

    private final NodeHeap heap = new NodeHeap();
    private int layer;
    private int size;

    /** @param level the nodes' levels, which must be there when a node is added and lie between the two heights */
    NodeLevels(double[] level, double lowest, double highest) {
        this.level = level;
        this.lowest = lowest;
        int layers = 1 + level.length / NODES_IN_A_LAYER;
        this.layersPerMetre = highest > lowest ? (layers - 1) / (highest - lowest) : 0;
        this.lastOf = new int[layers];
        this.beside = new int[level.length];
        Arrays.fill(lastOf, NONE);
    }

    boolean isEmpty() {
        return size == 0;
    }

    void add(int node) {
        size++;
        int to = Math.min((int) ((level[node] - lowest) * layersPerMetre), lastOf.length - 1);
        if (to <= layer) {
            heap.add(node, level[node]);
        } else {
            beside[node] = lastOf[to];
            lastOf[to] = node;
        }
    }

    /** The level of the node that comes next; there must be one. */
    double lowest() {
        rise();
        return heap.lowest();
    }

    int poll() {
        rise();
        size--;
        return heap.poll();
    }

    private void rise() {
        while (heap.isEmpty()) {
            layer++;
            for (int node = turned(lastOf[layer]); node != NONE; node = beside[node]) {
                heap.add(node, level[node]);
            }
        }
    }

    /** Turns a list around, and gives its first node. */
    private int turned(int last) {
        int first = NONE;
        int node = last;
        while (node != NONE) {
            int before = beside[node];
            beside[node] = first;
            first = node;
            node = before;
        }
        return first;
    }
}
