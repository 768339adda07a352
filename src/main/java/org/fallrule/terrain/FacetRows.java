package org.fallrule.terrain;

import java.util.BitSet;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** A facet's heights at the nodes of a lattice that lie inside of it, row by row, so that none of them need be looked for. */
final class FacetRows {
    private final Facet facet;
    private final Lattice lattice;
    private final double margin;
    private final Facet.Plane plane;
    private final Coordinate[] ring;
    private double from;
    private double to;

    /** @param margin how many metres inside of every edge a node must lie at least */
    FacetRows(Facet facet, Lattice lattice, double margin) {
        this.facet = facet;
        this.lattice = lattice;
        this.margin = margin;
        this.plane = facet.plane();
        Coordinate[] outline = facet.outline();
        this.ring =
                Orientation.isCCW(outline) ? outline : new Coordinate[] {facet.a(), facet.c(), facet.b(), facet.a()};
    }

    /**
     * Puts the heights where none is known yet; those not known are NaN.
     *
     * @param onEdge takes in the other nodes without a height that lie no farther off the facet than the margin
     */
    void addTo(double[] metres, BitSet onEdge) {
        Envelope box = facet.extent();
        box.expandBy(margin);
        int last = (int)
                Math.min(lattice.rows() - 1.0, Math.floor((box.getMaxY() - lattice.bottom()) / lattice.spacing()));
        int row = (int) Math.max(0, Math.ceil((box.getMinY() - lattice.bottom()) / lattice.spacing()));
        for (; row <= last; row++) {
            double y = lattice.bottom() + row * lattice.spacing();
            cut(y, box, margin);
            int first = firstColumn();
            int end = lastColumn();
            cut(y, box, -margin);
            int outerEnd = lastColumn();
            for (int column = firstColumn(); column <= outerEnd; column++) {
                int node = row * lattice.columns() + column;
                if (!Double.isNaN(metres[node])) {
                    continue;
                }
                if (column >= first && column <= end) {
                    metres[node] = plane.heightAt(lattice.left() + column * lattice.spacing(), y);
                } else {
                    onEdge.set(node);
                }
            }
        }
    }

    private int firstColumn() {
        return (int) Math.max(0, Math.ceil((from - lattice.left()) / lattice.spacing()));
    }

    private int lastColumn() {
        return (int) Math.min(lattice.columns() - 1.0, Math.floor((to - lattice.left()) / lattice.spacing()));
    }

    /** Finds the part of a row that lies so many metres inside of all three edges; where negative, no farther outside. */
    private void cut(double y, Envelope box, double inside) {
        from = box.getMinX();
        to = box.getMaxX();
        for (int i = 0; i < 3; i++) {
            cut(y, ring[i], ring[i + 1], inside);
        }
    }

    /** A place is as far inside of an edge as the line from the edge's start to it turns left from the edge. */
    private void cut(double y, Coordinate start, Coordinate end, double inside) {
        double length = start.distance(end);
        double perMetre = (start.y - end.y) / length;
        double atStart = (end.x - start.x) * (y - start.y) / length;
        double x = start.x + (inside - atStart) / perMetre;
        if (perMetre > 0) {
            from = Math.max(from, x);
        } else if (perMetre < 0) {
            to = Math.min(to, x);
        } else if (atStart < inside) {
            to = Double.NEGATIVE_INFINITY;
        }
    }
}
