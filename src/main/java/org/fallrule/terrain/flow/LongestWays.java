package org.fallrule.terrain.flow;

import org.fallrule.measure.Length;

/** The longest way by which water comes to each node, handed on from node to node with the height that it began at. */
final class LongestWays {
    private final GroundGrid grid;
    private final double[] metres;
    /** One more than the node at which the longest way to a node begins; 0 where none leads there. */
    private final int[] source;

    LongestWays(GroundGrid grid) {
        this.grid = grid;
        this.metres = new double[grid.size()];
        this.source = new int[grid.size()];
    }

    /** Leads the water of one node on to a neighbour; nodes must come after all that lead to them. */
    void lead(int from, int to) {
        double there = metres[from] + step(from, to);
        if (there > metres[to]) {
            metres[to] = there;
            source[to] = begin(from) + 1;
        }
    }

    /** The longest way to a node. */
    ContributingArea.FlowWay to(int node) {
        return new ContributingArea.FlowWay(
                new Length(metres[node]), new Length(grid.height(begin(node)) - grid.height(node)));
    }

    private int begin(int node) {
        return source[node] == 0 ? node : source[node] - 1;
    }

    private double step(int from, int to) {
        boolean straight = grid.columnOf(from) == grid.columnOf(to) || grid.rowOf(from) == grid.rowOf(to);
        return grid.spacing() * (straight ? 1 : Math.sqrt(2));
    }
}
