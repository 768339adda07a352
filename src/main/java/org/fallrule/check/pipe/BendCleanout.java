package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Angle;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Range;
import org.fallrule.network.FlowOrder;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;

/** How much the drain turns between the places where it can be opened. */
@AutoService(Check.class)
public final class BendCleanout implements Check {
    static final Parameter<Limits> SINGLE = Parameter.limit(
                    "bend_at_most",
                    Bound.AT_MOST,
                    Dimension.ANGLE,
                    "greatest bend, seen in plan, without an opening at it")
            .within(Range.between("0 deg", "180 deg", Dimension.ANGLE));
    static final Parameter<Limits> TOGETHER = Parameter.limit(
            "bends_together_at_most",
            Bound.AT_MOST,
            Dimension.ANGLE,
            "greatest sum of bends, seen in plan, between two openings");

    @Override
    public String name() {
        return "bend_cleanout";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The bends of the drain in plan that have no opening at them: cleanout, inlet that the rule names, or the"
                        + " open end of an outfall. The sharpest of each pipe, and their sum since the last opening"
                        + " upstream, the turn from one pipe into the next among them.",
                "bend = change of direction of the centreline; sum over all bends between two openings",
                "A cleanout at each change of direction over 45 degrees as in IPC 708.1, and for each 135 degrees of"
                        + " bends together as in UPC 719.",
                List.of("bends in the long section", "the radius of a fitting"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(SINGLE, TOGETHER, Openings.AT, Openings.WITHIN);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Openings openings = new Openings(
                analysis, terms.get(Openings.AT), terms.get(Openings.WITHIN).si());
        Map<PipeRun, Turning> turnings = new HashMap<>();
        List<Observation> observations = new ArrayList<>();
        for (PipeRun run : FlowOrder.of(analysis.network()).runs()) {
            Turning turning = Turning.of(run, analysis.network().into(run.up()), turnings, openings);
            turnings.put(run, turning);
            terms.find(SINGLE)
                    .ifPresent(limits -> observations.addAll(
                            held(limits, run, "sharpest bend without an opening", turning.sharpest(), openings)));
            terms.find(TOGETHER)
                    .ifPresent(limits -> observations.addAll(
                            held(limits, run, "bends since the last opening", turning.most(), openings)));
        }
        return observations;
    }

    private static List<Observation> held(Limits limits, PipeRun run, String of, double radians, Openings openings) {
        return limits
                .hold(run.pipe(), run.pipe().attributes(), asked -> {
                    Observation seen = Observation.measured(run.pipe(), asked.against(of, new Angle(radians), 0))
                            .at(run.axis());
                    return seen.outcome() == Outcome.MEETS ? seen : openings.perhapsMore(seen);
                })
                .stream()
                .toList();
    }
}
