package org.fallrule.check.ground;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

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
    public boolean looksAtGround() {
        return true;
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
                new WayOfWater(analysis, terms, outfall, way.get())
                        .observe()
                        .map(seen -> noting(seen, hollow(analysis, terms, outfall)))
                        .ifPresent(observations::add);
            }
        }
        return observations;
    }

    private static String hollow(SiteAnalysis analysis, Terms terms, Feature outfall) {
        return terms.find(DEEPER)
                .map(Quantity::si)
                .flatMap(deeper -> Hollow.deeperThan(deeper, analysis).stream()
                        .filter(hollow -> hollow.water().intersects(outfall.geometry()))
                        .findFirst())
                .map(hollow -> "it comes out in a hollow " + hollow.spoken(analysis.site())
                        + ", which must fill before any of it runs on")
                .orElse("");
    }

    static Observation noting(Observation seen, String note) {
        return note.isEmpty() ? seen : seen.noting(note);
    }
}
