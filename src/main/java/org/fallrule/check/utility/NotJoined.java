package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.WidestOfPlan;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Whether the drain is joined in plan to a line that it must not drain into. */
@AutoService(Check.class)
public final class NotJoined implements Check {
    static final Parameter<Selection> FROM =
            Parameter.features("from", "the utilities that the drain must not be joined to", Role.UTILITY);
    static final Parameter<Quantity> WITHIN = Parameter.quantity(
                    "within", Dimension.LENGTH, "an end that comes so near to the other's outside counts as joined")
            .always();
    static final Parameter<Quantity> SIZE = Parameter.quantity(
                    "size_if_unknown",
                    Dimension.LENGTH,
                    "outside diameter to take for a utility whose size the plan does not give, and for a pipe where the"
                            + " plan gives the size of none")
            .within(Range.ABOVE_ZERO)
            .always();

    @Override
    public String name() {
        return "not_joined";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Whether an end of a pipe, an inlet, an outfall or a cleanout of the drain touches a utility in plan, or"
                        + " an end of the utility a pipe of the drain. To cross in passing is not to be joined.",
                "joined where distance of an end from the other's centreline - half its outside diameter <= within",
                "IPC 1101.3 and UPC 1101.3: storm water must not drain into sewers meant for sewage alone.",
                List.of("heights: an end that stops over a line counts as joined to it", "connections inside a house"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, WITHIN, SIZE);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Selection from = terms.get(FROM);
        double reach = terms.get(WITHIN).si() + Dimension.LENGTH.tolerance();
        Length sizeIfUnknown = new Length(terms.get(SIZE).si());
        List<Feature> drain = Role.ofDrain().stream()
                .flatMap(role -> analysis.site().features(role).stream())
                .toList();
        UnsizedPipes unsized = UnsizedPipes.of(analysis.site(), sizeIfUnknown);
        for (Feature utility : from.candidates(analysis.site())) {
            double radius = PipeAndUtility.size(utility, sizeIfUnknown).metres() / 2;
            List<Observation> joined = drain.stream()
                    .map(part -> joined(part, utility, reach, radius))
                    .flatMap(Optional::stream)
                    .toList();
            (joined.isEmpty() ? List.of(apart(utility, unsized, reach)) : joined)
                    .forEach(seen -> observations.add(
                            PipeAndUtility.withSizeOf(utility, from.settledByDistance(seen, utility))));
        }
        return observations;
    }

    /** Pipes without a diameter, and that of the widest of the plan, which counts for them. */
    private record UnsizedPipes(Site plan, List<Feature> pipes, Length counted) {

        static UnsizedPipes of(Site site, Length ifNoneHasOne) {
            List<Feature> pipes = site.features(Role.PIPE).stream()
                    .filter(pipe -> OutsideDiameter.of(pipe).isEmpty())
                    .toList();
            Length counted = pipes.stream()
                    .flatMap(pipe -> WidestOfPlan.standingFor(pipe, site).stream())
                    .map(WidestOfPlan::size)
                    .findFirst()
                    .orElse(ifNoneHasOne);
            return new UnsizedPipes(site, pipes, counted);
        }

        Observation said(Observation seen) {
            return pipes.isEmpty()
                    ? seen
                    : seen.noting("pipes whose diameter is not given are counted " + plan.printed(counted, Unit.INCH)
                            + " wide");
        }
    }

    /** None is joined; not told where an end of the utility would touch a pipe without a diameter. */
    private static Observation apart(Feature utility, UnsizedPipes unsized, double reach) {
        double touching = reach + unsized.counted().metres() / 2;
        List<Feature> open = unsized.pipes().stream()
                .filter(pipe -> joined(ends(utility), pipe.geometry(), touching).isPresent())
                .toList();
        Observation seen = open.isEmpty()
                ? Observation.plain(Outcome.MEETS, utility).noting("no part of the drain is joined to it")
                : Observation.plain(Outcome.CANNOT_TELL, utility);
        for (Feature pipe : open) {
            seen = seen.lacking(new Missing("diameter of " + pipe.spoken(), "give diameter with its unit"));
        }
        return unsized.said(seen);
    }

    private static Optional<Observation> joined(Feature part, Feature utility, double reach, double radiusOfUtility) {
        return joined(ends(part), utility.geometry(), reach + radiusOfUtility)
                .or(() -> part.role() == Role.PIPE
                        ? joined(ends(utility), part.geometry(), reach + radius(part))
                        : Optional.empty())
                .map(where -> Observation.plain(Outcome.FAILS, part)
                        .against(utility)
                        .at(where)
                        .noting("it is joined to " + utility.spoken() + " in plan"));
    }

    private static Optional<Geometry> joined(Geometry ends, Geometry line, double reach) {
        return !ends.isEmpty() && ends.isWithinDistance(line, reach)
                ? Optional.of(line.getFactory().createPoint(DistanceOp.nearestPoints(ends, line)[0]))
                : Optional.empty();
    }

    /** None of a line that closes on itself. */
    private static Geometry ends(Feature feature) {
        return feature.geometry().getDimension() == 1 ? feature.geometry().getBoundary() : feature.geometry();
    }

    private static double radius(Feature pipe) {
        return OutsideDiameter.of(pipe).map(OutsideDiameter::radius).orElse(0.0);
    }
}
