package org.fallrule.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Parts a drain into lines, so that every pipe lies on one: to each outfall the longest way that the water takes, then the
 * branches that join it, the longest first.
 */
public final class FlowLines {
    private final PipeNetwork network;
    private final Map<PipeRun, List<PipeRun>> ways = new HashMap<>();

    private FlowLines(PipeNetwork network) {
        this.network = network;
        network.runs().forEach(run -> ways.put(run, way(run)));
    }

    public static List<FlowLine> of(PipeNetwork network) {
        return new FlowLines(network).lines();
    }

    private List<FlowLine> lines() {
        Map<Integer, List<FlowLine>> byEnd = new LinkedHashMap<>();
        Set<PipeRun> taken = new HashSet<>();
        List<PipeRun> farthestFirst = new ArrayList<>(network.runs());
        farthestFirst.sort(
                Comparator.comparingDouble((PipeRun run) -> length(way(run))).reversed());
        for (PipeRun head : farthestFirst) {
            if (!taken.contains(head)) {
                FlowLine line = line(head, taken);
                List<PipeRun> way = way(head);
                int end = way.get(way.size() - 1).down().number();
                byEnd.computeIfAbsent(end, any -> new ArrayList<>()).add(line);
            }
        }
        return byEnd.values().stream().flatMap(List::stream).toList();
    }

    private FlowLine line(PipeRun head, Set<PipeRun> taken) {
        List<PipeRun> runs = new ArrayList<>();
        for (PipeRun run : way(head)) {
            if (!taken.add(run)) {
                return new FlowLine(runs, Optional.of(run));
            }
            runs.add(run);
        }
        return new FlowLine(runs, Optional.empty());
    }

    /** A pipe and those after it; a loop is walked once. */
    private List<PipeRun> way(PipeRun head) {
        List<PipeRun> known = ways.get(head);
        if (known != null) {
            return known;
        }
        Set<PipeRun> way = new LinkedHashSet<>();
        Optional<PipeRun> next = Optional.of(head);
        while (next.isPresent() && way.add(next.get())) {
            Junction end = next.get().down();
            next = end.isOutfall() ? Optional.empty() : network.leaving(end);
        }
        return List.copyOf(way);
    }

    private static double length(List<PipeRun> way) {
        return way.stream().mapToDouble(run -> run.axis().getLength()).sum();
    }
}
