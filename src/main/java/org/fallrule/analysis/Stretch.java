package org.fallrule.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Length;
import org.fallrule.network.Reach;
import org.fallrule.site.Attributes;

/**
 * The parts of a pipe's run of which one thing is asked, with the least and greatest height of the ground over some line of
 * the pipe, such as its top or the bottom of its trench.
 *
 * @param attributes the pipe's attributes, what lies above, and the length still to run to daylight, somewhere in the first part
 * @param reaches the parts, in the order of their stations
 * @param least the least height; empty when the ground is not known along them
 * @param greatest the greatest height
 */
public record Stretch(Attributes attributes, List<Reach> reaches, Optional<Spot> least, Optional<Spot> greatest) {

    /** Heights in metres that differ by no more are the same, and the first counts: rounding must not choose the station. */
    private static final double SAME = 1e-6;

    public Stretch {
        reaches = List.copyOf(reaches);
    }

    /**
     * The height of the ground at a station.
     *
     * @param station the station in metres
     * @param height the height over the line of the pipe
     */
    public record Spot(double station, Length height) {}

    static Stretch unknown(Attributes attributes, double from, double to) {
        return new Stretch(attributes, List.of(new Reach(from, to)), Optional.empty(), Optional.empty());
    }

    static Stretch between(Attributes attributes, Spot from, Spot to) {
        Reach reach = new Reach(from.station, to.station);
        return new Stretch(attributes, List.of(reach), Optional.of(lesser(from, to)), Optional.of(greater(from, to)));
    }

    private static Spot lesser(Spot one, Spot next) {
        return next.height.metres() < one.height.metres() - SAME ? next : one;
    }

    private static Spot greater(Spot one, Spot next) {
        return next.height.metres() > one.height.metres() + SAME ? next : one;
    }

    /** This stretch and one farther along of which the same is asked as one. */
    Stretch and(Stretch next) {
        return new Stretch(
                attributes,
                Reach.joined(
                        Stream.concat(reaches.stream(), next.reaches.stream()).toList()),
                least.flatMap(a -> next.least.map(b -> lesser(a, b))),
                greatest.flatMap(a -> next.greatest.map(b -> greater(a, b))));
    }

    public boolean isKnown() {
        return least.isPresent();
    }

    /** The station in metres where it begins. */
    public double from() {
        return reaches.get(0).from();
    }

    /** The station in metres where its last part ends. */
    public double to() {
        return reaches.get(reaches.size() - 1).to();
    }

    /** The height that decides under a limit: the least or the greatest. */
    public Optional<Length> height(Bound bound) {
        return worst(bound).map(Spot::height);
    }

    /** Where that height stands; the middle of the first part when the ground is not known. */
    public double station(Bound bound) {
        Reach first = reaches.get(0);
        return worst(bound).map(Spot::station).orElse((first.from() + first.to()) / 2);
    }

    private Optional<Spot> worst(Bound bound) {
        return bound == Bound.AT_LEAST ? least : greatest;
    }
}
