package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Range;
import org.fallrule.network.FlowOrder;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;

/** How far apart the places are at which the drain can be opened to clear it. */
@AutoService(Check.class)
public final class CleanoutSpacing implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
                    "at_most", Bound.AT_MOST, Dimension.LENGTH, "greatest length of pipe between two openings")
            .within(Range.ABOVE_ZERO)
            .always();

    @Override
    public String name() {
        return "cleanout_spacing";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The length of pipe, in the direction of flow, between the places where it can be opened: cleanouts, the"
                        + " inlets that the rule names, the open end of an outfall. A stretch is told of at the pipe that"
                        + " it ends in, and begins at the head of the drain where that cannot be opened.",
                "length = station of the opening - station of the last opening upstream, over all pipes between",
                "Cleanouts at most 100 ft apart as in IPC 708.1 and UPC 719.",
                List.of("whether a cleanout is reachable under paving", "the tools that will be used"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, Openings.AT, Openings.WITHIN);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Openings openings = new Openings(
                analysis, terms.get(Openings.AT), terms.get(Openings.WITHIN).si());
        Map<Integer, Double> unopened = new HashMap<>();
        List<Observation> observations = new ArrayList<>();
        for (PipeRun run : FlowOrder.of(analysis.network()).runs()) {
            List<Double> stretches = stretches(run, unopened, openings);
            double last = stretches.remove(stretches.size() - 1);
            unopened.merge(run.down().number(), last, Math::max);
            if (analysis.network().leaving(run.down()).isEmpty()) {
                stretches.add(last);
            }
            stretches.stream()
                    .max(Double::compare)
                    .flatMap(longest -> held(terms, run, longest, openings))
                    .ifPresent(observations::add);
        }
        return observations;
    }

    /** The lengths between openings that end in a run, and last what runs on unopened from its end. */
    private static List<Double> stretches(PipeRun run, Map<Integer, Double> unopened, Openings openings) {
        List<Double> stretches = new ArrayList<>();
        double from =
                openings.at(run.up()) ? 0 : -unopened.getOrDefault(run.up().number(), 0.0);
        for (double station : openings.along(run)) {
            stretches.add(station - from);
            from = station;
        }
        stretches.add(run.axis().getLength() - from);
        return stretches;
    }

    private static Optional<Observation> held(Terms terms, PipeRun run, double longest, Openings openings) {
        return terms.get(AT_MOST).hold(run.pipe(), run.pipe().attributes(), asked -> {
            Observation seen = Observation.measured(
                            run.pipe(), asked.against("pipe without an opening", new Length(longest), 0))
                    .at(run.axis());
            return seen.outcome() == Outcome.MEETS ? seen : openings.perhapsMore(seen);
        });
    }
}
