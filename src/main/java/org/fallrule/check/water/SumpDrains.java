package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.BasinSump;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.hydraulics.basin.DrainDown;
import org.fallrule.hydraulics.basin.HoseTest;
import org.fallrule.hydraulics.table.SourcedTable;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** How long water stands in the sump of each basin. */
@AutoService(Check.class)
public final class SumpDrains implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
                    "at_most", Bound.AT_MOST, Dimension.TIME, "longest time in which the sump must be empty")
            .always();
    static final Parameter<String> RATES = Parameter.oneOf(
                    "rates",
                    SourcedTable.infiltration().entries().stream()
                            .map(SourcedTable.Entry::source)
                            .distinct()
                            .toList(),
                    "the source of the rate at which soil of a texture takes water, where none is tested")
            .always();

    @Override
    public String name() {
        return "drain_down";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The time in which the sump of each basin drains through its weep holes into the soil below it, from the"
                        + " invert of the outlet down. A sump of no depth holds no water.",
                "t by drain_down: the slower of holes (Cd 0.6) and soil counts at every depth; the soil takes the water"
                        + " over the area of the basin's floor, at the rate tested there (infiltration of the soil layer)"
                        + " or that of its texture",
                "Falling head and infiltration as drain_down says. That standing water breeds mosquitoes after 72 h, and"
                        + " that a sump in sand is empty about ten minutes after it was filled, is common practice"
                        + " without a source.",
                List.of(
                        "stone around the basin, which takes water at once",
                        "holes that silt has closed",
                        "ground water that stands above the floor: such a sump does not drain",
                        "a perforated pipe that drains the sump"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, RATES);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.SUMP, Attribute.WEEP_HOLE_AREA);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.INLET));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return EachBasin.against(
                terms.get(AT_MOST), analysis, (inlet, asked) -> held(analysis, terms.get(RATES), inlet, asked));
    }

    private static Observation held(SiteAnalysis analysis, String rates, Feature inlet, Limits.Answer.Asked asked) {
        Optional<Length> sump = inlet.get(Attribute.SUMP);
        if (sump.filter(depth -> depth.metres() == 0).isPresent()) {
            return Observation.measured(inlet, asked.against("time to drain", new Time(0), 0))
                    .noting("it has no sump");
        }
        Optional<Observation> lacking = Unsaid.lacking(
                inlet, Attribute.SUMP, Attribute.BOX_LENGTH, Attribute.BOX_WIDTH, Attribute.WEEP_HOLE_AREA);
        if (lacking.isPresent()) {
            return lacking.get();
        }
        Answer<HoseTest.Sump> known = BasinSump.of(analysis, inlet, rates);
        return known.value()
                .map(found -> drained(inlet, found.drainDown(), asked))
                .orElseGet(() -> Unsaid.of(inlet, "how fast the soil at " + inlet.spoken() + " takes water", known));
    }

    private static Observation drained(Feature inlet, DrainDown drains, Limits.Answer.Asked asked) {
        if (drains instanceof DrainDown.Empties empties) {
            return Observation.measured(inlet, asked.against("time to drain", empties.time(), 0));
        }
        return Observation.plain(Outcome.FAILS, inlet)
                .telling("the sump of " + inlet.spoken() + " never drains: " + ((DrainDown.HoldsWater) drains).why());
    }
}
