package org.fallrule.terrain;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Triangle;

/**
 * A flat triangle of the ground. Corners have Z in metres, and do not lie on one line in plan.
 *
 * @param a a corner
 * @param b the next corner
 * @param c the last corner
 */
record Facet(Coordinate a, Coordinate b, Coordinate c) {

    double planArea() {
        return Triangle.area(a, b, c);
    }

    /** Its least width in plan, in metres. */
    double width() {
        double longest = Math.max(length(a, b), Math.max(length(b, c), length(c, a)));
        return longest > 0 ? 2 * planArea() / longest : 0;
    }

    /** Plain, as it is asked for millions of times; the ground has no lengths whose squares would not fit. */
    private static double length(Coordinate from, Coordinate to) {
        return Math.sqrt((to.x - from.x) * (to.x - from.x) + (to.y - from.y) * (to.y - from.y));
    }

    boolean isLevel() {
        return a.getZ() == b.getZ() && b.getZ() == c.getZ();
    }

    Envelope extent() {
        Envelope extent = new Envelope(a, b);
        extent.expandToInclude(c);
        return extent;
    }

    Coordinate[] outline() {
        return new Coordinate[] {a, b, c, a};
    }

    /** How far, in metres, a place lies beyond the edge that it is farthest beyond; negative inside. */
    double beyond(Coordinate place) {
        double turn = Math.signum(Triangle.signedArea(a, b, c));
        return Math.max(beyond(a, b, place, turn), Math.max(beyond(b, c, place, turn), beyond(c, a, place, turn)));
    }

    private static double beyond(Coordinate from, Coordinate to, Coordinate place, double turn) {
        return -turn * 2 * Triangle.signedArea(from, to, place) / length(from, to);
    }

    /** The height at a place; at a place beyond an edge no higher and no lower than the corners. */
    double heightAt(Coordinate place) {
        double turn = Math.signum(Triangle.signedArea(a, b, c));
        double ofA = Math.max(0, turn * Triangle.signedArea(b, c, place));
        double ofB = Math.max(0, turn * Triangle.signedArea(c, a, place));
        double ofC = Math.max(0, turn * Triangle.signedArea(a, b, place));
        return (ofA * a.getZ() + ofB * b.getZ() + ofC * c.getZ()) / (ofA + ofB + ofC);
    }

    Grade grade() {
        double det = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
        double rise = b.getZ() - a.getZ();
        double other = c.getZ() - a.getZ();
        return Grade.ofRise(
                (rise * (c.y - a.y) - other * (b.y - a.y)) / det, (other * (b.x - a.x) - rise * (c.x - a.x)) / det);
    }
}
