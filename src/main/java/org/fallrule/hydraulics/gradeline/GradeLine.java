package org.fallrule.hydraulics.gradeline;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The level that water in an open riser would take at every place of a drain, found from the outfall upstream. */
public final class GradeLine {
    public static final Method METHOD = Method.named(
                    "grade_line",
                    "Hydraulic grade line",
                    "How high the water stands in each pipe and inlet, from the outfall up.")
            .formula("level upstream = level downstream + exit + friction + bend + entrance, along the energy line")
            .formula("full pipe: hf = Sf L,  Sf = (Q n / (0.3117 D^(8/3)))^2")
            .formula("exit = Ko V^2/2g;  bend = 0.0033 Delta V^2/2g;  entrance or structure = K V^2/2g")
            .formula("free outfall of a full pipe: greater of tailwater and (dc + D)/2; part full: tailwater and dc")
            .symbol("Q", "flow", "m3/s")
            .symbol("n", "Manning's roughness", "")
            .symbol("D", "inside diameter", "m")
            .symbol("L", "length", "m")
            .symbol("V", "mean velocity in the pipe", "m/s")
            .symbol("g", "acceleration of gravity", "m/s2")
            .symbol("Ko", "exit loss, 1 into still water", "")
            .symbol("Delta", "sum of the bends", "deg")
            .symbol("K", "entrance or structure loss", "")
            .symbol("dc", "critical depth", "m")
            .source("FHWA HEC-22, third edition, 2009, section 7.1 and equations 7-3 to 7-8 (from memory)")
            .source(
                    "UFC 3-230-17FA (TM 5-820-4), appendix B: water at a free outfall at (dc + D)/2, dc no more than D (read)")
            .limit("Steady flow, all peaks at once, pipes that join and never part.")
            .limit(
                    "A pipe filled to less than its capacity is followed by direct step, one that is too small is taken as"
                            + " full from end to end.")
            .limit("On a slope that keeps the flow rapid, the inlet stands at critical depth with its velocity head and"
                    + " entrance loss. An entrance drowned by more than about 1.2 diameters can stand higher.")
            .limit(
                    "Where water stands above a rim it comes out; levels upstream of there are reckoned as if it did not.")
            .limit(
                    "Some manuals ask to start at the crown (City of Austin Drainage Criteria Manual 5.5, read): give the"
                            + " crown's elevation as tailwater.");

    private final Map<String, NodeLevel> nodes = new LinkedHashMap<>();
    private final Map<String, PipeGrade> pipes = new LinkedHashMap<>();

    private GradeLine() {}

    /**
     * Finds the grade line.
     *
     * @param flowByPipe flow in each pipe by its id; a pipe that is not in it has none
     * @param tailwaterByOutfall level of the water outside each outfall by its node's id; an outfall that is not in it falls freely
     */
    public static GradeLine of(
            DrainTree tree, Map<String, Flow> flowByPipe, Map<String, Elevation> tailwaterByOutfall) {
        GradeLine line = new GradeLine();
        Map<String, Double> levels = new HashMap<>();
        tailwaterByOutfall.forEach((node, level) -> levels.put(node, level.metres()));
        Map<String, DrainPipe> leaving = new HashMap<>();
        for (DrainPipe pipe : tree.fromOutfallUp()) {
            leaving.put(pipe.from(), pipe);
            Flow flow = flowByPipe.getOrDefault(pipe.id(), new Flow(0));
            Optional<Double> levelDown = Optional.ofNullable(levels.get(pipe.to()));
            line.step(pipe, flow, levelDown).ifPresent(up -> levels.put(pipe.from(), up));
        }
        tree.nodes()
                .forEach((id, node) -> line.nodes.put(
                        id, level(node, Optional.ofNullable(levels.get(id)), Optional.ofNullable(leaving.get(id)))));
        return line;
    }

    /** How high the water stands in a node of the tree; {@link IllegalArgumentException} when it is not one of its nodes. */
    public NodeLevel node(String id) {
        return named(nodes, id);
    }

    /** The grade line along a pipe of the tree; {@link IllegalArgumentException} when it is not one of its pipes. */
    public PipeGrade pipe(String id) {
        return named(pipes, id);
    }

    private static <T> T named(Map<String, T> all, String id) {
        return Optional.ofNullable(all.get(id))
                .orElseThrow(() -> new IllegalArgumentException("the drain has no " + id + ", only " + all.keySet()));
    }

    /** How high the water stands in each node, in the order given. */
    public Map<String, NodeLevel> nodes() {
        return Collections.unmodifiableMap(nodes);
    }

    /** The grade line along each pipe, from the outfall up. */
    public Map<String, PipeGrade> pipes() {
        return Collections.unmodifiableMap(pipes);
    }

    private Optional<Double> step(DrainPipe pipe, Flow flow, Optional<Double> levelDown) {
        if (flow.cubicMetresPerSecond() < 0) {
            throw new IllegalArgumentException("pipe " + pipe.id() + ": a flow must not be below zero");
        }
        if (flow.cubicMetresPerSecond() == 0) {
            pipes.put(pipe.id(), still(pipe, levelDown));
            return levelDown.filter(level -> level > pipe.invertUp().metres());
        }
        PipeGradeLine line =
                new PipeGradeLine(pipe, flow, levelDown.orElse(pipe.invertDown().metres()));
        pipes.put(pipe.id(), line.grade());
        return Optional.of(line.levelUpM());
    }

    private static PipeGrade still(DrainPipe pipe, Optional<Double> levelDown) {
        double down = levelDown
                .map(level -> Math.max(level, pipe.invertDown().metres()))
                .orElse(pipe.invertDown().metres());
        double up = Math.max(
                levelDown.orElse(pipe.invertUp().metres()), pipe.invertUp().metres());
        Length none = new Length(0);
        return new PipeGrade(
                pipe.id(),
                new Flow(0),
                PipeState.NO_FLOW,
                new Elevation(down),
                new Elevation(up),
                new Length(down - pipe.invertDown().metres()),
                new Length(up - pipe.invertUp().metres()),
                new Velocity(0),
                new Velocity(0),
                new PipeGrade.Losses(none, none, none, none));
    }

    private static NodeLevel level(DrainNode node, Optional<Double> metres, Optional<DrainPipe> leaving) {
        Answer<Elevation> level = metres.map(m -> Answer.of(new Elevation(m)))
                .orElseGet(() -> Answer.none(
                        leaving.isPresent() ? "no water stands in it" : "the outfall is free, no tailwater is given"));
        Answer<Length> freeboard = level.then(found -> node.rim()
                .map(rim -> Answer.of(new Length(rim.metres() - found.metres())))
                .orElseGet(() -> Answer.none("the rim of " + node.id() + " is not known")));
        boolean surcharged = leaving.isPresent() && metres.isPresent() && metres.get() > crownUp(leaving.get());
        return new NodeLevel(node.id(), level, freeboard, surcharged);
    }

    private static double crownUp(DrainPipe pipe) {
        return pipe.invertUp().metres() + pipe.pipe().bore().metres();
    }
}
