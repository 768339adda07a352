package org.fallrule.check.place;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
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
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** The plan distance from each of some features to the nearest of others. */
@AutoService(Check.class)
public final class Clearance implements Check {
    static final Parameter<Selection> FROM = Parameter.features("from", "what is measured from", Role.values());
    static final Parameter<Selection> TO = Parameter.features("to", "what is measured to", Role.values());
    static final Parameter<Limits> AT_LEAST =
            Parameter.limit("at_least", Bound.AT_LEAST, Dimension.LENGTH, "least distance to every one of the others");
    static final Parameter<Limits> AT_MOST = Parameter.limit(
            "at_most", Bound.AT_MOST, Dimension.LENGTH, "greatest distance to the nearest of the others");

    @Override
    public String name() {
        return "clearance";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The shortest plan distance from each feature to the nearest of the others, edge to edge, at least or at most"
                        + " as asked.",
                "Straight line in plan. A pipe's edge is its centreline plus or minus half its outside diameter. A lot is"
                        + " measured to its line, and a place outside of the site's own lot counts as negative.",
                "Edge-to-edge measure as in F.A.C. 62-555.314 and 22 CCR 64572 (outside of pipe to outside of pipe);"
                        + " for walks and buildings common practice.",
                List.of(
                        "what lies between the two, such as a wall or a drop",
                        "features that the layer does not hold",
                        "that lot lines from GIS are not a boundary survey"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, TO, AT_LEAST, AT_MOST);
    }

    @Override
    public boolean looksAtHeights() {
        return false;
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(
                new Need.OfLayer(terms.get(FROM).role()),
                new Need.OfLayer(terms.get(TO).role()));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection from = terms.get(FROM);
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : from.candidates(analysis)) {
            if (from.chooses(subject) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(subject, from.lacking(subject)));
            } else {
                worst(analysis, terms, subject).ifPresent(observations::add);
                best(analysis, terms, subject).ifPresent(observations::add);
            }
        }
        return observations;
    }

    /** The other that stands too near, if one does. */
    private static Optional<Observation> worst(SiteAnalysis analysis, Terms terms, Feature subject) {
        return terms.find(AT_LEAST)
                .flatMap(limits -> others(analysis, terms, subject).stream()
                        .map(other -> limits.hold(
                                        subject,
                                        subject.attributes(),
                                        asked -> new EdgeToEdge(analysis, subject, other).held(asked))
                                .map(seen -> ifOfTheKind(seen, terms.get(TO), subject, other)))
                        .flatMap(Optional::stream)
                        .min(Comparator.comparing(Observation::outcome).thenComparingDouble(Clearance::distance)));
    }

    private static Observation ifOfTheKind(Observation seen, Selection to, Feature subject, Feature other) {
        return to.chooses(other) == Truth.TRUE
                ? perhapsOutside(seen, List.of(subject, other))
                : to.settledByDistance(seen, other);
    }

    /** The other that stands near enough, if one does. */
    private static Optional<Observation> best(SiteAnalysis analysis, Terms terms, Feature subject) {
        Optional<Limits> limits = terms.find(AT_MOST);
        List<Feature> others = others(analysis, terms, subject);
        if (limits.isPresent() && others.isEmpty()) {
            return limits.get().hold(subject, subject.attributes(), asked -> none(terms, subject));
        }
        return limits.flatMap(asks -> others.stream()
                .map(other -> asks.hold(
                                subject,
                                subject.attributes(),
                                asked -> new EdgeToEdge(analysis, subject, other).held(asked))
                        .map(seen -> nearEnough(seen, terms.get(TO), other)))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(Observation::outcome).reversed().thenComparingDouble(Clearance::distance)));
    }

    private static Observation none(Terms terms, Feature subject) {
        return Observation.plain(Outcome.FAILS, subject)
                .noting("the plan has no " + terms.get(TO).spoken());
    }

    /** What cannot be said to be of the kind asked for matters only where it stands near enough. */
    private static Observation nearEnough(Observation seen, Selection to, Feature other) {
        return to.chooses(other) == Truth.TRUE || seen.outcome() == Outcome.FAILS
                ? seen
                : seen.with(Outcome.CANNOT_TELL).lacking(to.lacking(other));
    }

    private static List<Feature> others(SiteAnalysis analysis, Terms terms, Feature subject) {
        return terms.get(TO).candidates(analysis.site()).stream()
                .filter(other -> !other.equals(subject))
                .toList();
    }

    /** Outside of a lot that may be a neighbour's nothing has failed yet. */
    private static Observation perhapsOutside(Observation seen, List<Feature> both) {
        Optional<Feature> unsaid = both.stream()
                .filter(each ->
                        each.role() == Role.LOT && each.get(Attribute.OWN).isEmpty())
                .findFirst();
        return unsaid.isEmpty() || distance(seen) >= 0
                ? seen
                : seen.with(Outcome.CANNOT_TELL)
                        .lacking(new Missing("own of " + unsaid.get().spoken(), "mark one lot with own = true"));
    }

    private static double distance(Observation seen) {
        return seen.measured().map(measured -> measured.value().si()).orElse(Double.NEGATIVE_INFINITY);
    }
}
