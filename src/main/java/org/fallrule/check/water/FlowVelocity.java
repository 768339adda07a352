package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether the water in each pipe runs fast enough to keep it clean, and not so fast that it wears it. */
@AutoService(Check.class)
public final class FlowVelocity implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
            "at_least",
            Bound.AT_LEAST,
            Dimension.VELOCITY,
            "least velocity of the pipe running full, at which it keeps itself clean");
    static final Parameter<Limits> AT_MOST = Parameter.limit(
            "at_most", Bound.AT_MOST, Dimension.VELOCITY, "greatest velocity of the design flow in the pipe");

    @Override
    public String name() {
        return "velocity";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The mean velocity of each pipe: running full against the least one, under the design flow against the"
                        + " greatest.",
                "running full: V = (1/n) (D/4)^(2/3) S^(1/2) (manning_full); design flow: at its normal depth"
                        + " (normal_depth), or Q over the bore where the pipe is too small for it",
                "HEC-22, third edition, section 7.2: 3 ft/s running full; 2 ft/s is common practice for small drains.",
                List.of(
                        "small flows, which run slower than a full pipe where they fill less than half of it",
                        "silt and leaves that the water brings"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST, AT_MOST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        Need pipes = new Need.OfLayer(Role.PIPE);
        return terms.find(AT_MOST).isPresent() ? List.of(pipes, new Need.OfStorm()) : List.of(pipes);
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return analysis.runsAsked().stream()
                .map(run -> analysis.water().in(run))
                .flatMap(water -> Stream.concat(
                        held(terms.find(AT_LEAST), water, "velocity running full", water.fullVelocity()).stream(),
                        held(terms.find(AT_MOST), water, "velocity of the design flow", water.velocity())
                                .map(seen -> Unsaid.underMoreWater(
                                        seen,
                                        analysis.water().cutAbove(water.run().up())))
                                .stream()))
                .toList();
    }

    private static Optional<Observation> held(
            Optional<Limits> limits, PipeWater water, String what, Answer<Velocity> velocity) {
        Feature pipe = water.run().pipe();
        return limits.flatMap(asks -> asks.hold(
                pipe,
                pipe.attributes(),
                asked -> velocity.value()
                        .map(found -> Observation.measured(pipe, asked.against(what, found, 0)))
                        .orElseGet(() -> Unsaid.of(pipe, "the " + what + " in " + pipe.spoken(), velocity))));
    }
}
