package org.fallrule.analysis;

import java.util.Optional;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Length;
import org.fallrule.site.Attributes;

/**
 * Part of a pipe's run under one limit, with the least and greatest height of the ground over some line of the pipe, such as
 * its top or the bottom of its trench.
 *
 * @param attributes the pipe's attributes, what lies above, and the length still to run to daylight, somewhere in the stretch
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 * @param least the least height; empty when the ground is not known along it
 * @param greatest the greatest height
 */
public record Stretch(Attributes attributes, double from, double to, Optional<Spot> least, Optional<Spot> greatest) {

    /**
     * The height of the ground at a station.
     *
     * @param station the station in metres
     * @param height the height over the line of the pipe
     */
    public record Spot(double station, Length height) {}

    static Stretch unknown(Attributes attributes, double from, double to) {
        return new Stretch(attributes, from, to, Optional.empty(), Optional.empty());
    }

    static Stretch between(Attributes attributes, Spot from, Spot to) {
        boolean rising = from.height.compareTo(to.height) <= 0;
        Spot least = rising ? from : to;
        Spot greatest = rising ? to : from;
        return new Stretch(attributes, from.station, to.station, Optional.of(least), Optional.of(greatest));
    }

    /** This stretch and another under the same limit as one. */
    Stretch and(Stretch other) {
        return new Stretch(
                attributes,
                Math.min(from, other.from),
                Math.max(to, other.to),
                least.flatMap(a -> other.least.map(b -> a.height.compareTo(b.height) <= 0 ? a : b)),
                greatest.flatMap(a -> other.greatest.map(b -> a.height.compareTo(b.height) >= 0 ? a : b)));
    }

    public boolean isKnown() {
        return least.isPresent();
    }

    /** The height that decides under a limit: the least or the greatest. */
    public Optional<Length> height(Bound bound) {
        return worst(bound).map(Spot::height);
    }

    /** Where that height stands; the middle of the stretch when the ground is not known. */
    public double station(Bound bound) {
        return worst(bound).map(Spot::station).orElse((from + to) / 2);
    }

    private Optional<Spot> worst(Bound bound) {
        return bound == Bound.AT_LEAST ? least : greatest;
    }
}
