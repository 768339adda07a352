package org.fallrule.check.ground;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.SurfaceAbove;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Where the water that an outfall lets out goes over the ground. */
@AutoService(Check.class)
public final class FlowPath implements Check {
    static final Parameter<Selection> FROM = Parameter.features("from", "where the water comes out", Role.OUTFALL);
    static final Parameter<Selection> TO = Parameter.features(
            "to", "what it must not come to", Role.LOT, Role.BUILDING, Role.WALK, Role.DRIVE, Role.STREET, Role.SEPTIC);
    static final Parameter<Selection> UNTIL = Parameter.features(
            "until", "what takes the water in, so that its way ends there", Role.STREET, Role.WATER_BODY);
    static final Parameter<Limits> WITHIN = Parameter.limit(
                    "within",
                    Bound.AT_LEAST,
                    Dimension.LENGTH,
                    "the first stretch of the water's way, on which it must not come there; its whole way when it is not given")
            .thatAsksLess();
    static final Parameter<Quantity> DEEPER = Parameter.quantity(
            "pond_deeper_than",
            Dimension.LENGTH,
            "an outfall in a hollow deeper than this is told; not looked for when it is not given");

    private static final String WAY = "way of the water over the ground";

    @Override
    public String name() {
        return "flow_path";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "How far the water of each outfall runs over the finished ground before it comes to something that it"
                        + " must not come to: the steepest way down, through hollows by where they spill, until something"
                        + " takes it in or the surveyed ground ends.",
                "way = plan length along the steepest descent of the ground with its hollows filled, from the outfall to"
                        + " the first place of the other feature",
                "Steepest descent by central differences on a bilinear grid; filling after Barnes, Lehman and Mulla,"
                        + " Computers & Geosciences 62 (2014).",
                List.of(
                        "that water spreads as it runs, and sinks in: this is the middle of its way, not its width",
                        "curbs, walls, gutters and edges of paving that are not in the ground that is given",
                        "swales between spot elevations, and those narrower than the grid of 0.25 m",
                        "which way the outfall throws the water, and how fast",
                        "that the ground under a building is only drawn through from side to side"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, TO, UNTIL, WITHIN, DEEPER);
    }

    @Override
    public boolean looksAtHeights() {
        return false;
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(
                new Need.OfLayer(Role.OUTFALL), new Need.OfLayer(terms.get(TO).role()), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection from = terms.get(FROM);
        List<Observation> observations = new ArrayList<>();
        for (Feature outfall : from.candidates(analysis.site())) {
            if (from.chooses(outfall) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(outfall, from.lacking(outfall)));
                continue;
            }
            Optional<Discharge> way = Discharge.from(outfall, analysis);
            if (way.isEmpty()) {
                observations.add(Observation.cannotTell(
                        outfall,
                        new Missing(
                                "the ground at " + outfall.spoken(), "take spot elevations at it and downhill of it")));
            } else {
                observe(analysis, terms, outfall, way.get())
                        .map(seen -> noting(seen, hollow(analysis, terms, outfall)))
                        .ifPresent(observations::add);
            }
        }
        return observations;
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, Terms terms, Feature outfall, Discharge way) {
        Site site = analysis.site();
        Selection until = terms.get(UNTIL);
        Optional<Reached> taken = site.features(until.role()).stream()
                .filter(each -> until.chooses(each) == Truth.TRUE)
                .flatMap(each -> Reached.by(way, each).stream())
                .min(Comparator.comparingDouble(Reached::metres));
        double end = taken.map(Reached::metres).orElse(way.length());
        Selection to = terms.get(TO);
        return to.candidates(site).stream()
                .filter(each ->
                        to.role() != Role.LOT || !each.equals(site.ownLot().orElse(null)))
                .flatMap(each -> Reached.by(way, each).stream())
                .filter(reached -> reached.metres() <= end)
                .flatMap(reached -> reached(analysis, terms, outfall, way, reached).stream())
                .min(Comparator.comparing(Observation::outcome)
                        .thenComparingDouble(
                                seen -> seen.measured().map(m -> m.value().si()).orElse(0.0)))
                .or(() -> notReached(analysis, terms, outfall, way, taken));
    }

    /** Something that the water comes to, and how many metres it has run by then. */
    private record Reached(Feature feature, double metres) {
        static Optional<Reached> by(Discharge way, Feature feature) {
            return way.reaches(feature.geometry()).map(metres -> new Reached(feature, metres));
        }
    }

