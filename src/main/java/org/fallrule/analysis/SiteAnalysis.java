package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fallrule.document.Fault;
import org.fallrule.locality.Locality;
import org.fallrule.network.NetworkBuilder;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.network.Station;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.DrawnFacets;
import org.fallrule.terrain.GroundBuilder;
import org.fallrule.terrain.GroundSurface;
import org.fallrule.terrain.PatchedGround;
import org.fallrule.terrain.RasterGround;
import org.locationtech.jts.geom.Envelope;

/**
 * A plan and what follows from it; what every check looks at.
 *
 * @param site the plan
 * @param locality what the rule books say of its place, with the rain that the plan states for itself
 * @param ground the finished ground: the proposed one where the plan has it, else the existing
 * @param existing the ground as it is: surveyed points and lines where there are any, else the raster
 * @param surfaces what lies on the ground
 * @param flow the finished ground that water is traced over
 * @param network the drain
 * @param water the design storm in the drain
 * @param problems what is doubtful about the ground and what drains over it
 * @param zones around what stands in the plan
 * @param asked which of the plan's features checks answer for; of the others they may leave the answer out
 */
public record SiteAnalysis(
        Site site,
        Locality locality,
        Optional<GroundSurface> ground,
        Optional<GroundSurface> existing,
        SurfaceAbove surfaces,
        FlowSurface flow,
        PipeNetwork network,
        DrainWater water,
        List<Fault> problems,
        Zones zones,
        Predicate<Feature> asked) {

    public SiteAnalysis {
        problems = List.copyOf(problems);
    }

    /** A plan in a place of which no rule book says anything. */
    public static SiteAnalysis of(Site site) {
        return of(site, Locality.UNSAID);
    }

    public static SiteAnalysis of(Site site, Locality locality) {
        List<Fault> problems = new ArrayList<>();
        Optional<GroundSurface> existing =
                PatchedGround.of(surveyed(site, List.of(Role.SPOT, Role.GROUND), problems), raster(site, Role.GROUND));
        return of(site, locality, existing, new Zones(), problems, ground -> new FlowSurface(site, ground));
    }

    private static SiteAnalysis of(
            Site site,
            Locality locality,
            Optional<GroundSurface> existing,
            Zones zones,
            List<Fault> problems,
            Function<Optional<GroundSurface>, FlowSurface> flowOver) {
        Optional<GroundSurface> proposed = PatchedGround.of(
                surveyed(site, List.of(Role.PROPOSED_GROUND), problems), raster(site, Role.PROPOSED_GROUND));
        Optional<GroundSurface> ground = PatchedGround.of(proposed, existing);
        problems.addAll(new DrainageAreas(site).problems());
        problems.addAll(UnsaidMarks.in(site, locality.markAccuracy()));
        Locality place = locality.with(site.storm());
        SurfaceAbove surfaces = new SurfaceAbove(site);
        FlowSurface flow = flowOver.apply(ground);
        PipeNetwork network = NetworkBuilder.build(site, ground);
        DrainWater water = new DrainWater(site, place, ground, surfaces, flow, network);
        return new SiteAnalysis(
                site, place, ground, existing, surfaces, flow, network, water, problems, zones, any -> true);
    }

    /**
     * The same plan with another drain or another proposed ground. What a changed drain leaves as it is, the ground, what lies on
     * it and what runs off it, is not worked out again; so a trial costs little.
     *
     * @param changed the plan, of which only pipes, inlets, outfalls, cleanouts and the proposed ground differ from this one
     */
    @SuppressWarnings("ReferenceEquality") // features that compare equal may differ in height
    public SiteAnalysis with(Site changed) {
        if (changed.layer(Role.PROPOSED_GROUND) != site.layer(Role.PROPOSED_GROUND)) {
            return of(changed, locality, existing, zones, new ArrayList<>(), other -> regraded(changed, other));
        }
        FlowSurface over = flow.around(changed);
        PipeNetwork drain = NetworkBuilder.build(network, site, changed, ground);
        DrainWater running = water.with(changed, over, drain);
        return new SiteAnalysis(
                changed, locality, ground, existing, surfaces, over, drain, running, problems, zones, asked);
    }

    /** Where triangles are all that is laid over the ground anew, it is as it was but under them. */
    @SuppressWarnings("ReferenceEquality") // features that compare equal may differ in height
    private FlowSurface regraded(Site changed, Optional<GroundSurface> other) {
        List<Feature> before = site.features(Role.PROPOSED_GROUND);
        List<Feature> after = changed.features(Role.PROPOSED_GROUND);
        int kept = before.size();
        boolean isLaidOver = after.size() >= kept
                && IntStream.range(0, kept).allMatch(i -> before.get(i) == after.get(i))
                && after.subList(kept, after.size()).stream().allMatch(DrawnFacets::isOne);
        if (!isLaidOver) {
            return new FlowSurface(changed, other);
        }
        Envelope where = new Envelope();
        after.subList(kept, after.size())
                .forEach(each -> where.expandToInclude(each.geometry().getEnvelopeInternal()));
        return flow.regraded(changed, other, where);
    }

    /** The ground that utilities were marked on and measured from: as it is, or the proposed one where the plan has no other. */
    public Optional<GroundSurface> groundAsItIs() {
        return existing.or(() -> ground);
    }

    /** The same plan, of which an answer is wanted for some features alone. What follows from the whole plan is as it was. */
    public SiteAnalysis asking(Predicate<Feature> of) {
        return new SiteAnalysis(site, locality, ground, existing, surfaces, flow, network, water, problems, zones, of);
    }

    /** A place along a pipe in the plan's own unit: {@code 0+41.7} where its heights are in feet, else {@code 12.71 m}. */
    public String station(double metres) {
        return new Station(metres, site.metric()).toString();
    }

    /** {@code 0+17.8 to 0+22.2, 0+97.8 to 1+02.2}. */
    public String stations(List<Reach> reaches) {
        return reaches.stream().map(reach -> reach.spoken(site.metric())).collect(Collectors.joining(", "));
    }

    /** The pipes that checks answer for. */
    public List<PipeRun> runsAsked() {
        return network.runs().stream().filter(run -> asked.test(run.pipe())).toList();
    }

    private static Optional<GroundSurface> surveyed(Site site, List<Role> points, List<Fault> problems) {
        boolean isExisting = points.contains(Role.SPOT);
        GroundBuilder.Result result = GroundBuilder.build(
                points.stream().flatMap(role -> site.features(role).stream()).toList(),
                isExisting ? site.features(Role.CONTOUR) : List.of(),
                isExisting ? site.features(Role.BREAKLINE) : List.of());
        problems.addAll(result.problems());
        return result.ground();
    }

    private static Optional<GroundSurface> raster(Site site, Role role) {
        return site.layer(role) instanceof Layer.Raster raster
                ? Optional.of(new RasterGround(raster.heights()))
                : Optional.empty();
    }
}
