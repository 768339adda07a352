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
        return plane().heightAt(place.x, place.y);
    }

    Grade grade() {
        Plane plane = plane();
        return Grade.ofRise(plane.eastward, plane.northward);
    }

    /**
     * The plane that it lies in, between its lowest and its highest corner.
     *
     * @param from a corner
     * @param eastward how many metres it rises per metre
     * @param northward the same
     * @param lowest corner, metres
     * @param highest corner, metres
     */
    record Plane(Coordinate from, double eastward, double northward, double lowest, double highest) {
        double heightAt(double x, double y) {
            double height = from.getZ() + eastward * (x - from.x) + northward * (y - from.y);
            return Math.max(lowest, Math.min(highest, height));
        }
    }

    Plane plane() {
        double det = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
        double rise = b.getZ() - a.getZ();
        double other = c.getZ() - a.getZ();
        return new Plane(
                a,
                (rise * (c.y - a.y) - other * (b.y - a.y)) / det,
                (other * (b.x - a.x) - rise * (c.x - a.x)) / det,
                Math.min(a.getZ(), Math.min(b.getZ(), c.getZ())),
                Math.max(a.getZ(), Math.max(b.getZ(), c.getZ())));
    }
}
