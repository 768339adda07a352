package org.fallrule.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The pipes of a network such that each comes after all that flow into it; pipes of a loop are left out. */
public final class FlowOrder {
    private final List<PipeRun> runs = new ArrayList<>();

    private FlowOrder(List<PipeRun> all) {
        Map<Integer, List<PipeRun>> outOf = new HashMap<>();
        Map<Integer, Integer> awaited = new HashMap<>();
        for (PipeRun run : all) {
            outOf.computeIfAbsent(run.up().number(), any -> new ArrayList<>()).add(run);
            awaited.merge(run.down().number(), 1, Integer::sum);
        }
        Deque<PipeRun> ready = new ArrayDeque<>();
        all.stream().filter(run -> !awaited.containsKey(run.up().number())).forEach(ready::add);
        while (!ready.isEmpty()) {
            PipeRun run = ready.remove();
            runs.add(run);
            if (awaited.merge(run.down().number(), -1, Integer::sum) == 0) {
                ready.addAll(outOf.getOrDefault(run.down().number(), List.of()));
            }
        }
    }

    public static FlowOrder of(PipeNetwork network) {
        return new FlowOrder(network.runs());
    }

    public List<PipeRun> runs() {
        return List.copyOf(runs);
    }
}
