package org.fallrule.terrain;

import org.locationtech.jts.geom.Coordinate;

/**
 * Nodes in rows and columns, counted row by row from the lower left one.
 *
 * @param left the first column's x in the plan's local frame
 * @param bottom the first row's y
 * @param spacing metres between neighbours in a row or column
 * @param columns how many nodes a row has
 * @param rows how many rows there are
 */
public record Lattice(double left, double bottom, double spacing, int columns, int rows) {

    public int size() {
        return columns * rows;
    }

    public Coordinate place(int node) {
        int column = node % columns;
        int row = node / columns;
        return new Coordinate(left + column * spacing, bottom + row * spacing);
    }
}
