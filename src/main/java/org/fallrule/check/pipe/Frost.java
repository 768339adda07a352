package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
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
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.InletInvert;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** How deep under the ground the drain holds water that could freeze. */
@AutoService(Check.class)
public final class Frost implements Check {
    static final Parameter<Selection> OF =
            Parameter.features("of", "the inlets, or the pipes, that may hold water", Role.INLET, Role.PIPE);
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least",
                    Bound.AT_LEAST,
                    Dimension.LENGTH,
                    "the frost depth, or none where the ground stays free of it")
            .always();

    @Override
    public String name() {
        return "frost";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "How deep the bottom of each inlet's sump, and the cover of each pipe that holds water, lies below the"
                        + " ground. A pipe drains freely unless the plan says that it holds water (holds_water = true),"
                        + " and is then not held to the frost depth; an inlet holds none when its sump is 0.",
                "of an inlet: rim, else the ground there, - (its invert, else the lowest pipe end there, - sump); of a pipe: finished ground -"
                        + " outside top of pipe",
                "Common practice with no published source: free-draining storm pipe is not held to the frost depth, traps"
                        + " and sumps are kept below it or drained.",
                List.of(
                        "water that stands in a belly: see continuous_fall",
                        "whether a sump has weep holes that work",
                        "snow, shade and traffic, which move the frost"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, AT_LEAST);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.SUMP);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(terms.get(OF).role()));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection of = terms.get(OF);
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : of.candidates(analysis.site())) {
            observe(analysis, terms.get(AT_LEAST), subject).stream()
                    .map(seen -> of.settled(seen, subject))
                    .forEach(observations::add);
        }
        return observations;
    }

    private static List<Observation> observe(SiteAnalysis analysis, Limits limits, Feature subject) {
        if (subject.role() == Role.PIPE) {
            return analysis.network()
                    .runOf(subject)
                    .filter(run -> subject.get(Attribute.HOLDS_WATER).orElse(false))
                    .map(run -> ofPipe(analysis, limits, run))
                    .orElse(List.of());
        }
        return limits.hold(subject, subject.attributes(), asked -> ofInlet(analysis, subject, asked))
                .filter(seen -> !drains(subject))
                .map(List::of)
                .orElse(List.of());
    }

    private static List<Observation> ofPipe(SiteAnalysis analysis, Limits limits, PipeRun run) {
        Optional<PipeProfile> profile = PipeProfile.of(run);
        if (profile.isEmpty()) {
            return List.of(ProfileMissing.of(run));
        }
        return new GroundOver(analysis, run, profile.get(), "cover of standing water", profile.get()::topAt)
                .against(limits);
    }

    private static boolean drains(Feature inlet) {
        return inlet.get(Attribute.SUMP)
                .filter(sump -> sump.metres() <= Dimension.LENGTH.tolerance())
                .isPresent();
    }

    private static Observation ofInlet(SiteAnalysis analysis, Feature inlet, Limits.Answer.Asked asked) {
        Optional<Elevation> ground = inlet.get(Attribute.RIM)
                .or(() -> analysis.ground()
                        .flatMap(surface -> surface.elevationAt(inlet.geometry().getCoordinate())));
        Optional<InletInvert> invert = InletInvert.of(analysis.network(), inlet);
        Optional<Length> sump = inlet.get(Attribute.SUMP);
        if (ground.isPresent() && invert.isPresent() && sump.isPresent()) {
            Length depth = ground.get().above(invert.get().value().minus(sump.get()));
            double accuracy = Accuracy.ofHeightAtGround(analysis, inlet).metres();
            Observation seen =
                    Observation.measured(inlet, asked.against("depth of the sump's bottom", depth, accuracy));
            return invert.get().spoken().map(seen::noting).orElse(seen);
        }
        return missing(inlet, ground, invert, sump);
    }

    private static Observation missing(
            Feature inlet, Optional<Elevation> ground, Optional<InletInvert> invert, Optional<Length> sump) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, inlet);
        if (sump.isEmpty()) {
            seen = seen.lacking(new Missing(
                    "sump of " + inlet.spoken(),
                    "give sump with its unit: how deep water stands below the outgoing invert, 0 if it drains"));
        }
        if (invert.isEmpty()) {
            seen = seen.lacking(new Missing(
                    "the outgoing invert of " + inlet.spoken(),
                    "give invert, or the inverts of the pipes that end there"));
        }
        if (ground.isEmpty()) {
            seen = seen.lacking(
                    new Missing("the ground at " + inlet.spoken(), "give rim, or take spot elevations around it"));
        }
        return seen;
    }
}
