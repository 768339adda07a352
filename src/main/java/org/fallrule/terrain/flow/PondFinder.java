package org.fallrule.terrain.flow;

import java.util.ArrayList;
import java.util.List;

/** Gathers the nodes under water into ponds: neighbours under water share one level, so they are one pond. */
final class PondFinder {
    private final GroundGrid grid;
    private final Flood flood;

    /** The number of each node's pond, counted from 1; 0 on dry ground. */
    private final int[] pondOf;

    private final List<Pond> ponds = new ArrayList<>();

    PondFinder(GroundGrid grid, Flood flood) {
        this.grid = grid;
        this.flood = flood;
        this.pondOf = new int[grid.size()];
        for (int position = 0; position < flood.count(); position++) {
            int node = flood.inOrder(position);
            if (isUnderWater(node) && pondOf[node] == 0) {
                ponds.add(pond(gather(node)));
            }
        }
    }

    List<Pond> ponds() {
        return ponds;
    }

    int[] pondOf() {
        return pondOf;
    }

    private boolean isUnderWater(int node) {
        return flood.level(node) > grid.height(node);
    }

    private List<Integer> gather(int start) {
        int number = ponds.size() + 1;
        List<Integer> nodes = new ArrayList<>(List.of(start));
        pondOf[start] = number;
        for (int i = 0; i < nodes.size(); i++) {
            for (int direction = 0; direction < Direction.COUNT; direction++) {
                int next = grid.neighbour(nodes.get(i), direction);
                if (next >= 0 && pondOf[next] == 0 && isUnderWater(next)) {
                    pondOf[next] = number;
                    nodes.add(next);
                }
            }
        }
        return nodes;
    }

    private Pond pond(List<Integer> nodes) {
        int[] all = nodes.stream().mapToInt(Integer::intValue).toArray();
        return new Pond(grid, all, spill(all[0]), flood.level(all[0]));
    }

    private int spill(int underWater) {
        int node = underWater;
        while (isUnderWater(node)) {
            node = flood.next(node);
        }
        return node;
    }
}
