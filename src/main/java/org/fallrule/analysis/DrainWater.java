package org.fallrule.analysis;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.fallrule.hydraulics.gradeline.NodeLevel;
import org.fallrule.hydraulics.gradeline.PipeGrade;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.hydrology.RationalMethod;
import org.fallrule.locality.Locality;
import org.fallrule.measure.Flow;
import org.fallrule.method.Answer;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;

/**
 * The design storm in the drain, from the ground to the outfall: what runs off to each inlet, what flows in each pipe, how high
 * it stands. Worked out when first asked for, once for everything that asks.
 */
public final class DrainWater {
    private final Site site;
    private final Locality locality;
    private final Optional<GroundSurface> ground;
    private final SurfaceAbove surfaces;
    private final FlowSurface flow;
    private final PipeNetwork network;
    private final Answer<DesignStorm> storm;
    private Optional<InletCatchments> areas = Optional.empty();
    private Optional<Map<Feature, InletCatchments.Catchment>> catchments = Optional.empty();
    private Optional<InletRunoffs> runoffs = Optional.empty();
    private final IdentityHashMap<Feature, Answer<InletRunoff>> runoffOf = new IdentityHashMap<>();
    /** What runs off to inlets that stand as they did in a plan that this one was made from. */
    private final IdentityHashMap<Feature, Supplier<Answer<InletRunoff>>> runoffBefore = new IdentityHashMap<>();

    private Optional<Answer<DesignFlows>> flows = Optional.empty();
    private final IdentityHashMap<PipeRun, PipeWater> pipes = new IdentityHashMap<>();
    private Optional<WaterLevels> levels = Optional.empty();

    DrainWater(
            Site site,
            Locality locality,
            Optional<GroundSurface> ground,
            SurfaceAbove surfaces,
            FlowSurface flow,
            PipeNetwork network) {
        this.site = site;
        this.locality = locality;
        this.ground = ground;
        this.surfaces = surfaces;
        this.flow = flow;
        this.network = network;
        this.storm = DesignStorm.of(locality.storm());
    }

    /** The storm in another drain of the same plan; what drains to its inlets is known already where they stand as they did. */
    DrainWater with(Site changed, FlowSurface over, PipeNetwork drain) {
        DrainWater other = new DrainWater(changed, locality, ground, surfaces, over, drain);
        List<Feature> before = site.features(Role.INLET);
        List<Feature> after = changed.features(Role.INLET);
        if (flow == over && standAlike(before, after)) {
            Map<Feature, InletCatchments.Catchment> known = new HashMap<>();
            Map<Feature, InletCatchments.Catchment> mine = catchments();
            for (int i = 0; i < before.size(); i++) {
                Feature was = before.get(i);
                Feature inlet = after.get(i);
                Optional.ofNullable(mine.get(was)).ifPresent(catchment -> known.put(inlet, catchment));
                other.runoffBefore.put(inlet, () -> runoff(was));
            }
            other.catchments = Optional.of(known);
        }
        return other;
    }

    /** Whether inlets are named, stand and are of a kind as they were, which decides what drains to them. */
    private static boolean standAlike(List<Feature> before, List<Feature> after) {
        return before.size() == after.size()
                && IntStream.range(0, before.size()).allMatch(i -> standAlike(before.get(i), after.get(i)));
    }

    private static boolean standAlike(Feature before, Feature after) {
        return before.id().equals(after.id())
                && before.geometry().equalsExact(after.geometry())
                && before.get(Attribute.KIND).equals(after.get(Attribute.KIND));
    }

    /** The rain to design for, or what is missing of it. */
    public Answer<DesignStorm> storm() {
        return storm;
    }

    /** What drains to each inlet whose kind the plan gives, by the ground and the roofs. */
    public synchronized Map<Feature, InletCatchments.Catchment> catchments() {
        if (catchments.isEmpty()) {
            catchments = Optional.of(areas().over(flow.filled()));
        }
        return catchments.get();
    }

    private InletCatchments areas() {
        if (areas.isEmpty()) {
            areas = Optional.of(new InletCatchments(site, surfaces));
        }
        return areas.get();
    }

    /** What runs off to an inlet, or what is missing to tell. */
    public synchronized Answer<InletRunoff> runoff(Feature inlet) {
        return runoffOf.computeIfAbsent(
                inlet,
                any -> Optional.ofNullable(runoffBefore.get(inlet))
                        .orElse(() -> runoffs().of(inlet))
                        .get());
    }

    private InletRunoffs runoffs() {
        if (runoffs.isEmpty()) {
            boolean knowsLawn = surfaces.word(Optional.empty()).isPresent();
            DrawnAreas drawn = new DrawnAreas(site, areas().guttered(), ground, knowsLawn);
            runoffs = Optional.of(new InletRunoffs(locality, drawn, catchments(), this::soilAt, surfaces));
        }
        return runoffs.get();
    }

    /** The design flow that an inlet's own area brings. */
    public Answer<Flow> inflow(Feature inlet) {
        return storm.then(rain -> runoff(inlet)
                .then(own -> rain.intensity(rain.duration(own.overland()))
                        .then(intensity -> RationalMethod.flow(own.runoff(), intensity))));
    }

    /** The soil that the plan gives at a place; empty where it gives none. */
    public Optional<Feature> soil(Feature at) {
        return site.features(Role.SOIL).stream()
                .filter(soil -> soil.geometry().intersects(at.geometry()))
                .findFirst();
    }

    /** The texture of the soil at a place: the plan's, else the usual one of the county. */
    public Optional<String> soilAt(Feature at) {
        return soil(at).flatMap(soil -> soil.get(Attribute.TEXTURE))
                .or(() -> locality.climate().soil());
    }

    /** The design flow that comes to a junction. */
    public Answer<GatheredFlow> flowAt(Junction junction) {
        return flows().then(known -> known.at(junction));
    }

    /** The inlets upstream of a junction whose area is known only in part, so that more water may come. */
    public Set<Feature> cutAbove(Junction junction) {
        return flows().value().map(known -> known.cutAbove(junction)).orElse(Set.of());
    }

    /** The water in a pipe. */
    public synchronized PipeWater in(PipeRun run) {
        return pipes.computeIfAbsent(run, any -> PipeWater.of(run, flowIn(run)));
    }

    private Answer<GatheredFlow> flowIn(PipeRun run) {
        return network.isTaken(run)
                ? flowAt(run.up())
                : Answer.none("the water is taken down another pipe than " + run.id());
    }

    /** How high the water stands at a junction. */
    public Answer<NodeLevel> level(Junction junction) {
        return levels().at(junction);
    }

    /** The grade line along a pipe. */
    public Answer<PipeGrade> grade(PipeRun run) {
        return levels().along(run);
    }

    private boolean isDry(Junction junction) {
        return flows().value().filter(known -> known.isDry(junction)).isPresent();
    }

    private synchronized Answer<DesignFlows> flows() {
        if (flows.isEmpty()) {
            flows = Optional.of(storm.map(rain -> new DesignFlows(network, rain, this::runoff)));
        }
        return flows.get();
    }

    private synchronized WaterLevels levels() {
        if (levels.isEmpty()) {
            levels = Optional.of(new WaterLevels(network, ground, this::in, this::isDry));
        }
        return levels.get();
    }
}
