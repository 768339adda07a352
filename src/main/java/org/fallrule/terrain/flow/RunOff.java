package org.fallrule.terrain.flow;

import java.util.function.IntPredicate;

/**
 * Which nodes' water runs off over ground that falls at every step, so that it fills nothing on its way: the level there is the
 * ground's height. For a lower neighbour's level is the node's own where it is higher than the node, which in turn is as low as the
 * node where it runs off itself.
 */
final class RunOff {
    private static final byte UNKNOWN = 0;
    private static final byte RUNS = 1;
    private static final byte STANDS = 2;
    private static final int NONE = -1;

    private final GroundGrid grid;
    private final byte[] state;

    /** A lower neighbour of each node that was looked at. */
    private final int[] lower;

    /** The direction that led lower the last time; ground mostly goes on as it did. */
    private int downward;

    private int standing;

    /** @param leaves nodes where water leaves the grid */
    RunOff(GroundGrid grid, IntPredicate leaves) {
        this.grid = grid;
        this.state = new byte[grid.size()];
        this.lower = new int[grid.size()];
        for (int node = 0; node < grid.size(); node++) {
            if (leaves.test(node)) {
                state[node] = RUNS;
            }
        }
        for (int node = 0; node < grid.size(); node++) {
            if (state[node] == UNKNOWN && !grid.isHole(node)) {
                follow(node);
            }
        }
    }

    /** Goes down to a node that is known or the lowest of a hollow, and tells all on the way what that one does. */
    private void follow(int start) {
        int end = start;
        while (end != NONE && state[end] == UNKNOWN) {
            lower[end] = lowerThan(end);
            end = lower[end];
        }
        byte found = end == NONE ? STANDS : state[end];
        for (int node = start; node != end; node = lower[node]) {
            state[node] = found;
            standing += found == STANDS ? 1 : 0;
        }
    }

    private int lowerThan(int node) {
        if (grid.isLowerInside(node, downward)) {
            return grid.inside(node, downward);
        }
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            if (grid.isLowerInside(node, direction)) {
                downward = direction;
                return grid.inside(node, direction);
            }
        }
        return NONE;
    }

    /** False in holes too. */
    boolean from(int node) {
        return state[node] == RUNS;
    }

    /** How many nodes do not run off, holes not counted. */
    int standing() {
        return standing;
    }
}
