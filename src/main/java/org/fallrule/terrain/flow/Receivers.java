package org.fallrule.terrain.flow;

/**
 * Where the water of each node goes: to the two neighbours on either side of its steepest way down, or, where the ground gives it
 * no fall, all to the one that it was flooded from. Worked out for a node when it is first asked for.
 */
final class Receivers {
    private final Flood flood;
    private final Facets facets;
    private final boolean[] isKnown;
    private final int[] first;
    private final int[] second;
    private final double[] secondShare;

    Receivers(GroundGrid grid, Flood flood) {
        this.flood = flood;
        this.facets = new Facets(grid, flood);
        this.isKnown = new boolean[grid.size()];
        this.first = new int[grid.size()];
        this.second = new int[grid.size()];
        this.secondShare = new double[grid.size()];
    }

    /** The one receiver; negative where water leaves the grid. */
    int first(int node) {
        learn(node);
        return first[node];
    }

    /** The other receiver; the same as the first where all goes to one. */
    int second(int node) {
        learn(node);
        return second[node];
    }

    /** What part of the water goes to the other receiver, 0 to 1. */
    double secondShare(int node) {
        learn(node);
        return secondShare[node];
    }

    /** Whether some of a node's water goes to a neighbour; none does to a higher one. */
    boolean lead(int node, int neighbour) {
        return flood.level(node) >= flood.level(neighbour) && (first(node) == neighbour || second(node) == neighbour);
    }

    private void learn(int node) {
        if (isKnown[node]) {
            return;
        }
        isKnown[node] = true;
        if (facets.look(node)) {
            double share = facets.diagonalShare();
            first[node] = share < 1 ? facets.straight() : facets.diagonal();
            second[node] = share > 0 ? facets.diagonal() : facets.straight();
            secondShare[node] = share;
        } else {
            first[node] = flood.next(node);
            second[node] = first[node];
        }
    }
}
