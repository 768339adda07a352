package org.fallrule.check.pipe;

import java.util.Optional;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Length;
import org.fallrule.site.Attributes;

/**
 * Part of a pipe's run under one limit, with the least and greatest cover over it.
 *
 * @param attributes the pipe's attributes, what lies above, and the length still to run to daylight, somewhere in the stretch
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 * @param least the least cover; empty when the ground is not known along it
 * @param greatest the greatest cover
 */
record CoverStretch(Attributes attributes, double from, double to, Optional<Spot> least, Optional<Spot> greatest) {

    /** Cover at a station. */
    record Spot(double station, double cover) {}

    static CoverStretch unknown(Attributes attributes, double from, double to) {
        return new CoverStretch(attributes, from, to, Optional.empty(), Optional.empty());
    }

    static CoverStretch between(Attributes attributes, Spot from, Spot to) {
        Spot least = from.cover <= to.cover ? from : to;
        Spot greatest = from.cover <= to.cover ? to : from;
        return new CoverStretch(attributes, from.station, to.station, Optional.of(least), Optional.of(greatest));
    }

    /** This stretch and another under the same limit as one. */
    CoverStretch and(CoverStretch other) {
        return new CoverStretch(
                attributes,
                Math.min(from, other.from),
                Math.max(to, other.to),
                least.flatMap(a -> other.least.map(b -> a.cover <= b.cover ? a : b)),
                greatest.flatMap(a -> other.greatest.map(b -> a.cover >= b.cover ? a : b)));
    }

    boolean isKnown() {
        return least.isPresent();
    }

    Optional<Length> cover(Bound bound) {
        return worst(bound).map(spot -> new Length(spot.cover));
    }

    double station(Bound bound) {
        return worst(bound).map(Spot::station).orElse((from + to) / 2);
    }

    private Optional<Spot> worst(Bound bound) {
        return bound == Bound.AT_LEAST ? least : greatest;
    }
}
