package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.fallrule.hydrology.Catchment;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.hydrology.RationalFlows;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * The design flow that comes to each junction of the drain. Where it is not known what runs off to an inlet, the flow is not
 * known from there down. The time in a pipe is taken at its velocity running full, and as none where that is not known, which
 * asks for the most rain.
 */
final class DesignFlows {
    private final PipeNetwork network;
    private final Function<Feature, Answer<InletRunoff>> runoffOf;
    private final Map<Integer, String> broken = new HashMap<>();
    private final Set<Integer> wet = new HashSet<>();
    private final Map<Integer, Set<Feature>> cutAbove = new HashMap<>();
    private final Answer<Map<String, Answer<GatheredFlow>>> flows;

    DesignFlows(PipeNetwork network, DesignStorm storm, Function<Feature, Answer<InletRunoff>> runoffOf) {
        this.network = network;
        this.runoffOf = runoffOf;
        List<Catchment> places = network.junctions().stream().map(this::place).toList();
        this.flows = RationalFlows.of(places, storm);
    }

    /** What comes to a junction, its own runoff with it. */
    Answer<GatheredFlow> at(Junction junction) {
        String why = broken.get(junction.number());
        if (why != null) {
            return Answer.none(why);
        }
        return isDry(junction)
                ? Answer.none("no inlet of the plan drains there")
                : flows.then(byPlace -> byPlace.get(id(junction)));
    }

    /** Whether no inlet drains to a junction, known or not. */
    boolean isDry(Junction junction) {
        return !wet.contains(junction.number());
    }

    /** The inlets whose water comes to a junction and whose area is only known in part. */
    Set<Feature> cutAbove(Junction junction) {
        return cutAbove.getOrDefault(junction.number(), Set.of());
    }

    private static String id(Junction junction) {
        return junction.structures().stream().findFirst().map(Feature::id).orElse("junction") + "/" + junction.number();
    }

    private Catchment place(Junction junction) {
        List<InletRunoff> own = own(junction);
        Optional<CompositeRunoff> runoff = CompositeRunoff.of(own.stream()
                        .map(InletRunoff::runoff)
                        .map(all -> new CompositeRunoff.Part(all.area(), all.coefficient()))
                        .toList())
                .value();
        double overland = own.stream()
                .mapToDouble(each -> each.overland().seconds())
                .max()
                .orElse(0);
        Optional<PipeRun> down = network.leaving(junction).filter(run -> !junction.isOutfall());
        return new Catchment(
                id(junction),
                runoff,
                new Time(overland),
                down.map(run -> id(run.down())),
                down.map(DesignFlows::travel).orElse(new Time(0)));
    }

    private List<InletRunoff> own(Junction junction) {
        List<InletRunoff> own = new ArrayList<>();
        for (Feature structure : junction.structures()) {
            if (structure.role() == Role.INLET) {
                fromHereDown(junction, wet::add);
                Answer<InletRunoff> runoff = runoffOf.apply(structure);
                runoff.value().ifPresent(own::add);
                if (runoff.value().isEmpty()) {
                    fromHereDown(junction, number -> broken.putIfAbsent(number, runoff.why()) == null);
                }
                if (runoff.value().filter(InletRunoff::isCut).isPresent()) {
                    fromHereDown(
                            junction,
                            number -> cutAbove.computeIfAbsent(number, any -> new LinkedHashSet<>())
                                    .add(structure));
                }
            }
        }
        return own;
    }

    /** Marks a junction and all that its water comes to, as far as the mark is new: below an old one all are marked. */
    private void fromHereDown(Junction start, IntPredicate isNewMark) {
        Optional<Junction> here = Optional.of(start);
        while (here.isPresent() && isNewMark.test(here.get().number())) {
            here = here.filter(junction -> !junction.isOutfall())
                    .flatMap(network::leaving)
                    .map(PipeRun::down);
        }
    }

    private static Time travel(PipeRun run) {
        return PipeWater.of(run, Answer.none(""))
                .fullVelocity()
                .value()
                .filter(velocity -> velocity.metresPerSecond() > 0)
                .map(velocity -> new Time(run.length().metres() / velocity.metresPerSecond()))
                .orElse(new Time(0));
    }
}
