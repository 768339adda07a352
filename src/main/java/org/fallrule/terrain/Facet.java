package org.fallrule.terrain;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Triangle;

/** A flat triangle of ground. Corners have Z in metres, and do not lie on one line in plan. */
record Facet(Coordinate a, Coordinate b, Coordinate c) {

    double planArea() {
        return Triangle.area(a, b, c);
    }

    Envelope extent() {
        Envelope extent = new Envelope(a, b);
        extent.expandToInclude(c);
        return extent;
    }

    double heightAt(Coordinate place) {
        return Triangle.interpolateZ(place, a, b, c);
    }

    /** Whether a place is within, or outside by no more than some metres. */
    boolean holds(Coordinate place, double slack) {
        double turn = Math.signum(Triangle.signedArea(a, b, c));
        return outside(a, b, place, turn) <= slack
                && outside(b, c, place, turn) <= slack
                && outside(c, a, place, turn) <= slack;
    }

    /** How far, in metres, a place lies on the outer side of an edge; negative inside. */
    private static double outside(Coordinate from, Coordinate to, Coordinate place, double turn) {
        return turn * 2 * Triangle.signedArea(from, to, place) * -1 / from.distance(to);
    }

    Grade grade() {
        double det = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
        double rise = b.getZ() - a.getZ();
        double other = c.getZ() - a.getZ();
        return Grade.ofRise(
                (rise * (c.y - a.y) - other * (b.y - a.y)) / det, (other * (b.x - a.x) - rise * (c.x - a.x)) / det);
    }

    double longestEdge() {
        return Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
    }

    boolean isLevel() {
        return a.getZ() == b.getZ() && b.getZ() == c.getZ();
    }
}
