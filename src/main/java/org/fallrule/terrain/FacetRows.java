package org.fallrule.terrain;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** A facet's heights at the nodes of a lattice that lie inside of it, row by row, so that none of them need be looked for. */
final class FacetRows {
    private final Facet facet;
    private final Lattice lattice;
    private final double inside;
    private final Facet.Plane plane;
    private final Coordinate[] ring;
    private double from;
    private double to;

    /** @param inside how many metres inside of every edge a node must lie at least */
    FacetRows(Facet facet, Lattice lattice, double inside) {
        this.facet = facet;
        this.lattice = lattice;
        this.inside = inside;
        this.plane = facet.plane();
        Coordinate[] outline = facet.outline();
        this.ring =
                Orientation.isCCW(outline) ? outline : new Coordinate[] {facet.a(), facet.c(), facet.b(), facet.a()};
    }

    /** Puts the heights where none is known yet; those not known are NaN. */
    void addTo(double[] metres) {
        Envelope box = facet.extent();
        int last = (int)
                Math.min(lattice.rows() - 1.0, Math.floor((box.getMaxY() - lattice.bottom()) / lattice.spacing()));
        int row = (int) Math.max(0, Math.ceil((box.getMinY() - lattice.bottom()) / lattice.spacing()));
        for (; row <= last; row++) {
            double y = lattice.bottom() + row * lattice.spacing();
            cut(y, box);
            int end = (int) Math.min(lattice.columns() - 1.0, Math.floor((to - lattice.left()) / lattice.spacing()));
            int column = (int) Math.max(0, Math.ceil((from - lattice.left()) / lattice.spacing()));
            for (int node = row * lattice.columns() + column; column <= end; column++, node++) {
                if (Double.isNaN(metres[node])) {
                    metres[node] = plane.heightAt(lattice.left() + column * lattice.spacing(), y);
                }
            }
        }
    }

    /** Finds the part of a row that lies inside of all three edges. */
    private void cut(double y, Envelope box) {
        from = box.getMinX();
        to = box.getMaxX();
        for (int i = 0; i < 3; i++) {
            cut(y, ring[i], ring[i + 1]);
        }
    }

    /** A place is as far inside of an edge as the line from the edge's start to it turns left from the edge. */
    private void cut(double y, Coordinate start, Coordinate end) {
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
