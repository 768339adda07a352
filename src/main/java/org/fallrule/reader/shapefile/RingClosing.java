package org.fallrule.reader.shapefile;

import java.util.Arrays;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Coordinate;

/** Makes sure that a ring ends where it begins and has the four points that the smallest ring needs (Technical Description, Polygon). */
final class RingClosing {
    private static final int LEAST_POINTS = 4;

    private final RecordContent content;
    private final Findings findings;

    RingClosing(RecordContent content, Findings findings) {
        this.content = content;
        this.findings = findings;
    }

    /**
     * The ring, closed with a note when it was open.
     *
     * @param number its position in the feature, counted from 1
     * @throws org.fallrule.document.UnusableInput when it has fewer than four points even when closed
     */
    Coordinate[] closed(Coordinate[] ring, int number) {
        boolean open = !ring[0].equals2D(ring[ring.length - 1]);
        if (ring.length + (open ? 1 : 0) < LEAST_POINTS) {
            throw content.unusable("its ring " + number + " has " + ring.length
                    + " points; wanted 4 or more, the last the same as the first; draw it whole or take the ring away");
        }
        return open ? close(ring, number) : ring;
    }

    private Coordinate[] close(Coordinate[] ring, int number) {
        Coordinate first = ring[0];
        findings.noteFeature(
                content.feature(),
                "its ring " + number + " is not closed: it begins and ends " + first.distance(ring[ring.length - 1])
                        + " apart; it was closed by a straight line; close it in the layer");
        Coordinate[] closed = Arrays.copyOf(ring, ring.length + 1);
        closed[ring.length] = first.copy();
        return closed;
    }
}
