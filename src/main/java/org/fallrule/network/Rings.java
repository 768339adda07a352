package org.fallrule.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rings in a network, each pipe taken as a way in both directions: every pipe that closes one names it together with the
 * fewest pipes before it that lead from its one end to its other.
 */
final class Rings {
    private Rings() {}

    /** The pipes of each ring, in the order in which one comes to them. */
    static List<List<PipeRun>> of(List<PipeRun> runs) {
        List<PipeRun> before = new ArrayList<>();
        List<List<PipeRun>> rings = new ArrayList<>();
        for (PipeRun run : runs) {
            if (!isShort(run)) {
                way(before, run.down().number(), run.up().number()).ifPresent(rest -> {
                    List<PipeRun> ring = new ArrayList<>(List.of(run));
                    ring.addAll(rest);
                    rings.add(ring);
                });
                before.add(run);
            }
        }
        return rings;
    }

    /** A pipe whose ends are one junction only because it is short goes round nothing. */
    private static boolean isShort(PipeRun run) {
        return run.up().number() == run.down().number() && run.axis().getLength() <= 2 * NetworkBuilder.SNAP.metres();
    }

    /** The fewest pipes between two junctions (breadth first); empty when there is no way, no pipe when they are one. */
    private static Optional<List<PipeRun>> way(List<PipeRun> runs, int from, int to) {
        Map<Integer, List<PipeRun>> ways = new HashMap<>(Map.of(from, List.of()));
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty() && !ways.containsKey(to)) {
            int here = open.remove();
            List<PipeRun> soFar = ways.getOrDefault(here, List.of());
            for (PipeRun run : runs) {
                int up = run.up().number();
                int down = run.down().number();
                int there = here == up ? down : up;
                if ((here == up || here == down) && !ways.containsKey(there)) {
                    List<PipeRun> way = new ArrayList<>(soFar);
                    way.add(run);
                    ways.put(there, way);
                    open.add(there);
                }
            }
        }
        return Optional.ofNullable(ways.get(to));
    }
}
