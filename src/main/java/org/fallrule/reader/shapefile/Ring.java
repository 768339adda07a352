package org.fallrule.reader.shapefile;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;

/** One ring of a polygon and where it stands among the others. */
final class Ring {
    private final LinearRing line;
    private final int number;
    private final double signedArea;
    private @Nullable IndexedPointInAreaLocator locator;
    private @Nullable Ring parent;
    private int depth;

    /**
     * Takes a ring.
     *
     * @param number its position in the feature, counted from 1
     */
    Ring(LinearRing line, int number) {
        this.line = line;
        this.number = number;
        this.signedArea = Area.ofRingSigned(line.getCoordinateSequence());
    }

    LinearRing line() {
        return line;
    }

    int number() {
        return number;
    }

    double area() {
        return Math.abs(signedArea);
    }

    /** 1 for clockwise, -1 for counterclockwise, 0 for a ring without area. */
    double winding() {
        return Math.signum(signedArea);
    }

    /** The smallest ring that it lies in, null when it lies in none. */
    @Nullable
    Ring parent() {
        return parent;
    }

    void liesIn(Ring smallest) {
        parent = smallest;
    }

    /** Takes its depth from its parent's, which must be known. */
    void settleDepth() {
        depth = parent == null ? 0 : parent.depth + 1;
    }

    /** Whether it bounds land from outside: rings alternate between shell and hole from the outermost inwards. */
    boolean isShell() {
        return depth % 2 == 0;
    }

    Envelope envelope() {
        return line.getEnvelopeInternal();
    }

    CoordinateSequence vertices() {
        return line.getCoordinateSequence();
    }

    /** One of {@link org.locationtech.jts.geom.Location}: where a point is as seen from this ring. */
    int locate(Coordinate point) {
        if (locator == null) {
            locator = new IndexedPointInAreaLocator(line);
        }
        return locator.locate(point);
    }
}
