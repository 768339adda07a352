package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.check.Limits;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Length;
import org.fallrule.network.Station;

/**
 * The parts of a pipe's run under one limit, with the least and greatest cover over them.
 *
 * @param asked what is asked there
 * @param reaches the parts, in the order of their stations
 * @param least the least cover; empty when the ground is not known along them
 * @param greatest the greatest cover
 */
record CoverStretch(Asked asked, List<Reach> reaches, Optional<Spot> least, Optional<Spot> greatest) {

    /** Covers in metres that differ by no more are the same, and the first counts: rounding must not choose the station. */
    private static final double SAME = 1e-6;

    CoverStretch {
        reaches = List.copyOf(reaches);
    }

    /** Cover at a station. */
    record Spot(double station, double cover) {}

    /** Part of a run between two stations in metres. */
    record Reach(double from, double to) {
        @Override
        public String toString() {
            return "from station " + new Station(from) + " to " + new Station(to);
        }
    }

    /**
     * What is asked of a place along the run.
     *
     * @param answer the limit
     * @param above what lies above it; empty when the plan leaves that open
     * @param byOutfall whether the limit would be another one if the outfall, whose kind is not given, were no daylight outfall
     */
    record Asked(Limits.Answer answer, Optional<String> above, boolean byOutfall) {}

    static CoverStretch unknown(Asked asked, double from, double to) {
        return new CoverStretch(asked, List.of(new Reach(from, to)), Optional.empty(), Optional.empty());
    }

    static CoverStretch between(Asked asked, Spot from, Spot to) {
        Reach reach = new Reach(from.station, to.station);
        return new CoverStretch(asked, List.of(reach), Optional.of(lesser(from, to)), Optional.of(greater(from, to)));
    }

    private static Spot lesser(Spot one, Spot next) {
        return next.cover < one.cover - SAME ? next : one;
    }

    private static Spot greater(Spot one, Spot next) {
        return next.cover > one.cover + SAME ? next : one;
    }

    /** This stretch and one farther along under the same limit as one. */
    CoverStretch and(CoverStretch next) {
        List<Reach> all = new ArrayList<>(reaches);
        Reach last = all.get(all.size() - 1);
        for (Reach reach : next.reaches) {
            if (reach.from == last.to) {
                all.set(all.size() - 1, new Reach(last.from, reach.to));
            } else {
                all.add(reach);
            }
            last = all.get(all.size() - 1);
        }
        return new CoverStretch(
                asked,
                all,
                least.flatMap(a -> next.least.map(b -> lesser(a, b))),
                greatest.flatMap(a -> next.greatest.map(b -> greater(a, b))));
    }

    boolean isKnown() {
        return least.isPresent();
    }

    Optional<Length> cover(Bound bound) {
        return worst(bound).map(spot -> new Length(spot.cover));
    }

    double station(Bound bound) {
        Reach first = reaches.get(0);
        return worst(bound).map(Spot::station).orElse((first.from + first.to) / 2);
    }

    /** {@code from station 0+00.0 to 0+20.0, from station 0+60.0 to 1+00.0}. */
    String spokenReaches() {
        return reaches.stream().map(Reach::toString).collect(Collectors.joining(", "));
    }

    private Optional<Spot> worst(Bound bound) {
        return bound == Bound.AT_LEAST ? least : greatest;
    }
}
