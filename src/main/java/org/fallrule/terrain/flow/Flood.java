package org.fallrule.terrain.flow;

import java.util.DoubleSummaryStatistics;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;

/**
 * Fills hollows to their spill level by flooding them inward from the ground that runs off by itself ({@link RunOff}), lowest
 * first (R. Barnes, C. Lehman, D. Mulla, "Priority-flood: an optimal depression-filling and watershed-labeling algorithm for
 * digital elevation models", Computers &amp; Geosciences 62, 2014, algorithm 2, with each node keeping the neighbour that it was
 * flooded from). The paper floods all of the grid from its rim; ground that runs off stands at its own height all the same, so
 * that it is left out. What comes to lie at the level that the flood stands at waits in a queue of its own, as in the paper; the
 * nodes come in the order in which one heap would give them. The cost is as the nodes, and for the ground that does not run off
 * that of the heap where it rises, at most m log m for m nodes, less where heights are spread ({@link NodeLevels}), and as the
 * nodes for water and level ground.
 */
final class Flood {
    private static final int NOT_REACHED = -3;
    private static final int RUNS_OFF = -2;
    private static final int OUTLET = -1;

    private final GroundGrid grid;
    private final double[] level;
    private final int[] from;
    private final int[] order;

    /** @param isDrain nodes that take in water, beside the rim */
    Flood(GroundGrid grid, IntPredicate isDrain) {
        this.grid = grid;
        IntPredicate leaves = node -> !grid.isHole(node) && (grid.isOnRim(node) || isDrain.test(node));
        RunOff runOff = new RunOff(grid, leaves);
        this.level = grid.heights();
        this.from = new int[grid.size()];
        this.order = new int[runOff.standing()];
        for (int node = 0; node < grid.size(); node++) {
            from[node] = leaves.test(node) ? OUTLET : runOff.from(node) ? RUNS_OFF : NOT_REACHED;
        }
        if (order.length > 0) {
            flood();
        }
    }

    private void flood() {
        DoubleSummaryStatistics heights =
                DoubleStream.of(level).filter(height -> !Double.isNaN(height)).summaryStatistics();
        NodeLevels rising = new NodeLevels(level, heights.getMin(), heights.getMax());
        NodeQueue same = new NodeQueue();
        for (int node = 0; node < from.length; node++) {
            if (from[node] > NOT_REACHED && isBesideWhatStands(node)) {
                rising.add(node);
            }
        }
        int reached = 0;
        double now = Double.NEGATIVE_INFINITY;
        while (!rising.isEmpty() || !same.isEmpty()) {
            // Nodes in the queue all came in after the others at the level that the flood stands at.
            boolean isRising = same.isEmpty() || (!rising.isEmpty() && rising.lowest() == now);
            int node = isRising ? rising.poll() : same.poll();
            now = level[node];
            if (from[node] >= 0) {
                order[reached++] = node;
            }
            floodAround(node, now, rising, same);
        }
    }

    private boolean isBesideWhatStands(int node) {
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            int next = grid.neighbour(node, direction);
            if (next >= 0 && from[next] == NOT_REACHED) {
                return true;
            }
        }
        return false;
    }

    private void floodAround(int node, double now, NodeLevels rising, NodeQueue same) {
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
        return from[node] == RUNS_OFF ? lowestBeside(node) : from[node];
    }

    private int lowestBeside(int node) {
        int lowest = node;
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            int next = grid.neighbour(node, direction);
            if (next >= 0 && level[next] < level[lowest]) {
                lowest = next;
            }
        }
        return lowest;
    }

    /** How many nodes do not run off by themselves. */
    int count() {
        return order.length;
    }

    /** These nodes from low to high; of equal level, those nearer to where water leaves come first. */
    int inOrder(int position) {
        return order[position];
    }
}
