package org.fallrule.check.statement;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.AttributeList;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;

/** Whether the plan shows something that it must show. */
@AutoService(Check.class)
public final class Stated implements Check {
    static final Parameter<Selection> OF =
            Parameter.features("of", "what must be shown, or what must be told more of", Role.values());
    static final Parameter<AttributeList> SHOWS = Parameter.attributes(
            "shows",
            OF,
            "what must be told of each feature; without it the layer itself must be shown, or stated to be absent");

    @Override
    public String name() {
        return "stated";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Whether the plan shows a layer or says that there is nothing of the kind, or whether it tells an attribute"
                        + " of each feature of a layer.",
                "A layer is shown when it holds a feature or is listed under absent. An attribute is told when it has a"
                        + " value other than unknown. What is not shown fails the rule: that can be told.",
                "Plan checklists of counties and cities, such as site-plan minimums of DuPage County (Illinois), a"
                        + " topographic site plan of Summit County (Ohio) and the drainage submittal of Clark County"
                        + " (Indiana).",
                List.of(
                        "whether what is shown is right or complete",
                        "text, notes and details on a drawing that are not in the data"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, SHOWS);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return terms.find(SHOWS).isEmpty()
                ? List.of()
                : List.of(new Need.OfLayer(terms.get(OF).role()));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection of = terms.get(OF);
        Optional<AttributeList> shows = terms.find(SHOWS);
        if (shows.isEmpty()) {
            return List.of(ofLayer(of.role(), analysis.site().layer(of.role())));
        }
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : of.candidates(analysis.site())) {
            observations.add(
                    of.chooses(subject) == Truth.UNKNOWN
                            ? Observation.cannotTell(subject, of.lacking(subject))
                            : ofFeature(subject, shows.get()));
        }
        return observations;
    }

    private static Observation ofLayer(Role role, Layer layer) {
        if (layer instanceof Layer.StatedAbsent absent) {
            return Observation.ofPlan(Outcome.MEETS)
                    .noting("the plan states that there is no " + role.spoken() + " ("
                            + absent.by().fileAndLine() + ")");
        }
        if (layer instanceof Layer.Raster || !layer.features().isEmpty()) {
            return Observation.ofPlan(Outcome.MEETS).noting("the plan shows the " + role.spoken() + " layer");
        }
        boolean empty = layer instanceof Layer.Supplied;
        return Observation.ofPlan(Outcome.FAILS)
                .lacking(new Missing(
                        "the " + role.spoken() + " layer" + (empty ? ", which is empty" : ""),
                        "supply it, or list " + role.word() + " under absent in site.yaml if there is none"));
    }

    private static Observation ofFeature(Feature subject, AttributeList shows) {
        String untold = shows.all().stream()
                .filter(attribute -> !isTold(subject, attribute))
                .map(Attribute::name)
                .collect(Collectors.joining(", "));
        return untold.isEmpty()
                ? Observation.plain(Outcome.MEETS, subject)
                : Observation.plain(Outcome.FAILS, subject)
                        .lacking(new Missing(
                                untold + " of " + subject.spoken(),
                                "give " + untold + " in " + subject.origin().file()));
    }

    private static boolean isTold(Feature subject, Attribute<?> attribute) {
        return subject.get(attribute).filter(value -> !value.equals("unknown")).isPresent();
    }
}
