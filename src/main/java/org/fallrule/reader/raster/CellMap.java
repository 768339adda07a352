package org.fallrule.reader.raster;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * The way from the local frame to a raster's columns and rows, near the plan: polynomials of second degree in x and in y
 * through the nine places at the corners, side middles and centre of a box (Lagrange interpolation). Two projections of the
 * earth differ over a box of side L from such polynomials by terms of the third order, about L cubed over the earth's radius
 * squared: 0.03 mm over 1 km, 3 cm over 10 km.
 */
final class CellMap {
    private final Envelope box;
    private final Coordinate[][] nodes;

    /** An exact but slow way. */
    interface Exact {
        Coordinate cells(Coordinate local);
    }

    CellMap(Envelope box, Exact exact) {
        this.box = box;
        this.nodes = new Coordinate[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                nodes[i][j] = exact.cells(new Coordinate(
                        box.getMinX() + i / 2.0 * box.getWidth(), box.getMinY() + j / 2.0 * box.getHeight()));
            }
        }
    }

    Coordinate cells(Coordinate local) {
        double[] u = weights((local.x - box.getMinX()) / box.getWidth());
        double[] v = weights((local.y - box.getMinY()) / box.getHeight());
        double x = 0;
        double y = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double weight = u[i] * v[j];
                x += weight * nodes[i][j].x;
                y += weight * nodes[i][j].y;
            }
        }
        return new Coordinate(x, y);
    }

    /** The polynomials that are 1 at one of 0, 1/2, 1 and 0 at the others. */
    private static double[] weights(double t) {
        return new double[] {(2 * t - 1) * (t - 1), 4 * t * (1 - t), t * (2 * t - 1)};
    }

    /**
     * A box in cells that holds what the map makes of its own box; sides bulge less than the margin of a cell or so that is
     * added.
     */
    Envelope inCells() {
        Envelope cells = new Envelope();
        for (Coordinate[] column : nodes) {
            for (Coordinate node : column) {
                cells.expandToInclude(node);
            }
        }
        cells.expandBy(2);
        return cells;
    }

    /** Metres of the frame in one cell, in the middle of the box: the root of a cell's area. */
    double spacing() {
        Coordinate middle = nodes[1][1];
        Coordinate east = nodes[2][1];
        Coordinate north = nodes[1][2];
        double turn = (east.x - middle.x) * (north.y - middle.y) - (east.y - middle.y) * (north.x - middle.x);
        return Math.sqrt(box.getWidth() / 2 * box.getHeight() / 2 / Math.abs(turn));
    }
}
