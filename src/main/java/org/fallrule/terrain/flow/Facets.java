package org.fallrule.terrain.flow;

/**
 * The steepest way down from a node over the eight triangles that it forms with its neighbours, and how its water is shared
 * between the two neighbours on either side of that way (D. G. Tarboton, "A new method for the determination of flow
 * directions and upslope areas in grid digital elevation models", Water Resources Research 33(2), 1997, equations 1 to 5).
 * A neighbour that gets a part of it lies lower than the node.
 */
final class Facets {
    private static final double EIGHTH = Math.PI / 4;

    private final GroundGrid grid;
    private final Flood flood;
    private double steepest;
    private int straight;
    private int diagonal;

    /** The fall of the steepest triangle along its first and along its second side, rise over run. */
    private double alongFirst;

    private double alongSecond;

    Facets(GroundGrid grid, Flood flood) {
        this.grid = grid;
        this.flood = flood;
    }

    /** Looks at a node; false where none of its triangles falls. */
    boolean look(int node) {
        steepest = 0;
        for (int direction = 0; direction < Direction.COUNT; direction += 2) {
            int next = grid.neighbour(node, direction);
            if (next >= 0) {
                look(node, next, grid.neighbour(node, direction + 1));
                look(node, next, grid.neighbour(node, (direction + 7) % Direction.COUNT));
            }
        }
        return steepest > 0;
    }

    private void look(int node, int e1, int e2) {
        if (e2 < 0) {
            return;
        }
        double s1 = (flood.level(node) - flood.level(e1)) / grid.spacing();
        double s2 = (flood.level(e1) - flood.level(e2)) / grid.spacing();
        double slope = Math.sqrt(s1 * s1 + s2 * s2);
        if (s2 <= 0) {
            slope = s1;
        } else if (s2 >= s1) {
            slope = (flood.level(node) - flood.level(e2)) / (grid.spacing() * Math.sqrt(2));
        }
        if (slope > steepest) {
            steepest = slope;
            straight = e1;
            diagonal = e2;
            alongFirst = s1;
            alongSecond = s2;
        }
    }

    /** The straight neighbour of the steepest triangle of the node that was looked at. */
    int straight() {
        return straight;
    }

    int diagonal() {
        return diagonal;
    }

    /** What part of the water goes to the diagonal neighbour, 0 to 1; the rest goes to the straight one. */
    double diagonalShare() {
        if (alongSecond <= 0) {
            return 0;
        }
        return alongSecond >= alongFirst ? 1 : Math.atan2(alongSecond, alongFirst) / EIGHTH;
    }
}
