package org.fallrule.terrain.flow;

import java.util.Arrays;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.terrain.GroundSurface;
import org.fallrule.terrain.Lattice;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * The ground's heights at the nodes of a square grid; each node stands for the square cell around it. Nodes without ground
 * are holes. Nodes on the grid's edge and beside holes are its rim: there water leaves, as nothing is known of the ground
 * beyond.
 */
public final class GroundGrid {
    /** The heights of so many nodes take 200 MB, and filling them three times that. */
    public static final long MOST_NODES = 25_000_000;

    private final double left;
    private final double bottom;
    private final double spacing;
    private final int columns;
    private final int rows;
    private final Lattice lattice;
    private final double[] metres;

    /** How much higher the number of a neighbour in each direction is. */
    private final int[] steps = new int[Direction.COUNT];

    private final boolean[] rim;

    private GroundGrid(Envelope box, double spacing) {
        this.spacing = spacing;
        this.columns = (int) Math.floor(box.getWidth() / spacing + 1e-9) + 1;
        this.rows = (int) Math.floor(box.getHeight() / spacing + 1e-9) + 1;
        this.left = box.getMinX();
        this.bottom = box.getMinY();
        this.lattice = new Lattice(left, bottom, spacing, columns, rows);
        this.metres = new double[columns * rows];
        Arrays.fill(metres, Double.NaN);
        this.rim = new boolean[columns * rows];
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            steps[direction] = Direction.DY[direction] * columns + Direction.DX[direction];
        }
    }

    /**
     * Samples a surface.
     *
     * @param box where, in the local frame
     * @param spacing between nodes, in metres
     * @throws IllegalArgumentException when the box is empty, the spacing not above 0, or the nodes more than {@link
     *     #MOST_NODES}
     */
    public static GroundGrid of(GroundSurface surface, Envelope box, double spacing) {
        double nodes = (box.getWidth() / spacing + 1) * (box.getHeight() / spacing + 1);
        if (box.isNull() || !(spacing > 0) || !(nodes <= MOST_NODES)) {
            throw new IllegalArgumentException(
                    "A grid of " + nodes + " nodes, " + spacing + " m apart; wanted 1 to " + MOST_NODES);
        }
        GroundGrid grid = new GroundGrid(box, spacing);
        surface.addHeights(grid.lattice, grid.metres);
        grid.findRim();
        return grid;
    }

    /**
     * The same nodes on another surface.
     *
     * @param where that surface may differ from the one that was sampled; elsewhere it is the same
     */
    public GroundGrid with(GroundSurface surface, Envelope where) {
        Envelope box = new Envelope(left, left + (columns - 1) * spacing, bottom, bottom + (rows - 1) * spacing);
        GroundGrid other = new GroundGrid(box, spacing);
        System.arraycopy(metres, 0, other.metres, 0, metres.length);
        int first = (int) Math.max(0, Math.floor((where.getMinX() - left) / spacing));
        int last = (int) Math.min(columns - 1.0, Math.ceil((where.getMaxX() - left) / spacing));
        int top = (int) Math.min(rows - 1.0, Math.ceil((where.getMaxY() - bottom) / spacing));
        for (int row = (int) Math.max(0, Math.floor((where.getMinY() - bottom) / spacing)); row <= top; row++) {
            for (int column = first; column <= last; column++) {
                int node = node(column, row);
                other.metres[node] =
                        surface.elevationAt(place(node)).map(Elevation::metres).orElse(Double.NaN);
            }
        }
        other.findRim();
        return other;
    }

    private void findRim() {
        Arrays.fill(rim, 0, columns, true);
        Arrays.fill(rim, rim.length - columns, rim.length, true);
        for (int row = 0; row < rows; row++) {
            rim[node(0, row)] = true;
            rim[node(columns - 1, row)] = true;
        }
        for (int node = 0; node < metres.length; node++) {
            if (isHole(node)) {
                findRimAround(node);
            }
        }
    }

    private void findRimAround(int node) {
        int column = columnOf(node);
        int row = rowOf(node);
        for (int direction = 0; direction < Direction.COUNT; direction++) {
            if (isInside(column + Direction.DX[direction], row + Direction.DY[direction])) {
                rim[node + steps[direction]] = true;
            }
        }
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    int size() {
        return metres.length;
    }

    /** The distance between neighbouring nodes in metres. */
    public double spacing() {
        return spacing;
    }

    /** A node's height in metres; NaN in a hole. */
    double height(int node) {
        return metres[node];
    }

    /** All of them, for the caller to change. */
    double[] heights() {
        return metres.clone();
    }

    boolean isHole(int node) {
        return Double.isNaN(metres[node]);
    }

    Coordinate place(int node) {
        return lattice.place(node);
    }

    /** A place counted in columns and rows of nodes. */
    Coordinate inCells(Coordinate place) {
        return new Coordinate((place.x - left) / spacing, (place.y - bottom) / spacing);
    }

    int columnOf(int node) {
        return node % columns;
    }

    int rowOf(int node) {
        return node / columns;
    }

    boolean isInside(int column, int row) {
        return column >= 0 && row >= 0 && column < columns && row < rows;
    }

    int node(int column, int row) {
        return row * columns + column;
    }

    /** A node's neighbour in one of the eight directions; -1 beyond the edge and in holes. */
    int neighbour(int node, int direction) {
        int next = node + steps[direction];
        return !rim[node] || isGround(node, direction, next) ? next : -1;
    }

    /** The same of a node that is not on the rim, which has all eight. */
    int inside(int node, int direction) {
        return node + steps[direction];
    }

    /** Whether that neighbour lies lower. */
    boolean isLowerInside(int node, int direction) {
        return metres[node + steps[direction]] < metres[node];
    }

    private boolean isGround(int node, int direction, int next) {
        return isInside(columnOf(node) + Direction.DX[direction], rowOf(node) + Direction.DY[direction])
                && !isHole(next);
    }

    /** Whether one of the eight neighbours is missing. */
    boolean isOnRim(int node) {
        return rim[node];
    }

    /** The node of the cell that holds a place; empty outside of the grid and in holes. */
    Optional<Integer> nodeAt(Coordinate place) {
        Coordinate cells = inCells(place);
        int column = (int) Math.rint(cells.x);
        int row = (int) Math.rint(cells.y);
        return isInside(column, row) && !isHole(node(column, row)) ? Optional.of(node(column, row)) : Optional.empty();
    }
}
