package org.fallrule.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fallrule.document.Fault;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.LineString;

/**
 * Builds the network from the pipes and structures of a plan.
 *
 * <p>Pipe ends and structures within {@link #SNAP} of each other in plan are one junction. Each pipe is turned so that it
 * leads to the nearest outfall by pipe length; one that leads to none keeps the direction it was drawn in, and that is a
 * problem.
 */
public final class NetworkBuilder {
    /** How far apart, in plan, a pipe's end may lie from the structure or pipe end it belongs to. */
    public static final Length SNAP = Length.feet(0.5);

    private final List<Fault> problems = new ArrayList<>();
    private final JunctionFinder junctions;
    private final EndInverts inverts;
    /** The pipes that begin or end at a junction, by its number. */
    private final Map<Integer, List<DrawnPipe>> touching = new HashMap<>();

    private NetworkBuilder(Site site, Optional<GroundSurface> ground) {
        List<Feature> structures = new ArrayList<>(site.features(Role.OUTFALL));
        structures.addAll(site.features(Role.INLET));
        structures.addAll(site.features(Role.CLEANOUT));
        this.junctions = new JunctionFinder(structures, SNAP.metres() + Dimension.LENGTH.tolerance());
        this.inverts = new EndInverts(ground);
    }

    /**
     * Builds the network of a plan.
     *
     * @param ground the finished ground, that depths are measured from
     */
    public static PipeNetwork build(Site site, Optional<GroundSurface> ground) {
        return new NetworkBuilder(site, ground).network(site.features(Role.PIPE));
    }

    /**
     * Builds the network of a plan that was made from another by changes of its drain.
     *
     * @param drain the network of the other plan
     * @param before the other plan
     */
    public static PipeNetwork build(PipeNetwork drain, Site before, Site after, Optional<GroundSurface> ground) {
        return LaidAnew.of(drain, before, after, ground).orElseGet(() -> build(after, ground));
    }

    private PipeNetwork network(List<Feature> pipes) {
        List<DrawnPipe> drawn = pipes.stream().map(this::drawn).toList();
        drawn.forEach(pipe -> IntStream.of(pipe.start(), pipe.end())
                .distinct()
                .forEach(end ->
                        touching.computeIfAbsent(end, any -> new ArrayList<>()).add(pipe)));
        Map<Integer, Double> reach = lengthToOutfall();
        List<PipeRun> runs = drawn.stream().map(pipe -> turned(pipe, reach)).toList();
        looseStructures();
        PipeNetwork network = new PipeNetwork(runs, junctions.all(), reach);
        problems.addAll(new WaysDown(network).problems());
        return network.with(problems);
    }

    private DrawnPipe drawn(Feature pipe) {
        LineString line = withoutRepeats((LineString) pipe.geometry());
        int start = junctions.at(line.getCoordinateN(0));
        int end = junctions.at(line.getCoordinateN(line.getNumPoints() - 1));
        return new DrawnPipe(pipe, line, start, end);
    }

    /** The line with each place once: a vertex that is drawn twice is no bend. Where heights differ the end's own one counts. */
    private static LineString withoutRepeats(LineString line) {
        Coordinate[] drawn = line.getCoordinates();
        Coordinate[] once = CoordinateArrays.removeRepeatedPoints(drawn);
        if (once.length == drawn.length || once.length < 2) {
            return line;
        }
        once[once.length - 1] = drawn[drawn.length - 1];
        return line.getFactory().createLineString(once);
    }

    /** For each junction with a way to an outfall, the least pipe length to one, in metres (label correcting; R. Bellman, 1958). */
    private Map<Integer, Double> lengthToOutfall() {
        Map<Integer, Double> reach = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>();
        junctions.all().stream().filter(Junction::isOutfall).forEach(outfall -> {
            reach.put(outfall.number(), 0.0);
            open.add(outfall.number());
        });
        while (!open.isEmpty()) {
            int here = open.remove();
            double soFar = reach.getOrDefault(here, 0.0);
            touching.getOrDefault(here, List.of()).forEach(pipe -> {
                double there = soFar + pipe.line().getLength();
                if (there < reach.getOrDefault(pipe.other(here), Double.POSITIVE_INFINITY)) {
                    reach.put(pipe.other(here), there);
                    open.add(pipe.other(here));
                }
            });
        }
        return reach;
    }

    private PipeRun turned(DrawnPipe pipe, Map<Integer, Double> reach) {
        Double fromStart = reach.get(pipe.start());
        Double fromEnd = reach.get(pipe.end());
        if (fromStart == null || fromEnd == null) {
            problem(
                    pipe.feature(),
                    "does not lead to an outfall; end a pipe of its line on one, or within "
                            + "0.5 ft of the next pipe's end");
            return run(pipe.feature(), pipe.line(), pipe.start(), pipe.end());
        }
        if (fromStart < fromEnd) {
            return run(pipe.feature(), pipe.line().reverse(), pipe.end(), pipe.start());
        }
        return run(pipe.feature(), pipe.line(), pipe.start(), pipe.end());
    }

    private PipeRun run(Feature pipe, LineString axis, int from, int to) {
        return inverts.run(pipe, axis, junctions.get(from), junctions.get(to));
    }

    private void looseStructures() {
        for (Junction junction : junctions.all()) {
            if (!touching.containsKey(junction.number())) {
                junction.structures().stream()
                        .filter(structure -> structure.role() != Role.CLEANOUT)
                        .forEach(structure ->
                                problem(structure, "no pipe ends on it; bring a pipe's end within 0.5 ft of it"));
            }
        }
    }

    private void problem(Feature feature, String says) {
        problems.add(new Fault(feature.origin(), feature.spoken() + " " + says));
    }

    /** A pipe as drawn, with the numbers of the junctions at its start and end. */
    private record DrawnPipe(Feature feature, LineString line, int start, int end) {
        int other(int junction) {
            return start == junction ? end : start;
        }
    }
}
