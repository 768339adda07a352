package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.InletCatchments;
import org.fallrule.analysis.InletRunoff;
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
import org.fallrule.hydraulics.inlet.GrateHead;
import org.fallrule.hydraulics.inlet.RectangularGrate;
import org.fallrule.measure.Area;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** How deep the water stands over each grate before it takes in what the design storm brings. */
@AutoService(Check.class)
public final class InletCapture implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
                    "at_most", Bound.AT_MOST, Dimension.LENGTH, "greatest depth of water above the grate")
            .always();
    static final Parameter<Quantity> CLOGGED = Parameter.quantity(
                    "clogged",
                    Dimension.RATIO,
                    "how much of the grate's width to count as clogged: 0 for none, 0.5 for half")
            .within(Range.SHARE)
            .always();

    @Override
    public String name() {
        return "inlet_capture";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The depth of water above the grate of each basin and trench drain at which it takes in the design flow of"
                        + " its own area, a part of it clogged. Downspouts have no grate.",
                "depth = the greater of (Q / (Cw P))^(2/3) and (Q / (0.67 Ag))^2 / 2g (sag_grate), P and Ag of what the"
                        + " leaves leave of the width",
                "HEC-22, third edition, equations 4-26 and 4-27.",
                List.of(
                        "grates on a slope, past which water runs on: each is taken as lying at a low point",
                        "a curb or wall along the grate, over which no water comes",
                        "water that other inlets leave"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, CLOGGED);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.GRATE_OPEN_AREA);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.INLET), new Need.OfStorm());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return EachBasin.against(
                terms.get(AT_MOST),
                analysis,
                (inlet, asked) -> held(analysis, inlet, terms.get(CLOGGED).si(), asked));
    }

    private static Observation held(SiteAnalysis analysis, Feature inlet, double clogged, Limits.Answer.Asked asked) {
        Optional<Observation> lacking = Unsaid.lacking(
                inlet, Attribute.KIND, Attribute.GRATE_LENGTH, Attribute.GRATE_WIDTH, Attribute.GRATE_OPEN_AREA);
        if (lacking.isPresent()) {
            return lacking.get();
        }
        Answer<Flow> inflow = analysis.water().inflow(inlet);
        if (inflow.value().isEmpty()) {
            return Unsaid.of(inlet, "the design flow to " + inlet.spoken(), inflow);
        }
        Optional<RectangularGrate> grate = grate(inlet);
        return grate.map(whole -> under(
                                analysis,
                                inlet,
                                whole.clogged(clogged).head(inflow.value().get()),
                                asked)
                        .noting("design flow "
                                + analysis.site().printed(inflow.value().get(), Unit.CUBIC_FOOT_PER_SECOND)))
                .orElseGet(() -> Observation.cannotTell(
                        inlet,
                        new Missing(
                                "the clear area of the grate of " + inlet.spoken()
                                        + ", which is given as more than the whole grate",
                                "mend grate_open_area, grate_length or grate_width")));
    }

    private static Optional<RectangularGrate> grate(Feature inlet) {
        Length length = inlet.get(Attribute.GRATE_LENGTH).orElseThrow();
        Length width = inlet.get(Attribute.GRATE_WIDTH).orElseThrow();
        Area open = inlet.get(Attribute.GRATE_OPEN_AREA).orElseThrow();
        double whole = length.metres() * width.metres();
        return open.squareMetres() <= whole + Dimension.AREA.tolerance()
                ? Optional.of(new RectangularGrate(length, width, Math.min(1, open.squareMetres() / whole), false))
                : Optional.empty();
    }

    /** What to say where the area that the plan draws for an inlet is smaller than the one that drains to it over the ground. */
    private static Optional<String> lessThanTheGround(SiteAnalysis analysis, Feature inlet, InletRunoff counted) {
        Area drawn = counted.runoff().area();
        return Optional.ofNullable(analysis.water().catchments().get(inlet))
                .flatMap(InletCatchments.Catchment::overGround)
                .filter(over -> over.squareMetres() > drawn.squareMetres() + Dimension.AREA.tolerance())
                .map(over -> "counted are the " + analysis.site().printed(drawn, Unit.SQUARE_FOOT)
                        + " that the plan draws for it; over the ground given "
                        + analysis.site().printed(over, Unit.SQUARE_FOOT) + " drain to it");
    }

    private static Observation under(SiteAnalysis analysis, Feature inlet, GrateHead head, Limits.Answer.Asked asked) {
        if (head instanceof GrateHead.Standing standing) {
            Observation seen = Observation.measured(inlet, asked.against("water above the grate", standing.depth(), 0));
            Optional<InletRunoff> runoff = analysis.water().runoff(inlet).value();
            boolean isCut = runoff.filter(InletRunoff::isCut).isPresent();
            Observation told = runoff.flatMap(counted -> lessThanTheGround(analysis, inlet, counted))
                    .map(seen::noting)
                    .orElse(seen);
            return Unsaid.underMoreWater(told, isCut ? Set.of(inlet) : Set.of());
        }
        return Observation.plain(Outcome.FAILS, inlet).telling(inlet.spoken() + ": a clogged grate takes nothing in");
    }
}
