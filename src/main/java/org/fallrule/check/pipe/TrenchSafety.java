package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Where the trench is so deep that whoever goes down into it must be protected and must have a way out. */
@AutoService(Check.class)
public final class TrenchSafety implements Check {
    static final Parameter<Quantity> PROTECTION = Parameter.quantity(
                    "protection_from", Dimension.LENGTH, "depth from which a protective system is asked for")
            .always();
    static final Parameter<Quantity> EGRESS = Parameter.quantity(
                    "egress_from", Dimension.LENGTH, "depth from which a ladder, ramp or stairway is asked for")
            .always();
    static final Parameter<Quantity> TRAVEL = Parameter.quantity(
                    "egress_within", Dimension.LENGTH, "greatest lateral travel to the ladder, ramp or stairway")
            .within(Range.ABOVE_ZERO)
            .always();
    static final Parameter<Quantity> BEDDING = Parameter.quantity(
            "bedding", Dimension.LENGTH, "how far the trench is dug below the pipe; none when it is not given");

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "trench_safety";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The reaches of each pipe's trench, with their stations, that are deep enough to ask for a protective"
                        + " system and for a way out, and the deepest place of the whole drain. It is a note to the crew:"
                        + " it never fails a plan and never says that a trench is safe.",
                "depth = finished ground - bottom of trench; bottom of trench = invert - wall - bedding",
                "29 CFR 1926.652(a)(1): a protective system unless the cut is made wholly in stable rock, or is less than"
                        + " 5 ft deep and a competent person finds no sign of a cave-in. 29 CFR 1926.651(c)(2): from 4 ft"
                        + " on a ladder, ramp or stairway within 25 ft of lateral travel.",
                List.of(
                        "soil, water, roots, old trenches, traffic and spoil beside the cut: a shallow trench can cave in"
                                + " too",
                        "how deep the trench is dug in the end",
                        "basins and pits, which may be dug deeper than the pipe"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(PROTECTION, EGRESS, TRAVEL, BEDDING);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> deepest = new ArrayList<>();
        List<Observation> observations = new ArrayList<>(EachProfile.observe(analysis, (run, profile) -> {
            Trench trench = new Trench(analysis, run, profile, terms.find(BEDDING));
            trench.deepest().map(spot -> deepest(analysis, run, profile, spot)).ifPresent(deepest::add);
            return Stream.of(
                            protection(analysis, run, trench, terms),
                            egress(analysis, run, trench, terms),
                            groundMissing(analysis, run, trench))
                    .flatMap(Optional::stream)
                    .toList();
        }));
        deepest.stream()
                .max(Comparator.comparingDouble(TrenchSafety::depth))
                .ifPresent(seen -> observations.add(0, seen));
        return observations;
    }

    private static Observation deepest(SiteAnalysis analysis, PipeRun run, PipeProfile profile, Stretch.Spot spot) {
        return Observation.measured(run.pipe(), Measured.fact("greatest trench depth of the drain", spot.height()))
                .at(GEOMETRY.createPoint(profile.placeAt(spot.station())))
                .noting("at station " + analysis.station(spot.station()))
                .noting("at any depth a competent person must look for signs of a cave-in before somebody goes down");
    }

    private static double depth(Observation deepest) {
        return deepest.measured().orElseThrow().value().si();
    }

    private static Optional<Observation> protection(SiteAnalysis analysis, PipeRun run, Trench trench, Terms terms) {
        return reaching(analysis, run, trench, terms.get(PROTECTION), "protective system over")
                .map(seen -> seen.noting("unless it is cut wholly in stable rock"));
    }

    private static Optional<Observation> egress(SiteAnalysis analysis, PipeRun run, Trench trench, Terms terms) {
        String travel = analysis.site().printed(terms.get(TRAVEL).si());
        return reaching(analysis, run, trench, terms.get(EGRESS), "ladder, ramp or stairway over")
                .map(seen -> seen.noting("no more than " + travel + " of lateral travel from anybody in it"));
    }

    private static Optional<Observation> reaching(
            SiteAnalysis analysis, PipeRun run, Trench trench, Quantity depth, String what) {
        List<Reach> reaches = trench.atLeast(new Length(depth.si()));
        if (reaches.isEmpty()) {
            return Optional.empty();
        }
        Length length = new Length(
                reaches.stream().mapToDouble(reach -> reach.length().metres()).sum());
        String greatest = analysis.site().printed(trench.deepest().orElseThrow().height(), Unit.FOOT);
        return Optional.of(Observation.measured(run.pipe(), Measured.fact(what, length))
                .at(part(run, reaches))
                .noting("station " + analysis.stations(reaches))
                .noting("up to " + greatest + " deep"));
    }

    private static Geometry part(PipeRun run, List<Reach> reaches) {
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        return GEOMETRY.buildGeometry(reaches.stream()
                .map(reach -> line.extractLine(reach.from(), reach.to()))
                .toList());
    }

    private static Optional<Observation> groundMissing(SiteAnalysis analysis, PipeRun run, Trench trench) {
        List<Missing> missing = trench.unknown().stream()
                .map(reach -> GroundOver.groundMissing(analysis, run, List.of(reach)))
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(missing.stream()
                        .reduce(
                                Observation.plain(Outcome.CANNOT_TELL, run.pipe()),
                                Observation::lacking,
                                (one, other) -> one));
    }
}
