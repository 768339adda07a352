package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.fallrule.hydraulics.basin.Flotation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Mass;
import org.fallrule.measure.Range;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.network.InletInvert;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether an empty basin stays down when the ground around it is full of water. */
@AutoService(Check.class)
public final class BasinFloats implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least",
                    Bound.AT_LEAST,
                    Dimension.RATIO,
                    "least weight over uplift, gross: 1 for just not floating")
            .within(Range.from("1", Dimension.RATIO))
            .always();

    @Override
    public String name() {
        return "flotation";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The weight that holds each empty basin down over the weight of the ground water that it displaces. Weep"
                        + " holes let the water in, so that nothing lifts a basin that has them.",
                "ratio = W / (gw V) (flotation); V = box length x box width x depth below the ground water, down to the"
                        + " sump's bottom under its invert or else the lowest pipe end there; the ground"
                        + " water as the soil layer gives it, else up to the rim, as in saturated ground",
                "FEMA P-259, third edition, appendix C. That basins without weep holes float when the ground saturates is"
                        + " common practice without a source.",
                List.of(
                        "the thickness of the basin's walls: the inside is taken",
                        "friction of the soil on the walls",
                        "weep holes that silt has closed"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.SUMP, Attribute.WEEP_HOLE_AREA, Attribute.WEIGHT);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.INLET));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return EachBasin.against(terms.get(AT_LEAST), analysis, (inlet, asked) -> held(analysis, inlet, asked));
    }

    private static Observation held(SiteAnalysis analysis, Feature inlet, Limits.Answer.Asked asked) {
        if (inlet.get(Attribute.WEEP_HOLE_AREA)
                .filter(area -> area.squareMetres() > 0)
                .isPresent()) {
            return Observation.plain(Outcome.MEETS, inlet)
                    .telling(inlet.spoken() + ": its weep holes let ground water in, so that nothing lifts it");
        }
        return Unsaid.lacking(
                        inlet,
                        Attribute.WEEP_HOLE_AREA,
                        Attribute.BOX_LENGTH,
                        Attribute.BOX_WIDTH,
                        Attribute.RIM,
                        Attribute.SUMP,
                        Attribute.WEIGHT)
                .orElseGet(() -> InletInvert.of(analysis.network(), inlet)
                        .map(invert -> lifted(analysis, inlet, invert, asked))
                        .orElseGet(() -> noInvert(inlet)));
    }

    private static Observation lifted(
            SiteAnalysis analysis, Feature inlet, InletInvert invert, Limits.Answer.Asked asked) {
        Observation seen = lifted(analysis, inlet, invert.value(), asked);
        return invert.spoken().map(seen::noting).orElse(seen);
    }

    private static Observation noInvert(Feature inlet) {
        return Observation.cannotTell(
                inlet,
                new Missing(
                        "the outgoing invert of " + inlet.spoken(),
                        "give invert, or the inverts of the pipes that end there"));
    }

    private static Observation lifted(
            SiteAnalysis analysis, Feature inlet, Elevation invert, Limits.Answer.Asked asked) {
        Length deep = inlet.get(Attribute.RIM)
                .orElseThrow()
                .above(invert)
                .plus(inlet.get(Attribute.SUMP).orElseThrow());
        Optional<Length> water = analysis.water().soil(inlet).flatMap(soil -> soil.get(Attribute.GROUNDWATER_DEPTH));
        double wet = Math.max(0, deep.metres() - water.map(Length::metres).orElse(0.0));
        Volume displaced =
                new Volume(inlet.get(Attribute.BOX_LENGTH).orElseThrow().metres()
                        * inlet.get(Attribute.BOX_WIDTH).orElseThrow().metres()
                        * wet);
        Mass weight = inlet.get(Attribute.WEIGHT).orElseThrow();
        Flotation flotation = new Flotation(weight.kilograms(), displaced);
        if (flotation.ratio().value().isEmpty()) {
            return Observation.plain(Outcome.MEETS, inlet)
                    .telling(inlet.spoken() + " stands above the ground water, so that nothing lifts it");
        }
        Ratio ratio = new Ratio(flotation.ratio().value().get());
        return Observation.measured(inlet, asked.against("weight over uplift", ratio, 0))
                .noting("an uplift of " + analysis.site().printed(new Mass(flotation.upliftKg()), Unit.POUND)
                        + (water.isPresent() ? "" : " in ground saturated up to the rim"));
    }
}
