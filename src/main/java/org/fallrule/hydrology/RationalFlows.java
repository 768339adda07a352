package org.fallrule.hydrology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The rational method carried down a drain that only joins: areas add up, the longest time counts. */
public final class RationalFlows {
    public static final Method METHOD = Method.named(
                    "rational_flows",
                    "Rational method along a drain",
                    "The design flow at each place of a drain, from all areas that drain to it and the longest time that"
                            + " water takes to it.")
            .formula("Q = i(t) sum(Cj Aj)")
            .formula("t = max over all ways to the place (overland time + travel times)")
            .symbol("Q", "design flow at a place", "ft3/s")
            .symbol("i(t)", "intensity over the duration t, no shorter than the storm's shortest", "in/h")
            .symbol("Cj, Aj", "runoff coefficient and area of each part that drains to the place", "-, acre")
            .symbol("t", "longest time to the place", "min")
            .source("FHWA HEC-22, Urban Drainage Design Manual, 3rd edition (2009), section 7.2 (from memory)")
            .limit("A small quick area may bring more by itself than together with a large slow one, because the longer"
                    + " rain is weaker. The flow is never taken less than that of any one branch alone (common practice);"
                    + " parts of branches are not tried.")
            .limit("Each place passes its water on to one other: no forks, no circles; else there is no answer.")
            .limit("No storage in pipes or on the ground.");

    private final DesignStorm storm;
    private final Map<String, Gathering> places = new LinkedHashMap<>();
    private final Map<String, Answer<GatheredFlow>> flows = new LinkedHashMap<>();

    private RationalFlows(DesignStorm storm) {
        this.storm = storm;
    }

    /** What has come to a place so far. */
    private static final class Gathering {
        private final Catchment place;
        private final List<CompositeRunoff.Part> parts = new ArrayList<>();
        private double longestSeconds;
        private final Map<String, GatheredFlow> branches = new LinkedHashMap<>();
        private Optional<String> broken = Optional.empty();
        private int awaited;

        Gathering(Catchment place) {
            this.place = place;
        }
    }

    /**
     * The flow at every place by its id, upstream places first; for a place that has none, why.
     *
     * @return none where the places do not make a drain: an id twice, a downstream place that is not there, a circle
     */
    public static Answer<Map<String, Answer<GatheredFlow>>> of(List<Catchment> catchments, DesignStorm storm) {
        return new RationalFlows(storm).gathered(catchments);
    }

    private Answer<Map<String, Answer<GatheredFlow>>> gathered(List<Catchment> catchments) {
        for (Catchment each : catchments) {
            if (places.put(each.id(), new Gathering(each)) != null) {
                return Answer.none("the place " + each.id() + " stands twice");
            }
        }
        for (Catchment each : catchments) {
            if (each.downstream().isPresent()
                    && !places.containsKey(each.downstream().get())) {
                return Answer.none(each.id() + " passes its water on to "
                        + each.downstream().get() + ", which is not there");
            }
            next(each).ifPresent(below -> below.awaited++);
        }
        Deque<Gathering> ready = new ArrayDeque<>();
        places.values().stream().filter(place -> place.awaited == 0).forEach(ready::add);
        while (!ready.isEmpty()) {
            settle(ready.remove(), ready);
        }
        return flows.size() == places.size()
                ? Answer.of(Collections.unmodifiableMap(flows))
                : Answer.none("the water runs in a circle at "
                        + places.keySet().stream()
                                .filter(id -> !flows.containsKey(id))
                                .findFirst()
                                .orElseThrow());
    }

    private Optional<Gathering> next(Catchment place) {
        return place.downstream().map(places::get);
    }

    private void settle(Gathering here, Deque<Gathering> ready) {
        Answer<GatheredFlow> flow =
                here.broken.<Answer<GatheredFlow>>map(Answer::none).orElseGet(() -> flow(here));
        flows.put(here.place.id(), flow);
        next(here.place).ifPresent(below -> {
            passOn(here, flow, below);
            below.awaited--;
            if (below.awaited == 0) {
                ready.add(below);
            }
        });
    }

    private Answer<GatheredFlow> flow(Gathering here) {
        Optional<CompositeRunoff> own = here.place.runoff();
        own.ifPresent(runoff -> {
            here.parts.add(new CompositeRunoff.Part(runoff.area(), runoff.coefficient()));
            here.longestSeconds =
                    Math.max(here.longestSeconds, here.place.overland().seconds());
        });
        Answer<GatheredFlow> all =
                CompositeRunoff.of(here.parts).then(runoff -> alone(runoff, new Time(here.longestSeconds)));
        if (own.isPresent() && !here.branches.isEmpty()) {
            alone(own.get(), here.place.overland())
                    .value()
                    .ifPresent(quick -> here.branches.put(here.place.id(), quick));
        }
        return all.map(whole -> noLessThanAnyBranch(whole, here.branches));
    }

    private Answer<GatheredFlow> alone(CompositeRunoff runoff, Time longest) {
        Time duration = storm.duration(longest);
        return storm.intensity(duration)
                .then(rain -> RationalMethod.flow(runoff, rain)
                        .map(flow -> new GatheredFlow(runoff, longest, duration, rain, flow, Optional.empty())));
    }

    private static GatheredFlow noLessThanAnyBranch(GatheredFlow whole, Map<String, GatheredFlow> branches) {
        GatheredFlow greatest = whole;
        for (Map.Entry<String, GatheredFlow> branch : branches.entrySet()) {
            if (branch.getValue().flow().cubicMetresPerSecond()
                    > greatest.flow().cubicMetresPerSecond()) {
                greatest = new GatheredFlow(
                        whole.runoff(),
                        whole.longest(),
                        whole.duration(),
                        whole.intensity(),
                        branch.getValue().flow(),
                        Optional.of(branch.getKey()));
            }
        }
        return greatest;
    }

    private static void passOn(Gathering here, Answer<GatheredFlow> flow, Gathering below) {
        if (here.broken.isPresent() || (flow.value().isEmpty() && !here.parts.isEmpty())) {
            below.broken = Optional.of(flow.why());
        }
        flow.value().ifPresent(branch -> {
            below.parts.add(new CompositeRunoff.Part(
                    branch.runoff().area(), branch.runoff().coefficient()));
            below.longestSeconds = Math.max(
                    below.longestSeconds,
                    branch.longest().seconds() + here.place.travel().seconds());
            below.branches.put(here.place.id(), branch);
        });
    }
}
