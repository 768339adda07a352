package org.fallrule.check.statement;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Condition;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.check.WorthTelling;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Observation;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether features satisfy a condition on their attributes. */
@AutoService(Check.class)
public final class AttributeHolds implements Check {
    static final Parameter<Selection> OF =
            Parameter.features("of", "the features that must satisfy the condition", Role.values());
    static final Parameter<Condition> MUST = Parameter.condition(
            "must",
            OF,
            Map.of(
                    Role.PIPE, Attribute.ABOVE,
                    Role.INLET, Attribute.STANDS_IN,
                    Role.CLEANOUT, Attribute.STANDS_IN,
                    Role.OUTFALL, Attribute.STANDS_IN),
            "the condition that each of them must satisfy");

    @Override
    public String name() {
        return "attribute";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Whether each feature satisfies a condition on what the plan says of it. A condition that names `above` is"
                        + " asked of each stretch of a pipe under a surface of its own; one that names `stands_in`, of the"
                        + " surface at the place of an inlet, cleanout or outfall.",
                "OGC ECQL in three-valued logic: what the plan does not say is neither true nor false, and the answer is"
                        + " then that it cannot be told, unless the rest decides.",
                "OGC Catalogue Services 2.0.2 (07-006r1), 6.2.2, for the language; S. C. Kleene, On notation for ordinal"
                        + " numbers, Journal of Symbolic Logic 3 (1938) 153, for the logic.",
                List.of(
                        "whether what the plan says is so on the ground",
                        "the accuracy of a number in the plan: it counts as given"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, MUST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(terms.get(OF).role()));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection of = terms.get(OF);
        Condition must = terms.get(MUST);
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : of.candidates(analysis.site())) {
            if (of.chooses(subject) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(subject, of.lacking(subject)));
            } else {
                observations.addAll(WorthTelling.of(observe(analysis, must, subject)));
            }
        }
        return observations;
    }

    private static List<Observation> observe(SiteAnalysis analysis, Condition must, Feature subject) {
        return SurfacePart.of(analysis, must, subject).stream()
                .map(part -> part.held(must, analysis.surfaces()))
                .toList();
    }
}
