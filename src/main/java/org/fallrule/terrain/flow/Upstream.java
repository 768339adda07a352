package org.fallrule.terrain.flow;

/** The nodes some of whose water comes to one of the places, found upward from these: most of a grid drains to none. */
final class Upstream {
    private final GroundGrid grid;
    private final Receivers receivers;
    private final boolean[] isUpstream;

    /** @param takenBy above 0 at the nodes that belong to a place, whose water goes no further */
    Upstream(GroundGrid grid, int[] takenBy, Receivers receivers) {
        this.grid = grid;
        this.receivers = receivers;
        this.isUpstream = new boolean[grid.size()];
        NodeQueue reached = new NodeQueue();
        for (int node = 0; node < takenBy.length; node++) {
            if (takenBy[node] > 0) {
                isUpstream[node] = true;
                reached.add(node);
            }
        }
        while (!reached.isEmpty()) {
            climb(reached.poll(), reached);
        }
    }

    private void climb(int node, NodeQueue reached) {
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            int next = grid.neighbour(node, direction);
            if (next >= 0 && !isUpstream[next] && leads(next, node)) {
                isUpstream[next] = true;
                reached.add(next);
            }
        }
    }

    private boolean leads(int from, int to) {
        return receivers.first(from) == to || receivers.second(from) == to;
    }

    boolean holds(int node) {
        return isUpstream[node];
    }
}
