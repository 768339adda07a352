package org.fallrule.check.place;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether features lie inside of areas. */
@AutoService(Check.class)
public final class Within implements Check {
    static final Parameter<Selection> SUBJECT = Parameter.features("subject", "what must lie inside", Role.values());
    static final Parameter<Selection> AREA = Parameter.features(
            "area",
            "the areas to lie inside of",
            Role.LOT,
            Role.BUILDING,
            Role.WALK,
            Role.DRIVE,
            Role.STREET,
            Role.EASEMENT,
            Role.FLOOD_ZONE,
            Role.DRAINAGE_AREA,
            Role.SOIL,
            Role.SEPTIC,
            Role.WATER_BODY);
    static final Parameter<Limits> REACH = Parameter.limit(
                    "reach_at_most", Bound.AT_MOST, Dimension.LENGTH, "how far a feature may reach beyond the area")
            .always();

    @Override
    public String name() {
        return "within";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Whether each feature lies wholly inside of one of the areas; its edge counts as inside.",
                "The farthest that any part of the feature lies from the area; zero inside of it.",
                "Plan geometry; no published source.",
                List.of(
                        "areas that the layer does not hold",
                        "the width of a pipe: its centreline counts",
                        "that lot lines from GIS are not a boundary survey"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(SUBJECT, AREA, REACH);
    }

    @Override
    public List<Need> needs(Terms terms) {
        Role area = terms.get(AREA).role();
        List<Need> needs =
                new ArrayList<>(List.of(new Need.OfLayer(terms.get(SUBJECT).role()), new Need.OfLayer(area)));
        if (area == Role.LOT) {
            needs.add(new Need.OfOwnLot());
        }
        return needs;
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection subjects = terms.get(SUBJECT);
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : subjects.candidates(analysis)) {
            if (subjects.chooses(subject) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(subject, subjects.lacking(subject)));
            } else {
                best(analysis, terms, subject).ifPresent(observations::add);
            }
        }
        return observations;
    }

    private static Optional<Observation> best(SiteAnalysis analysis, Terms terms, Feature subject) {
        List<Feature> areas = terms.get(AREA).candidates(analysis.site());
        if (areas.isEmpty()) {
            return terms.get(REACH).hold(subject, subject.attributes(), asked -> noArea(terms, subject));
        }
        return areas.stream()
                .map(area -> terms.get(REACH)
                        .hold(subject, subject.attributes(), asked -> observe(analysis, terms, subject, area, asked)))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Observation::outcome).reversed().thenComparingDouble(Within::reach));
    }

    private static double reach(Observation seen) {
        return seen.measured().map(measured -> measured.value().si()).orElse(Double.MAX_VALUE);
    }

    private static Observation noArea(Terms terms, Feature subject) {
        return Observation.plain(Outcome.FAILS, subject)
                .noting("the plan has no " + terms.get(AREA).spoken());
    }

    private static Observation observe(
            SiteAnalysis analysis, Terms terms, Feature subject, Feature area, Limits.Answer.Asked asked) {
        Length beyond = new Length(ReachBeyond.of(subject.geometry(), area.geometry()));
        double toEdge = area.geometry().getBoundary().distance(subject.geometry());
        double accuracy = Accuracy.ofDistance(analysis, subject, area).metres();
        double reaching = beyond.metres() > 0 || toEdge < accuracy ? accuracy : 0;
        Observation seen = Observation.measured(subject, asked.against("reach beyond the area", beyond, reaching))
                .against(area);
        boolean undecided = terms.get(AREA).chooses(area) == Truth.UNKNOWN && seen.outcome() != Outcome.FAILS;
        return undecided
                ? seen.with(Outcome.CANNOT_TELL).lacking(terms.get(AREA).lacking(area))
                : seen;
    }
}
