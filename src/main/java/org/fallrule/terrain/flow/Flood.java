package org.fallrule.terrain.flow;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Fills hollows to their spill level by flooding the grid inward from where water leaves it, lowest first (R. Barnes, C.
 * Lehman, D. Mulla, "Priority-flood: an optimal depression-filling and watershed-labeling algorithm for digital elevation
 * models", Computers &amp; Geosciences 62, 2014, algorithm 1, with each node keeping the neighbour that it was flooded
 * from). The cost is that of a heap, n log n.
 */
final class Flood {
    private static final int NOT_REACHED = -2;
    private static final int OUTLET = -1;

    private final GroundGrid grid;
    private final double[] level;
    private final int[] from;
    private final int[] order;
    private final NodeHeap heap;
    private int reached;

    /** @param isDrain nodes that take in water, beside the rim */
    Flood(GroundGrid grid, IntPredicate isDrain) {
        this.grid = grid;
        this.level = new double[grid.size()];
        this.from = new int[grid.size()];
        this.order = new int[grid.size()];
        this.heap = new NodeHeap(level);
        Arrays.fill(level, Double.NaN);
        Arrays.fill(from, NOT_REACHED);
        for (int node = 0; node < grid.size(); node++) {
            if (!grid.isHole(node) && (grid.isOnRim(node) || isDrain.test(node))) {
                reach(node, OUTLET, grid.height(node));
            }
        }
        while (!heap.isEmpty()) {
            int node = heap.poll();
            order[reached++] = node;
            floodAround(node);
        }
    }

    private void floodAround(int node) {
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            int next = grid.neighbour(node, direction);
            if (next >= 0 && from[next] == NOT_REACHED) {
                reach(next, node, Math.max(level[node], grid.height(next)));
            }
        }
    }

    private void reach(int node, int source, double height) {
        from[node] = source;
        level[node] = height;
        heap.add(node);
    }

    /** The level of water or ground at a node, metres; NaN in holes. */
    double level(int node) {
        return level[node];
    }

    /** The neighbour that water goes to where the level gives it no fall; negative where it leaves the grid. */
    int next(int node) {
        return from[node];
    }

    /** How many nodes have ground. */
    int count() {
        return reached;
    }

    /** The nodes from low to high; of equal level, those nearer to where water leaves come first. */
    int inOrder(int position) {
        return order[position];
    }
}
