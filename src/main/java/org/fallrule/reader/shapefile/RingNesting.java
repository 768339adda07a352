package org.fallrule.reader.shapefile;

import java.util.Arrays;
import java.util.Comparator;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/** Finds for every ring of a polygon the smallest ring that it lies in. */
final class RingNesting {
    private static final long MOST_WORK = 3_000_000_000L;

    private final Findings findings;
    private long workLeft;

    /** A search that is bounded for all the features of a file together. */
    RingNesting(Findings findings) {
        this(findings, MOST_WORK);
    }

    /**
     * A search with a bound of its own.
     *
     * @param mostWork pairs of rings looked at, and sides of the larger ring for each vertex of the smaller
     */
    RingNesting(Findings findings, long mostWork) {
        this.findings = findings;
        this.workLeft = mostWork;
    }

    /**
     * Settles parent and depth of the rings.
     *
     * @throws UnusableInput when the rings of a file are so many and so entangled that the search would not end in useful time
     */
    void nest(Ring[] rings, Place feature) {
        Ring[] growing = rings.clone();
        Arrays.sort(growing, Comparator.comparingDouble(Ring::area));
        for (int index = 0; index < growing.length; index++) {
            findParent(growing, index, feature);
        }
        for (int index = growing.length - 1; index >= 0; index--) {
            growing[index].settleDepth();
        }
    }

    private void findParent(Ring[] growing, int index, Place feature) {
        Ring inner = growing[index];
        for (int larger = index + 1; larger < growing.length; larger++) {
            Ring outer = growing[larger];
            spend(1, feature);
            if (outer.envelope().intersects(inner.envelope()) && isWithin(inner, outer, feature)) {
                inner.liesIn(outer);
                return;
            }
        }
    }

    private boolean isWithin(Ring inner, Ring outer, Place feature) {
        int samples = Math.min(inner.vertices().size(), RingContainment.MOST_SAMPLES);
        spend((long) samples * outer.vertices().size(), feature);
        RingContainment containment = RingContainment.of(inner, outer);
        if (containment.isCrossing() || containment.isAlong()) {
            findings.noteFeature(
                    feature,
                    "its ring " + inner.number() + (containment.isAlong() ? " runs along ring " : " crosses ring ")
                            + outer.number() + "; read as "
                            + (containment.isWithin() ? "lying in it" : "standing beside it")
                            + "; redraw the rings so that they do not overlap");
        }
        return containment.isWithin();
    }

    private void spend(long steps, Place feature) {
        workLeft -= steps;
        if (workLeft < 0) {
            throw new UnusableInput(
                    feature,
                    "its rings are too many and too long to find which lies in which; "
                            + "split the feature into several, or simplify its outline");
        }
    }
}
