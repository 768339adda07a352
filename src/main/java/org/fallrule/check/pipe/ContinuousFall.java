package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.network.Belly;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.GeometryFactory;

/** Whether the drain falls all the way: no belly between a pipe's ends, no step up from one pipe to the next. */
@AutoService(Check.class)
public final class ContinuousFall implements Check {
    static final Parameter<Limits> BELLY = Parameter.limit(
            "belly_at_most",
            Bound.AT_MOST,
            Dimension.LENGTH,
            "greatest depth of standing water between a pipe's ends; 0 in for every piece to fall or lie level");
    static final Parameter<Limits> STEP_UP = Parameter.limit(
            "step_up_at_most",
            Bound.AT_MOST,
            Dimension.LENGTH,
            "how far the invert may step up against the flow where a pipe meets the next");
    static final Parameter<Quantity> AGREEMENT = Parameter.quantity(
                    "ends_agree_within",
                    Dimension.LENGTH,
                    "how far Z at a pipe's ends may stand from the inverts given there for Z between them to be taken as"
                            + " inverts")
            .always();

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "continuous_fall";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The greatest rise of the invert against the flow: between the ends of each pipe that was surveyed at"
                        + " points between them, where it is the depth of the water that stands in the belly, and where"
                        + " each pipe meets the next. Negative where it falls everywhere. A pipe of which only the ends"
                        + " are known has no belly to be seen.",
                "belly: level of the highest point still to come - invert, the greatest along the pipe; where there is"
                        + " none, minus the least fall from one point to the next. Junction: invert out - invert in",
                "Geometry; that a drain must not hold water is common practice with no published limit of its own.",
                List.of(
                        "what the pipe does between the points that were surveyed",
                        "joints that settle later",
                        "a pipe that runs uphill from end to end without points between: see slope"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(BELLY, STEP_UP, AGREEMENT);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Length agreement = new Length(terms.get(AGREEMENT).si());
        for (PipeRun run : analysis.runsAsked()) {
            terms.find(BELLY).ifPresent(limits -> observations.addAll(bellies(analysis, run, limits, agreement)));
            terms.find(STEP_UP).ifPresent(limits -> observations.addAll(steps(analysis, run, limits)));
        }
        return observations;
    }

    private static List<Observation> bellies(SiteAnalysis analysis, PipeRun run, Limits limits, Length agreement) {
        SurveyedPoints points = new SurveyedPoints(run);
        if (points.areNone()) {
            return List.of();
        }
        if (run.invertUp().isEmpty() || run.invertDown().isEmpty()) {
            return List.of(InvertsMissing.of(run));
        }
        if (!points.endsAgree(agreement)) {
            return List.of(Observation.cannotTell(
                    run.pipe(),
                    new Missing(
                            "inverts of " + run.pipe().spoken()
                                    + " between its ends: Z at its ends is not the invert given there",
                            "give Z of the pipe's points as inverts in the plan's datum, or leave it out")));
        }
        double accuracy = Accuracy.ofHeight(analysis, run.pipe(), run.pipe()).metres();
        List<Belly> bellies = Belly.between(points.all());
        if (bellies.isEmpty()) {
            return limits
                    .hold(run.pipe(), run.pipe().attributes(), asked -> falling(run, points, asked, accuracy))
                    .stream()
                    .toList();
        }
        return bellies.stream()
                .flatMap(belly -> limits
                        .hold(
                                run.pipe(),
                                run.pipe().attributes(),
                                asked -> held(analysis, run, points, belly, asked, accuracy))
                        .stream())
                .toList();
    }

    private static Observation held(
            SiteAnalysis analysis,
            PipeRun run,
            SurveyedPoints points,
            Belly belly,
            Limits.Answer.Asked asked,
            double accuracy) {
        return Observation.measured(run.pipe(), asked.against("standing water", belly.depth(), accuracy))
                .at(GEOMETRY.createPoint(points.placeAt(belly.lowest())))
                .noting("deepest at station " + analysis.station(belly.lowest()))
                .noting("from station " + analysis.stations(List.of(belly.reach())));
    }

    private static Observation falling(PipeRun run, SurveyedPoints points, Limits.Answer.Asked asked, double accuracy) {
        return Observation.measured(
                        run.pipe(),
                        asked.against(
                                "rise against the flow", points.leastFall().times(-1), accuracy))
                .at(run.axis());
    }

    private static List<Observation> steps(SiteAnalysis analysis, PipeRun in, Limits limits) {
        return analysis.network().runs().stream()
                .filter(out -> out.up().equals(in.down()) && !out.equals(in))
                .flatMap(out ->
                        limits
                                .hold(in.pipe(), in.pipe().attributes(), asked -> step(analysis, in, out, asked))
                                .stream())
                .toList();
    }

    private static Observation step(SiteAnalysis analysis, PipeRun in, PipeRun out, Limits.Answer.Asked asked) {
        Observation seen = in.invertDown()
                .flatMap(from -> out.invertUp().map(to -> to.above(from)))
                .map(rise -> {
                    double accuracy =
                            Accuracy.ofHeight(analysis, in.pipe(), out.pipe()).metres();
                    return Observation.measured(in.pipe(), asked.against("step up to the next pipe", rise, accuracy));
                })
                .orElseGet(() -> stepUnknown(in, out));
        return seen.against(out.pipe()).at(GEOMETRY.createPoint(in.down().place()));
    }

    private static Observation stepUnknown(PipeRun in, PipeRun out) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, in.pipe());
        if (in.invertDown().isEmpty()) {
            seen = seen.lacking(InvertsMissing.downstream(in));
        }
        return out.invertUp().isEmpty() ? seen.lacking(InvertsMissing.upstream(out)) : seen;
    }
}
