package org.fallrule.check.ground;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.SurfaceAbove;
import org.fallrule.check.Limits;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Holds the fall of the ground along lines that lead away from a building against its limit. */
final class FallHeld {
    private final SiteAnalysis analysis;
    private final Feature building;
    private final SurfaceAbove surfaces;
    private final Limits limits;
    private final double over;
    private final double bank;

    /**
     * @param over the distance in metres that the limits are asked over
     * @param bank how far above the foot of the wall, in metres, ground is a bank
     */
    FallHeld(SiteAnalysis analysis, Feature building, Limits limits, double over, double bank) {
        this.analysis = analysis;
        this.building = building;
        this.surfaces = analysis.surfaces();
        this.limits = limits;
        this.over = over;
        this.bank = bank;
    }

    /** A sample and how it stands. */
    record Sampled(WallSample sample, Observation seen) {
        /** By how much of slope it keeps its limit; negative when it does not. */
        double margin() {
            return seen.measured()
                            .flatMap(measured -> measured.limit().map(limit -> -limit.shortfall(measured.value())))
                            .orElse(0.0)
                    / sample.length();
        }
    }

    /** How a sample stands; nothing where no limit is asked. */
    Optional<Sampled> against(WallSample sample) {
        Attributes known = attributes(sample);
        return limits.hold(building, known, asked -> measured(sample, asked))
                .map(seen -> known.has(Attribute.ABOVE) ? seen : unlessCovered(seen, known))
                .map(seen -> new Sampled(sample, seen.at(sample.line())));
    }

    /** What covers the ground is worked out from other layers; the building's own cannot give it. */
    private Observation unlessCovered(Observation seen, Attributes known) {
        return limits.of(known) instanceof Limits.Answer.Undecided undecided
                        && undecided.lacking().equals(Attribute.ABOVE.name())
                ? Observation.cannotTell(
                        building,
                        new Missing("what covers the ground beside " + building.spoken(), surfaces.settledBy()))
                : seen;
    }

    private Observation measured(WallSample sample, Limits.Answer.Asked asked) {
        Optional<Length> fall = analysis.ground().flatMap(ground -> sample.fall(ground, bank));
        if (fall.isEmpty()) {
            return Observation.cannotTell(
                    building,
                    new Missing(
                            "the ground beside " + building.spoken() + " on its " + sample.side() + " side",
                            "take spot elevations at the wall and "
                                    + analysis.site().printed(over) + " out from it"));
        }
        double accuracy = Accuracy.ofHeightAtGround(analysis, building).metres();
        Observation seen = Observation.measured(building, against(sample, asked, fall.get(), accuracy))
                .noting("worst on its " + sample.side() + " side");
        return sample.until()
                .map(what -> seen.noting("only " + analysis.site().printed(sample.length()) + " to " + what))
                .orElse(seen);
    }

    /** A sample that is shorter than the full distance is held against the same slope. */
    private Measured against(WallSample sample, Limits.Answer.Asked asked, Length fall, double accuracy) {
        String of = "fall of the ground within the first " + analysis.site().printed(sample.length());
        if (sample.until().isEmpty()) {
            return asked.against(of, fall, accuracy);
        }
        Limit limit = asked.limit();
        Unit unit = limit.value().unit();
        double scaled = limit.value().quantity().in(unit) * sample.length() / over;
        Limit shorter = new Limit(limit.bound(), Written.of(scaled, unit, unit.decimals()));
        return new Limits.Answer.Asked(shorter, asked.setBy()).against(of, fall, accuracy);
    }

    /** The building's attributes and the surface that most of the sample lies under, where the plan says. */
    private Attributes attributes(WallSample sample) {
        Map<String, Double> lengths = new TreeMap<>();
        LengthIndexedLine places = new LengthIndexedLine(sample.line());
        TreeSet<Double> cuts = new TreeSet<>(surfaces.breaksAlong(sample.line()));
        cuts.add(sample.length());
        double from = 0;
        for (double to : cuts) {
            if (to - from > Dimension.LENGTH.tolerance()) {
                String surface =
                        surfaces.at(places.extractPoint((from + to) / 2)).orElse("");
                lengths.merge(surface, to - from, Double::sum);
                from = to;
            }
        }
        String most = lengths.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
        Attributes attributes = building.attributes();
        return most.isEmpty() ? attributes : attributes.with(Attribute.ABOVE, most);
    }
}
