package org.fallrule.terrain.flow;

import java.util.Arrays;

/** Nodes, lowest level first; of equal level, the one that came in first. A binary heap on arrays. */
final class NodeHeap {
    private final double[] level;
    private int[] nodes = new int[1024];
    private long[] arrivals = new long[1024];
    private long arrived;
    private int size;

    /** @param level the level of each node; that of a node in the heap must not change */
    NodeHeap(double[] level) {
        this.level = level;
    }

    boolean isEmpty() {
        return size == 0;
    }

    void add(int node) {
        if (size == nodes.length) {
            nodes = Arrays.copyOf(nodes, 2 * size);
            arrivals = Arrays.copyOf(arrivals, 2 * size);
        }
        int at = size++;
        long arrival = arrived++;
        while (at > 0 && isBefore(node, arrival, (at - 1) / 2)) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        nodes[at] = node;
        arrivals[at] = arrival;
    }

    int poll() {
        int first = nodes[0];
        int node = nodes[--size];
        long arrival = arrivals[size];
        int at = 0;
        int child = lowerChild(at);
        while (child < size && !isBefore(node, arrival, child)) {
            move(child, at);
            at = child;
            child = lowerChild(at);
        }
        nodes[at] = node;
        arrivals[at] = arrival;
        return first;
    }

    private int lowerChild(int at) {
        int child = 2 * at + 1;
        return child + 1 < size && isBefore(nodes[child + 1], arrivals[child + 1], child) ? child + 1 : child;
    }

    private boolean isBefore(int node, long arrival, int at) {
        int compared = Double.compare(level[node], level[nodes[at]]);
        return compared < 0 || (compared == 0 && arrival < arrivals[at]);
    }

    private void move(int from, int to) {
        nodes[to] = nodes[from];
        arrivals[to] = arrivals[from];
    }
}
