package org.fallrule.hydraulics.gradeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.measure.Flow;
import org.fallrule.method.Answer;

/** Pipes that join on their way to one or more outfalls and never part. */
public final class DrainTree {
    private final Map<String, DrainNode> nodes;
    private final List<DrainPipe> fromOutfallUp;

    private DrainTree(Map<String, DrainNode> nodes, List<DrainPipe> fromOutfallUp) {
        this.nodes = Collections.unmodifiableMap(nodes);
        this.fromOutfallUp = List.copyOf(fromOutfallUp);
    }

    /** The tree of nodes and pipes; none when they are none, with the node or pipe that is in the way. */
    public static Answer<DrainTree> of(List<DrainNode> nodes, List<DrainPipe> pipes) {
        Map<String, DrainNode> byId = new LinkedHashMap<>();
        for (DrainNode node : nodes) {
            if (byId.put(node.id(), node) != null) {
                return Answer.none("two nodes are called " + node.id());
            }
        }
        Map<String, DrainPipe> leaving = new HashMap<>();
        Map<String, List<DrainPipe>> arriving = new HashMap<>();
        for (DrainPipe pipe : pipes) {
            if (!byId.containsKey(pipe.from()) || !byId.containsKey(pipe.to())) {
                return Answer.none("pipe " + pipe.id() + " has an end at a node that is not there");
            }
            DrainPipe other = leaving.put(pipe.from(), pipe);
            if (other != null) {
                return Answer.none("pipes " + other.id() + " and " + pipe.id() + " both leave node " + pipe.from()
                        + "; how the flow parts there is not known");
            }
            arriving.computeIfAbsent(pipe.to(), id -> new ArrayList<>()).add(pipe);
        }
        List<DrainPipe> order = climb(byId, leaving, arriving);
        return order.size() == pipes.size()
                ? Answer.of(new DrainTree(byId, order))
                : Answer.none("some pipes run in a circle and reach no outfall: " + left(pipes, order));
    }

    private static List<DrainPipe> climb(
            Map<String, DrainNode> nodes, Map<String, DrainPipe> leaving, Map<String, List<DrainPipe>> arriving) {
        Deque<String> open = new ArrayDeque<>();
        nodes.keySet().stream().filter(id -> !leaving.containsKey(id)).forEach(open::add);
        List<DrainPipe> order = new ArrayList<>();
        while (!open.isEmpty()) {
            for (DrainPipe pipe : arriving.getOrDefault(open.remove(), List.of())) {
                order.add(pipe);
                open.add(pipe.from());
            }
        }
        return order;
    }

    private static String left(List<DrainPipe> pipes, List<DrainPipe> order) {
        List<String> ids = new ArrayList<>(pipes.stream().map(DrainPipe::id).toList());
        order.forEach(pipe -> ids.remove(pipe.id()));
        return String.join(", ", ids);
    }

    public Map<String, DrainNode> nodes() {
        return nodes;
    }

    /** The pipes, each after the one that it flows into. */
    public List<DrainPipe> fromOutfallUp() {
        return fromOutfallUp;
    }

    /** The flow in each pipe, by its id, when all inflows come at once. */
    public Map<String, Flow> flows() {
        Map<String, Double> atNode = new HashMap<>();
        nodes.forEach((id, node) -> atNode.put(id, node.inflow().cubicMetresPerSecond()));
        Map<String, Flow> inPipe = new HashMap<>();
        for (int i = fromOutfallUp.size() - 1; i >= 0; i--) {
            DrainPipe pipe = fromOutfallUp.get(i);
            double flow = atNode.getOrDefault(pipe.from(), 0.0);
            atNode.merge(pipe.to(), flow, Double::sum);
            inPipe.put(pipe.id(), new Flow(flow));
        }
        return inPipe;
    }
}
