package org.fallrule.terrain.flow;

/**
 * The nodes some of whose water comes to one of the places, found upward from these, as most of a grid drains to none; and given
 * out downward, each after all whose water it gets.
 */
final class Upstream {
    private final GroundGrid grid;
    private final int[] takenBy;
    private final Receivers receivers;
    private final boolean[] isUpstream;

    /** How many neighbours that have not been given out yet lead to a node. */
    private final int[] toCome;

    private final NodeQueue ready = new NodeQueue();

    /** @param takenBy above 0 at the nodes that belong to a place, whose water goes no further */
    Upstream(GroundGrid grid, int[] takenBy, Receivers receivers) {
        this.grid = grid;
        this.takenBy = takenBy;
        this.receivers = receivers;
        this.isUpstream = new boolean[grid.size()];
        this.toCome = new int[grid.size()];
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
            if (next >= 0 && takenBy[next] == 0 && receivers.lead(next, node)) {
                toCome[node]++;
                if (!isUpstream[next]) {
                    isUpstream[next] = true;
                    reached.add(next);
                }
            }
        }
        if (toCome[node] == 0) {
            ready.add(node);
        }
    }

    boolean isEmpty() {
        return ready.isEmpty();
    }

    /** The next node; there must be one. */
    int poll() {
        int node = ready.poll();
        if (takenBy[node] == 0) {
            came(receivers.first(node));
            if (receivers.second(node) != receivers.first(node)) {
                came(receivers.second(node));
            }
        }
        return node;
    }

    private void came(int node) {
        if (node >= 0 && isUpstream[node] && --toCome[node] == 0) {
            ready.add(node);
        }
    }
}
