package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.RunParts;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/** The run of the drain that lies so near a marked utility that it must be dug by hand. */
@AutoService(Check.class)
public final class HandDig implements Check {
    public static final Parameter<Selection> FROM = Parameter.features("from", "the marked utilities", Role.UTILITY);
    public static final Parameter<Quantity> ZONE = Parameter.quantity(
                    "zone", Dimension.LENGTH, "tolerance zone of the state, from the outside edge of the utility")
            .within(Range.ABOVE_ZERO)
            .always();
    static final Parameter<Selection> PRIVATE = new Parameter<>(
            "private",
            new Parameter.Form.Features(List.of(Role.UTILITY)),
            Selection.class,
            false,
            false,
            "the lines that one-call does not mark");
    public static final Parameter<Quantity> SIZE = Parameter.quantity(
                    "size_if_unknown",
                    Dimension.LENGTH,
                    "outside diameter to take for a utility whose size the plan does not give")
            .within(Range.ABOVE_ZERO)
            .always();

    @Override
    public String name() {
        return "hand_dig";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The length of each pipe, with its stations, of which some part lies inside of the tolerance zone of a"
                        + " utility, and the private lines that one-call does not mark. It is a note to the crew and never fails a plan: a trench along a sprinkler main is met by digging by hand.",
                "zone = half the utility's outside diameter + the state's tolerance, on both sides of its centreline",
                "State one-call laws measure the zone from the outside edge of the facility, such as F.S. 556.102 and"
                        + " California Gov. Code 4216; hand digging along a sprinkler main is common practice with no"
                        + " published source.",
                List.of("utilities that are not on the plan", "where a mark lies askew by more than the zone"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, ZONE, PRIVATE, SIZE);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Selection from = terms.get(FROM);
        for (Feature utility : from.candidates(analysis.site())) {
            notMarked(terms, utility).ifPresent(observations::add);
            for (PipeRun run : analysis.network().runs()) {
                PipeAndUtility pair = PipeAndUtility.of(analysis, run, utility, terms.get(SIZE));
                observe(analysis, run, utility, pair.runWithin(reach(terms, run, utility)))
                        .map(seen -> noting(seen, from, run, utility))
                        .ifPresent(observations::add);
            }
        }
        return observations;
    }

    private static Optional<Observation> notMarked(Terms terms, Feature utility) {
        boolean isPrivate = terms.find(PRIVATE)
                .map(lines -> lines.chooses(utility) == Truth.TRUE)
                .orElse(false);
        return isPrivate
                ? Optional.of(Observation.plain(Outcome.MEETS, utility)
                        .telling(utility.spoken() + " is a private line")
                        .noting("one-call does not mark it: have it located before digging"))
                : Optional.empty();
    }

    /** From the utility's centreline to the pipe's, in metres, when the pipe's edge touches the zone. */
    private static double reach(Terms terms, PipeRun run, Feature utility) {
        double size = OutsideDiameter.of(utility)
                .map(OutsideDiameter::value)
                .map(Length::metres)
                .orElse(terms.get(SIZE).si());
        double pipe = run.size().map(OutsideDiameter::radius).orElse(0.0);
        return size / 2 + terms.get(ZONE).si() + pipe;
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, PipeRun run, Feature utility, Geometry inside) {
        if (inside.getLength() < Dimension.LENGTH.tolerance()) {
            return Optional.empty();
        }
        Measured length = Measured.fact("dig by hand over", new Length(inside.getLength()));
        return Optional.of(Observation.measured(run.pipe(), length)
                .against(utility)
                .at(inside)
                .noting("station " + analysis.stations(RunParts.of(run, inside))));
    }

    private static Observation noting(Observation seen, Selection from, PipeRun run, Feature utility) {
        Observation noted = seen;
        if (OutsideDiameter.of(utility).isEmpty()) {
            noted = noted.noting("size of " + utility.spoken() + " is not given and taken from the rule");
        }
        if (run.size().isEmpty()) {
            noted = noted.noting("diameter of " + run.pipe().spoken() + " is not given and not counted");
        }
        return from.chooses(utility) == Truth.TRUE
                ? noted
                : noted.noting(from.lacking(utility).what() + " is not given");
    }
}
