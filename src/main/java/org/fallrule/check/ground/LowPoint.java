package org.fallrule.check.ground;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
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
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether a basin stands where the water gathers that it is to drain. */
@AutoService(Check.class)
public final class LowPoint implements Check {
    static final Parameter<Selection> OF =
            Parameter.features("of", "the inlets that take water from the ground", Role.INLET);
    static final Parameter<Limits> OFF = Parameter.limit(
                    "off_at_most",
                    Bound.AT_MOST,
                    Dimension.LENGTH,
                    "greatest plan distance from the inlet to the bottom of the hollow that it is to drain")
            .always();
    static final Parameter<Limits> RIM = Parameter.limit(
            "rim_at_most",
            Bound.AT_MOST,
            Dimension.LENGTH,
            "how far the rim may stand above the bottom of the hollow; where there is no hollow, above the lowest ground that"
                    + " is looked at, the ground counting for a rim that is not given; not asked when it is not given");
    static final Parameter<Quantity> DEEPER = Parameter.quantity(
                    "pond_deeper_than",
                    Dimension.LENGTH,
                    "water that stands less deep than this does not make a hollow")
            .always();
    static final Parameter<Quantity> AS_LOW = Parameter.quantity(
                    "as_low_as",
                    Dimension.LENGTH,
                    "ground that lies no more than this above the lowest place of the hollow is its bottom")
            .always();
    static final Parameter<Quantity> LOOK = Parameter.quantity(
                    "look_within", Dimension.LENGTH, "how far from the inlet a hollow is looked for")
            .within(Range.ABOVE_ZERO)
            .always();

    @Override
    public String name() {
        return "low_point";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "How far each inlet stands from the bottom of the hollow that it is to drain, and its rim above that"
                        + " bottom. The finished ground is filled until water runs off from everywhere; the hollow is the"
                        + " water so filled in which the inlet stands, or else the nearest. Where there is none the rim is"
                        + " held against the lowest ground nearby, to which the water runs past the inlet.",
                "off = plan distance from the inlet to the ground within as_low_as of the hollow's lowest place; rim height ="
                        + " rim - lowest place",
                "Filling after Barnes, Lehman and Mulla, Computers & Geosciences 62 (2014); that a basin stands at a low point"
                        + " is common practice.",
                List.of(
                        "hollows between spot elevations, and those narrower than the grid of 0.25 m",
                        "half a cell of that grid in the outline of the bottom",
                        "low places that are to be graded but are not in the ground that is given",
                        "curbs, walls and edges of paving that hold water back",
                        "water that is caught on the slope, as by a trench drain across it"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, OFF, RIM, DEEPER, AS_LOW, LOOK);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.INLET), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection of = terms.get(OF);
        List<Feature> inlets = of.candidates(analysis.site());
        List<Hollow> hollows = inlets.isEmpty()
                ? List.of()
                : Hollow.deeperThan(terms.get(DEEPER).si(), analysis);
        List<Observation> observations = new ArrayList<>();
        for (Feature inlet : inlets) {
            if (of.chooses(inlet) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(inlet, of.lacking(inlet)));
            } else {
                observations.addAll(new InletAtLowPoint(analysis, terms, inlet).among(hollows));
            }
        }
        return observations;
    }
}
