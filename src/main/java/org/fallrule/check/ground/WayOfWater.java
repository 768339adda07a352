package org.fallrule.check.ground;

import java.util.Comparator;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Limits;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** The way of one outfall's water held against what a rule says that it must not come to. */
final class WayOfWater {
    private static final String WAY = "way of the water over the ground";

    private final SiteAnalysis analysis;
    private final Terms terms;
    private final Feature outfall;
    private final Discharge way;

    WayOfWater(SiteAnalysis analysis, Terms terms, Feature outfall, Discharge way) {
        this.analysis = analysis;
        this.terms = terms;
        this.outfall = outfall;
        this.way = way;
    }

    /** How far it runs before it comes to what it must not come to; nothing where no limit is asked of it. */
    Optional<Observation> observe() {
        Site site = analysis.site();
        Selection until = terms.get(FlowPath.UNTIL);
        Optional<Reached> taken = site.features(until.role()).stream()
                .filter(each -> until.chooses(each) == Truth.TRUE)
                .flatMap(each -> Reached.by(way, each).stream())
                .min(Comparator.comparingDouble(Reached::metres));
        double end = taken.map(Reached::metres).orElse(way.length());
        Selection to = terms.get(FlowPath.TO);
        return to.candidates(site).stream()
                .filter(each ->
                        to.role() != Role.LOT || !each.equals(site.ownLot().orElse(null)))
                .flatMap(each -> Reached.by(way, each).stream())
                .filter(reached -> reached.metres() <= end)
                .flatMap(reached -> reached(reached).stream())
                .min(Comparator.comparing(Observation::outcome)
                        .thenComparingDouble(
                                seen -> seen.measured().map(m -> m.value().si()).orElse(0.0)))
                .or(() -> notReached(taken));
    }

    /** Something that the water comes to, and how many metres it has run by then. */
    private record Reached(Feature feature, double metres) {
        static Optional<Reached> by(Discharge way, Feature feature) {
            return way.reaches(feature.geometry()).map(metres -> new Reached(feature, metres));
        }
    }

    private Optional<Observation> reached(Reached reached) {
        double accuracy =
                Accuracy.ofDistance(analysis, outfall, reached.feature()).metres();
        return held(reached.metres(), accuracy)
                .map(seen -> terms.get(FlowPath.TO).settled(seen, reached.feature()))
                .map(seen -> telling(
                        along(seen, reached.metres()).against(reached.feature()),
                        "reaches the " + reached.feature().spoken() + " after"));
    }

    /** Held against the stretch that the rule looks along; against the whole way, it fails by coming there at all. */
    private Optional<Observation> held(double metres, double accuracy) {
        Optional<Limits> within = terms.find(FlowPath.WITHIN);
        if (within.isEmpty()) {
            return Optional.of(Observation.measured(outfall, Measured.fact(WAY, new Length(metres)))
                    .with(Outcome.FAILS));
        }
        return within.get()
                .hold(
                        outfall,
                        outfall.attributes(),
                        asked -> Observation.measured(outfall, asked.against(WAY, new Length(metres), accuracy)));
    }

    /** {@code water from outfall OF-1 reaches the walk W-2 after 32.00 ft of its way; the rule looks 100 ft along it}. */
    private Observation telling(Observation seen, String does) {
        if (seen.measured().isEmpty() || seen.subject().isEmpty()) {
            return seen;
        }
        Measured measured = seen.measured().get();
        String run = measured.limit()
                .map(limit -> Printed.beside(
                                measured.value(), limit, analysis.site().metric()) + " of its way; the rule looks "
                        + Printed.limit(limit.value(), analysis.site().metric()) + " along it")
                .orElseGet(() -> shown(measured.value().si()) + " of its way");
        return seen.telling("water from " + seen.subject().get().spoken() + " " + does + " " + run);
    }

    /** Water that comes to nothing it must not come to: taken in, or run far enough; else it is lost to sight. */
    private Optional<Observation> notReached(Optional<Reached> taken) {
        if (taken.isPresent()) {
            double metres = taken.get().metres();
            Observation seen = Observation.measured(outfall, Measured.fact(WAY, new Length(metres)));
            return Optional.of(telling(
                    along(seen, metres),
                    "is taken in by the " + taken.get().feature().spoken() + " after"));
        }
        Optional<Double> left = leftLot();
        double known = left.orElse(way.length());
        Optional<Observation> seen = held(known, 0);
        if (seen.filter(each -> each.outcome() == Outcome.MEETS).isPresent()) {
            return seen.map(each -> telling(
                    along(each, known), "comes to no " + terms.get(FlowPath.TO).spoken() + " on the first"));
        }
        return seen.map(each -> each.missing().isEmpty() ? Observation.cannotTell(outfall, beyond(left, known)) : each)
                .map(each -> along(each, known));
    }

    private Missing beyond(Optional<Double> left, double known) {
        return left.isPresent()
                ? new Missing(
                        "whose lot the water comes to after " + shown(known),
                        "give the lots beside the site's own, marked own = false, and the street")
                : new Missing(
                        "the ground that the water comes to after " + shown(known), "survey further along its way");
    }

    /** Where it leaves the site's own lot, when the rule is about lots and the plan shows no other lot. */
    private Optional<Double> leftLot() {
        Site site = analysis.site();
        if (terms.get(FlowPath.TO).role() != Role.LOT || site.features(Role.LOT).size() > 1) {
            return Optional.empty();
        }
        return site.ownLot().flatMap(lot -> way.reaches(lot.geometry().getBoundary()));
    }

    private Observation along(Observation seen, double metres) {
        return FlowPath.noting(seen.at(way.upTo(metres)), way.spoken(metres, analysis.surfaces()));
    }

    private String shown(double metres) {
        return analysis.site().printed(new Length(metres), Unit.FOOT);
    }
}
