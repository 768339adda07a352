package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.fallrule.hydraulics.gradeline.DrainNode;
import org.fallrule.hydraulics.gradeline.DrainPipe;
import org.fallrule.hydraulics.gradeline.DrainTree;
import org.fallrule.hydraulics.gradeline.GradeLine;
import org.fallrule.hydraulics.gradeline.NodeLevel;
import org.fallrule.hydraulics.gradeline.PipeGrade;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.method.Answer;
import org.fallrule.network.FlowOrder;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.terrain.GroundSurface;

/**
 * The grade line of the whole drain. Where a pipe's size, inverts, roughness or flow are not known, no level is given from there
 * up. The lid of a pop-up outfall holds the water up to the ground there; any other outfall for which the plan gives no tailwater
 * is taken to fall freely.
 */
final class WaterLevels {
    private static final Flow NONE = new Flow(0);

    private final PipeNetwork network;
    private final Optional<GroundSurface> ground;
    private final PipeLosses losses;
    private final Predicate<Junction> isDry;
    private final Map<Integer, String> unknown = new HashMap<>();
    private final IdentityHashMap<PipeRun, Answer<String>> nameOf = new IdentityHashMap<>();
    private final Map<String, Elevation> tailwater = new HashMap<>();
    private final Map<String, Flow> flows = new HashMap<>();
    private final List<DrainPipe> pipes = new ArrayList<>();
    private final Answer<GradeLine> line;

    WaterLevels(
            PipeNetwork network,
            Optional<GroundSurface> ground,
            Function<PipeRun, PipeWater> waterOf,
            Predicate<Junction> isDry) {
        this.network = network;
        this.ground = ground;
        this.isDry = isDry;
        this.losses = new PipeLosses(network);
        network.junctions().forEach(this::begin);
        List<PipeRun> fromOutfallUp = new ArrayList<>(FlowOrder.of(network).runs());
        Collections.reverse(fromOutfallUp);
        fromOutfallUp.forEach(run -> add(waterOf.apply(run)));
        List<DrainNode> nodes = network.junctions().stream()
                .map(junction -> new DrainNode(node(junction), rim(junction), NONE))
                .toList();
        this.line = DrainTree.of(nodes, pipes).map(tree -> GradeLine.of(tree, flows, tailwater));
    }

    /** How high the water stands at a junction, or why that is not known. */
    Answer<NodeLevel> at(Junction junction) {
        String why = unknown.get(junction.number());
        return why != null ? Answer.none(why) : line.map(known -> known.node(node(junction)));
    }

    /** The grade line along a pipe, or why it is not known. */
    Answer<PipeGrade> along(PipeRun run) {
        Answer<String> name = nameOf.getOrDefault(run, Answer.none(run.pipe().spoken() + " runs in a ring"));
        return name.then(known -> line.map(grade -> grade.pipe(known)));
    }

    private static String node(Junction junction) {
        return "N" + junction.number();
    }

    private static Optional<Elevation> rim(Junction junction) {
        return junction.structures().stream()
                .flatMap(structure -> structure.get(Attribute.RIM).stream())
                .findFirst();
    }

    private void begin(Junction junction) {
        Optional<Feature> outfall = junction.structure(Role.OUTFALL);
        if (outfall.isEmpty()) {
            unknown.put(junction.number(), "no pipe leads from there to an outfall");
            return;
        }
        Optional<Elevation> given = outfall.get().get(Attribute.TAILWATER);
        boolean isPopUp = outfall.get().get(Attribute.KIND).orElse("").equals("pop_up");
        Optional<Elevation> lid = ground.flatMap(surface -> surface.elevationAt(junction.place()));
        if (given.isEmpty() && isPopUp && lid.isEmpty()) {
            unknown.put(
                    junction.number(),
                    "the level of the lid of " + outfall.get().spoken()
                            + " is not known; give the ground there, or tailwater");
        }
        given.or(() -> lid.filter(level -> isPopUp)).ifPresent(level -> tailwater.put(node(junction), level));
    }

    private void add(PipeWater water) {
        PipeRun run = water.run();
        if (!network.isTaken(run)) {
            nameOf.put(run, Answer.none("the water is taken down another pipe than " + run.id()));
            return;
        }
        Answer<DrainPipe> pipe = drainPipe(water);
        nameOf.put(run, pipe.map(DrainPipe::id));
        pipe.value().ifPresent(found -> {
            pipes.add(found);
            unknown.remove(run.up().number());
        });
        if (pipe.value().isEmpty() && !run.up().isOutfall()) {
            unknown.put(run.up().number(), pipe.why());
        }
    }

    private Answer<DrainPipe> drainPipe(PipeWater water) {
        PipeRun run = water.run();
        String below = unknown.get(run.down().number());
        if (below != null) {
            return Answer.none(below);
        }
        Answer<Flow> flow =
                isDry.test(run.up()) ? Answer.of(NONE) : water.flow().map(GatheredFlow::flow);
        return flow.then(found -> water.slope().then(slope -> water.pipe().map(bore -> made(run, bore, found))));
    }

    private DrainPipe made(PipeRun run, RoundPipe bore, Flow flow) {
        String id = "P" + pipes.size();
        flows.put(id, flow);
        return new DrainPipe(
                id,
                node(run.up()),
                node(run.down()),
                bore,
                run.length(),
                run.invertUp().orElseThrow(),
                run.invertDown().orElseThrow(),
                losses.of(run));
    }
}
