package org.fallrule.reader.shapefile;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Location;

/**
 * How the points of one ring lie to another ring. Up to {@value #MOST_SAMPLES} vertices spread over the ring are looked at, and the
 * middles of the sides behind them when all vertices lie on the other ring.
 */
final class RingContainment {
    static final int MOST_SAMPLES = 32;

    private int inside;
    private int outside;

    private RingContainment() {}

    static RingContainment of(Ring inner, Ring outer) {
        RingContainment containment = new RingContainment();
        containment.look(inner.vertices(), outer, false);
        if (containment.isAlong()) {
            containment.look(inner.vertices(), outer, true);
        }
        return containment;
    }

    /** Whether the ring lies in the other: most of its points that are not on the other are inside. */
    boolean isWithin() {
        return inside > outside;
    }

    /** Whether it lies partly in, partly out, as the rings of one polygon may not. */
    boolean isCrossing() {
        return inside > 0 && outside > 0;
    }

    /** Whether it runs along the other, as the rings of one polygon may not. */
    boolean isAlong() {
        return inside == 0 && outside == 0;
    }

    private void look(CoordinateSequence points, Ring outer, boolean middles) {
        int sides = points.size() - 1;
        int step = (sides + MOST_SAMPLES - 1) / MOST_SAMPLES;
        for (int index = 0; index < sides; index += step) {
            count(outer.locate(middles ? middle(points, index) : points.getCoordinate(index)));
        }
    }

    private void count(int location) {
        inside += location == Location.INTERIOR ? 1 : 0;
        outside += location == Location.EXTERIOR ? 1 : 0;
    }

    private static Coordinate middle(CoordinateSequence points, int index) {
        return new Coordinate(
                points.getX(index) / 2 + points.getX(index + 1) / 2,
                points.getY(index) / 2 + points.getY(index + 1) / 2);
    }
}
