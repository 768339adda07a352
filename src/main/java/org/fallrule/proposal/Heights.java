package org.fallrule.proposal;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;

/** How high a pipe of one size may lie. Metres; levels are inverts. */
final class Heights {
    private final Ground ground;
    private final LineRules rules;
    private final Feature pipe;
    private final double above;
    private final Map<Coordinate, Optional<Double>> far = new HashMap<>();
    private final double leastSlope;
    /** By what lies on the ground. */
    private final Map<String, Double> lastRuns = new HashMap<>();

    private final Map<String, Double> under = new HashMap<>();

    Heights(Ground ground, LineRules rules, Stock stock, Length size) {
        this.ground = ground;
        this.rules = rules;
        this.pipe = stock.pipe(size);
        this.above = stock.outside(size) - stock.wall(size);
        this.leastSlope = rules.leastSlope(pipe);
    }

    /** The ground; nothing where it is not known. */
    Optional<Double> ground(Coordinate place) {
        return ground.at(place);
    }

    /** The highest invert at a place far from the outfall; nothing where the ground is not known. */
    Optional<Double> highest(Coordinate place) {
        return far.computeIfAbsent(
                place, where -> ground(where).map(level -> level - under(where, rules.above(where))));
    }

    /** From the ground down to the invert where cover is asked. */
    private double under(Coordinate place, String surface) {
        return under.computeIfAbsent(
                surface, any -> rules.cover(pipe, place, LineRules.far()).orElse(0.0) + above);
    }

    /**
     * The highest invert at a place so far before the outfall. Over the last run, of which no cover is asked, the pipe comes out
     * of the ground evenly.
     */
    Optional<Double> highest(Coordinate place, double toOutfall) {
        String surface = rules.above(place);
        double last = lastRun(place, surface);
        double share = toOutfall > last ? 1 : toOutfall / Math.max(last, toOutfall);
        return ground(place).map(level -> level - under(place, surface) * share);
    }

    /** The highest invert where water is taken in: under the cover that is asked of pipes and that to allow at an inlet. */
    Optional<Double> atInlet(Coordinate place) {
        return ground(place).map(level -> level - rules.coverAtInlet(pipe, place) - above);
    }

    /** How long the last run is of which no cover is asked. */
    double lastRun(Coordinate place) {
        return lastRun(place, rules.above(place));
    }

    private double lastRun(Coordinate place, String surface) {
        return lastRuns.computeIfAbsent(surface, any -> rules.lastRun(pipe, place));
    }

    double leastSlope() {
        return leastSlope;
    }
}
