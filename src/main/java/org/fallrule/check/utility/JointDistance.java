package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.GeometryFactory;

/** How far the drain's joints keep from a utility that it crosses. */
@AutoService(Check.class)
public final class JointDistance implements Check {
    static final Parameter<Selection> FROM = Parameter.features("from", "the utilities that are crossed", Role.UTILITY);
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least",
                    Bound.AT_LEAST,
                    Dimension.LENGTH,
                    "least plan distance of a joint of the drain from the utility's outside")
            .always();
    static final Parameter<Quantity> SIZE = Parameter.quantity(
                    "size_if_unknown",
                    Dimension.LENGTH,
                    "outside diameter to take for a utility whose size the plan does not give")
            .within(Range.ABOVE_ZERO)
            .always();

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "joint_distance";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "At every crossing, how far the nearest joint of the drain keeps from the utility where a whole length of"
                        + " pipe is centred on the crossing. The ends of a pipe and its bends are joints; so are both"
                        + " ends of the length that is centred. That the length is centred is for the crew to do, and"
                        + " the finding says so.",
                "distance = least over the joints of (plan distance to the utility's centreline - half its outside"
                        + " diameter)",
                "Recommended Standards for Water Works (2018) 8.8.3 asks a whole length centred at a crossing; 22 CCR"
                        + " 64572 keeps joints 8 ft away, F.A.C. 62-555.314(2) 3 ft.",
                List.of("the joints of the utility", "joints that the crew cuts in"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, AT_LEAST, SIZE);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Selection from = terms.get(FROM);
        for (PipeRun run : analysis.network().runs()) {
            for (Feature utility : from.candidates(analysis.site())) {
                PipeAndUtility pair = PipeAndUtility.of(analysis, run, utility, terms.get(SIZE));
                for (UtilityCrossing crossing : pair.crossings()) {
                    pair.hold(terms.get(AT_LEAST), asked -> observe(pair, crossing, asked))
                            .map(seen -> from.settledByDistance(seen, utility))
                            .ifPresent(observations::add);
                }
            }
        }
        return observations;
    }

    private static Observation observe(PipeAndUtility pair, UtilityCrossing crossing, Limits.Answer.Asked asked) {
        Joints joints = new Joints(pair, crossing);
        Accuracy accuracy = Accuracy.ofDistance(pair.analysis(), pair.run().pipe(), pair.utility());
        Optional<Length> piece = pair.run().pipe().get(Attribute.LAYING_LENGTH);
        Length nearest = piece.map(length -> shorter(joints.centred(length), joints.fixed()))
                .orElse(joints.fixed());
        Observation seen = Observation.measured(
                pair.run().pipe(), asked.against("distance of the nearest joint", nearest, accuracy.metres()));
        if (piece.isEmpty() && seen.outcome() != Outcome.FAILS) {
            seen = seen.with(Outcome.CANNOT_TELL)
                    .lacking(new Missing(
                            "length of one piece of " + pair.run().pipe().spoken(),
                            "give laying_length with its unit"));
        }
        if (piece.isPresent() && seen.outcome() != Outcome.FAILS) {
            seen = seen.noting("with a whole length of "
                    + pair.analysis().site().printed(piece.get().metres())
                    + " centred on the crossing; laid from the upstream end a joint comes "
                    + pair.analysis().site().printed(joints.laidFromUpstream(piece.get()), Unit.FOOT) + " near");
        }
        return PipeAndUtility.withAccuracy(seen, accuracy)
                .against(pair.utility())
                .at(GEOMETRY.createPoint(crossing.place()))
                .noting("crossing at station " + pair.analysis().station(crossing.station()));
    }

    private static Length shorter(Length one, Length other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
