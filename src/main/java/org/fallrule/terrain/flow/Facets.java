package org.fallrule.terrain.flow;

/**
 * The steepest way down from a node over the eight triangles that it forms with its neighbours, and how its water is shared
 * between the two neighbours on either side of that way (D. G. Tarboton, "A new method for the determination of flow
 * directions and upslope areas in grid digital elevation models", Water Resources Research 33(2), 1997, equations 1 to 5).
 * Both receivers lie lower than the node.
 */
final class Facets {
    private static final double EIGHTH = Math.PI / 4;

    private final GroundGrid grid;
    private final Flood flood;
    private double steepest;
    private int straight;
    private int diagonal;
    private double diagonalShare;

    Facets(GroundGrid grid, Flood flood) {
        this.grid = grid;
        this.flood = flood;
    }

    /** Looks at a node; false where none of its triangles falls. */
    boolean look(int node) {
        steepest = 0;
        for (int direction = 0; direction < Direction.COUNT; direction += 2) {
            look(node, direction, (direction + 1) % Direction.COUNT);
            look(node, direction, (direction + 7) % Direction.COUNT);
        }
        return steepest > 0;
    }

    private void look(int node, int toStraight, int toDiagonal) {
        int e1 = grid.neighbour(node, toStraight);
        int e2 = grid.neighbour(node, toDiagonal);
        if (e1 < 0 || e2 < 0) {
            return;
        }
        double s1 = (flood.level(node) - flood.level(e1)) / grid.spacing();
        double s2 = (flood.level(e1) - flood.level(e2)) / grid.spacing();
        double angle = Math.atan2(s2, s1);
        double slope = Math.hypot(s1, s2);
        if (angle <= 0) {
            angle = 0;
            slope = s1;
        } else if (angle >= EIGHTH) {
            angle = EIGHTH;
            slope = (flood.level(node) - flood.level(e2)) / (grid.spacing() * Math.sqrt(2));
        }
        if (slope > steepest) {
            steepest = slope;
            straight = e1;
            diagonal = e2;
            diagonalShare = angle / EIGHTH;
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
        return diagonalShare;
    }
}
