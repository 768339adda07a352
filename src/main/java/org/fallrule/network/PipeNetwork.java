package org.fallrule.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** The drain: its pipes turned toward their outfalls, and the junctions between them. */
public final class PipeNetwork {
    private final List<PipeRun> runs;
    private final List<Junction> junctions;
    /** What is wrong with how the pipes hang together in plan. */
    private final List<Fault> ofCourse;

    private final List<Fault> problems;
    private final Map<Integer, Double> lengthToOutfall;
    private final Map<Integer, PipeRun> leaving;
    private final Map<Integer, List<PipeRun>> touching;
    private final Map<Feature, PipeRun> runOf;
    private final Map<Feature, Junction> junctionOf;

    /** {@code lengthToOutfall} holds the least pipe length in metres from each junction, by number, that has a way to one. */
    PipeNetwork(List<PipeRun> runs, List<Junction> junctions, Map<Integer, Double> lengthToOutfall) {
        this.runs = List.copyOf(runs);
        this.junctions = List.copyOf(junctions);
        this.ofCourse = List.of();
        this.problems = List.of();
        this.lengthToOutfall = Map.copyOf(lengthToOutfall);
        this.leaving = new HashMap<>();
        this.touching = new HashMap<>();
        this.runOf = new HashMap<>();
        this.junctionOf = new HashMap<>();
        this.runs.stream()
                .filter(run -> !run.up().equals(run.down()))
                .forEach(run -> leaving.merge(
                        run.up().number(),
                        run,
                        (one, other) -> lengthThrough(other) < lengthThrough(one) ? other : one));
        this.runs.forEach(this::enter);
        this.junctions.forEach(
                junction -> junction.structures().forEach(each -> junctionOf.putIfAbsent(each, junction)));
    }

    private PipeNetwork(PipeNetwork of, List<Fault> ofCourse) {
        this.runs = of.runs;
        this.junctions = of.junctions;
        this.ofCourse = List.copyOf(ofCourse);
        this.lengthToOutfall = of.lengthToOutfall;
        this.leaving = of.leaving;
        this.touching = of.touching;
        this.runOf = of.runOf;
        this.junctionOf = of.junctionOf;
        this.problems = Stream.concat(ofCourse.stream(), RimsAndInverts.problems(this).stream())
                .toList();
    }

    /** The same drain, in the course of which this is wrong, and in its heights whatever is wrong there. */
    PipeNetwork with(List<Fault> wrongInCourse) {
        return new PipeNetwork(this, wrongInCourse);
    }

    /** The drain of a plan in which everything lies as it does here; with the same pipes and junctions, in the same order. */
    PipeNetwork relaid(List<PipeRun> other, List<Junction> otherJunctions) {
        return new PipeNetwork(other, otherJunctions, lengthToOutfall).with(ofCourse);
    }

    private void enter(PipeRun run) {
        runOf.putIfAbsent(run.pipe(), run);
        Stream.of(run.up(), run.down())
                .map(Junction::number)
                .distinct()
                .forEach(number -> touching.computeIfAbsent(number, any -> new ArrayList<>())
                        .add(run));
    }

    /** The pipes that begin or end at a junction, in the order of the plan. */
    List<PipeRun> touching(Junction junction) {
        return touching.getOrDefault(junction.number(), List.of());
    }

    /** The pipes that end at a junction, in the order of the plan. */
    public List<PipeRun> into(Junction junction) {
        return touching(junction).stream()
                .filter(run -> run.down().number() == junction.number())
                .toList();
    }

    /** The pipes in the order of the plan. */
    public List<PipeRun> runs() {
        return runs;
    }

    public List<Junction> junctions() {
        return junctions;
    }

    /** What is wrong with how the pipes hang together. */
    public List<Fault> problems() {
        return problems;
    }

    public Optional<PipeRun> runOf(Feature pipe) {
        return Optional.ofNullable(runOf.get(pipe));
    }

    /** The junction that a structure stands on; perhaps no pipe ends there. */
    public Optional<Junction> junctionOf(Feature structure) {
        return Optional.ofNullable(junctionOf.get(structure));
    }

    /** The pipe that carries the water on from a junction: of those that leave it, the one on the shortest way to an outfall. */
    public Optional<PipeRun> leaving(Junction junction) {
        return Optional.ofNullable(leaving.get(junction.number()));
    }

    /** Whether a pipe is the one that carries the water on from its upper end. */
    public boolean isTaken(PipeRun run) {
        return leaving(run.up()).filter(run::equals).isPresent();
    }

    private double lengthThrough(PipeRun run) {
        return run.axis().getLength() + lengthToOutfall.getOrDefault(run.down().number(), Double.POSITIVE_INFINITY);
    }

    /** The drops at structures, in the order of the pipes that come in; only where both inverts are known. */
    public List<Drop> drops() {
        return runs.stream().flatMap(in -> drop(in).stream()).toList();
    }

    private Optional<Drop> drop(PipeRun in) {
        Junction at = in.down();
        return leaving(at)
                .filter(out -> !at.isOutfall() && !at.structures().isEmpty())
                .flatMap(out -> in.invertDown()
                        .flatMap(from -> out.invertUp().map(to -> new Drop(at, in, out, from.above(to)))));
    }

    /** The pipes from a junction down to where the water comes out or the drain ends; a loop is walked once. */
    public List<PipeRun> downstreamOf(Junction start) {
        List<PipeRun> path = new ArrayList<>();
        Set<Integer> visited = new HashSet<>();
        Optional<PipeRun> next = leaving(start);
        while (next.isPresent() && visited.add(next.get().up().number())) {
            path.add(next.get());
            next = next.get().down().isOutfall()
                    ? Optional.empty()
                    : leaving(next.get().down());
        }
        return path;
    }

    /** The outfall that a run's water comes out at, if the pipes lead to one. */
    public Optional<Feature> outfallOf(PipeRun run) {
        List<PipeRun> path = new ArrayList<>(List.of(run));
        if (!run.down().isOutfall()) {
            path.addAll(downstreamOf(run.down()));
        }
        return path.get(path.size() - 1).down().structure(Role.OUTFALL);
    }

    /**
     * Plan length in metres from the downstream end of a run to a daylight outfall; empty when its water does not come out
     * at one.
     */
    public Optional<Double> lengthToDaylight(PipeRun run) {
        boolean daylight = outfallOf(run)
                .map(outfall -> outfall.get(Attribute.KIND).orElse("daylight").equals("daylight"))
                .orElse(false);
        if (!daylight) {
            return Optional.empty();
        }
        return Optional.of(run.down().isOutfall() ? 0.0 : length(downstreamOf(run.down())));
    }

    private static double length(List<PipeRun> path) {
        return path.stream().mapToDouble(run -> run.axis().getLength()).sum();
    }
}
