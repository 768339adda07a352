package org.fallrule.terrain.flow;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Fills hollows to their spill level by flooding the grid inward from where water leaves it, lowest first (R. Barnes, C.
 * Lehman, D. Mulla, "Priority-flood: an optimal depression-filling and watershed-labeling algorithm for digital elevation
 * models", Computers &amp; Geosciences 62, 2014, algorithm 2, with each node keeping the neighbour that it was flooded
 * from). What comes to lie at the level that the flood stands at waits in a queue of its own, as in the paper; the nodes come
 * in the order in which one heap would give them. The cost is that of the heap for the ground that rises, at most m log m for m
 * nodes, less where heights are spread ({@link NodeLevels}), and as the nodes for water and level ground.
 */
final class Flood {
    private static final int NOT_REACHED = -2;
    private static final int OUTLET = -1;

    private final GroundGrid grid;
    private final double[] level;
    private final int[] from;
    private final int[] order;
    private final NodeLevels rising;

    /** Nodes at the level that the flood stands at, which all came in after the others at that level. */
    private final NodeQueue same = new NodeQueue();

    private int reached;

    /** @param isDrain nodes that take in water, beside the rim */
    Flood(GroundGrid grid, IntPredicate isDrain) {
        this.grid = grid;
        this.level = new double[grid.size()];
        this.from = new int[grid.size()];
        this.order = new int[grid.size()];
        this.rising = new NodeLevels(level, grid.lowest(), grid.highest());
        Arrays.fill(level, Double.NaN);
        Arrays.fill(from, NOT_REACHED);
        for (int node = 0; node < grid.size(); node++) {
            if (!grid.isHole(node) && (grid.isOnRim(node) || isDrain.test(node))) {
                from[node] = OUTLET;
                level[node] = grid.height(node);
                rising.add(node);
            }
        }
        flood();
    }

    private void flood() {
        double now = Double.NEGATIVE_INFINITY;
        while (!rising.isEmpty() || !same.isEmpty()) {
            boolean isRising = same.isEmpty() || (!rising.isEmpty() && rising.lowest() == now);
            int node = isRising ? rising.poll() : same.poll();
            now = level[node];
            order[reached++] = node;
            floodAround(node, now);
        }
    }

    private void floodAround(int node, double now) {
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            int next = grid.neighbour(node, direction);
            if (next >= 0 && from[next] == NOT_REACHED) {
                from[next] = node;
                level[next] = Math.max(now, grid.height(next));
                if (level[next] == now) {
                    same.add(next);
                } else {
                    rising.add(next);
                }
            }
        }
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