    private static Optional<Observation> reached(
            SiteAnalysis analysis, Terms terms, Feature outfall, Discharge way, Reached reached) {
        Selection to = terms.get(TO);
        double accuracy =
                Accuracy.ofDistance(analysis, outfall, reached.feature()).metres();
        return held(terms, outfall, reached.metres(), accuracy)
                .map(seen -> to.chooses(reached.feature()) == Truth.TRUE || seen.outcome() == Outcome.MEETS
                        ? seen
                        : seen.with(Outcome.CANNOT_TELL).lacking(to.lacking(reached.feature())))
                .map(seen -> telling(
                        along(seen, analysis, way, reached.metres()).against(reached.feature()),
                        "reaches the " + reached.feature().spoken() + " after"));
    }

    /** Held against the stretch that the rule looks along; against the whole way, it fails by coming there at all. */
    private static Optional<Observation> held(Terms terms, Feature outfall, double metres, double accuracy) {
        Optional<Limits> within = terms.find(WITHIN);
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
    private static Observation telling(Observation seen, String does) {
        if (seen.measured().isEmpty() || seen.subject().isEmpty()) {
            return seen;
        }
        Measured measured = seen.measured().get();
        String run = measured.limit()
                .map(limit -> Printed.beside(measured.value(), limit) + " of its way; the rule looks "
                        + Printed.limit(limit.value()) + " along it")
                .orElseGet(() -> Discharge.shown(measured.value().si()) + " of its way");
        return seen.telling("water from " + seen.subject().get().spoken() + " " + does + " " + run);
    }

    /** Water that comes to nothing it must not come to: taken in, or run far enough; else it is lost to sight. */
    private static Optional<Observation> notReached(
            SiteAnalysis analysis, Terms terms, Feature outfall, Discharge way, Optional<Reached> taken) {
        if (taken.isPresent()) {
            double metres = taken.get().metres();
            Observation seen = Observation.measured(outfall, Measured.fact(WAY, new Length(metres)));
            return Optional.of(telling(
                    along(seen, analysis, way, metres),
                    "is taken in by the " + taken.get().feature().spoken() + " after"));
        }
        Optional<Double> left = leftLot(analysis.site(), terms, way);
        double known = left.orElse(way.length());
        Optional<Observation> seen = held(terms, outfall, known, 0);
        if (seen.filter(each -> each.outcome() == Outcome.MEETS).isPresent()) {
            return seen.map(each -> telling(
                    along(each, analysis, way, known),
                    "comes to no " + terms.get(TO).spoken() + " on the first"));
        }
        return seen.map(each -> along(Observation.cannotTell(outfall, beyond(left, known)), analysis, way, known));
    }

    private static Missing beyond(Optional<Double> left, double known) {
        return left.isPresent()
                ? new Missing(
                        "whose lot the water comes to after " + Discharge.shown(known),
                        "give the lots beside the site's own, marked own = false, and the street")
                : new Missing(
                        "the ground that the water comes to after " + Discharge.shown(known),
                        "survey further along its way");
    }

    /** Where it leaves the site's own lot, when the rule is about lots and the plan shows no other lot. */
    private static Optional<Double> leftLot(Site site, Terms terms, Discharge way) {
        if (terms.get(TO).role() != Role.LOT || site.features(Role.LOT).size() > 1) {
            return Optional.empty();
        }
        return site.ownLot().flatMap(lot -> way.reaches(lot.geometry().getBoundary()));
    }

    private static Observation along(Observation seen, SiteAnalysis analysis, Discharge way, double metres) {
        return noting(seen.at(way.upTo(metres)), way.spoken(metres, new SurfaceAbove(analysis.site())));
    }

    private static String hollow(SiteAnalysis analysis, Terms terms, Feature outfall) {
        return terms.find(DEEPER)
                .map(Quantity::si)
                .flatMap(deeper -> Hollow.deeperThan(deeper, analysis).stream()
                        .filter(hollow -> hollow.water().intersects(outfall.geometry()))
                        .findFirst())
                .map(hollow ->
                        "it comes out in a hollow " + hollow.spoken() + ", which must fill before any of it runs on")
                .orElse("");
    }

    private static Observation noting(Observation seen, String note) {
        return note.isEmpty() ? seen : seen.noting(note);
    }
}
