package org.fallrule.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rings in a network, each pipe taken as a way in both directions: every pipe that closes one names it together with the
 * fewest pipes before it that lead from its one end to its other. Whether it closes one is told by the sets of junctions that
 * hang together so far (R. E. Tarjan, Efficiency of a good but not linear set union algorithm, Journal of the ACM 22(2), 1975).
 */
final class Rings {
    private final Map<Integer, List<PipeRun>> before = new HashMap<>();
    private final Map<Integer, Integer> hangsOn = new HashMap<>();

    private Rings() {}

    /** The pipes of each ring, in the order in which one comes to them. */
    static List<List<PipeRun>> of(List<PipeRun> runs) {
        Rings network = new Rings();
        return runs.stream()
                .filter(run -> !isShort(run))
                .flatMap(run -> network.closedBy(run).stream())
                .toList();
    }

    /** A pipe whose ends are one junction only because it is short goes round nothing. */
    private static boolean isShort(PipeRun run) {
        return run.up().number() == run.down().number() && run.axis().getLength() <= 2 * NetworkBuilder.SNAP.metres();
    }

    private Optional<List<PipeRun>> closedBy(PipeRun run) {
        int up = run.up().number();
        int down = run.down().number();
        Optional<List<PipeRun>> ring = Optional.empty();
        if (root(up) == root(down)) {
            List<PipeRun> pipes = new ArrayList<>(List.of(run));
            pipes.addAll(way(down, up));
            ring = Optional.of(pipes);
        }
        hangsOn.put(root(up), root(down));
        before.computeIfAbsent(up, any -> new ArrayList<>()).add(run);
        before.computeIfAbsent(down, any -> new ArrayList<>()).add(run);
        return ring;
    }

    /** The junction that stands for all that hang together with this one. */
    private int root(int junction) {
        int here = junction;
        int next = hangsOn.getOrDefault(here, here);
        while (next != here) {
            int after = hangsOn.getOrDefault(next, next);
            hangsOn.put(here, after);
            here = after;
            next = hangsOn.getOrDefault(here, here);
        }
        return here;
    }

    /** The fewest pipes between two junctions that hang together (breadth first); no pipe when they are one. */
    private List<PipeRun> way(int from, int to) {
        Map<Integer, PipeRun> cameBy = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty() && !cameBy.containsKey(to)) {
            int here = open.remove();
            for (PipeRun run : before.getOrDefault(here, List.of())) {
                int there = other(run, here);
                if (there != from && cameBy.putIfAbsent(there, run) == null) {
                    open.add(there);
                }
            }
        }
        List<PipeRun> way = new ArrayList<>();
        int here = to;
        for (PipeRun run = cameBy.get(here); run != null && here != from; run = cameBy.get(here)) {
            way.add(run);
            here = other(run, here);
        }
        Collections.reverse(way);
        return way;
    }

    private static int other(PipeRun run, int junction) {
        return run.up().number() == junction ? run.down().number() : run.up().number();
    }
}
