package org.fallrule.terrain.flow;

import java.util.Arrays;

/**
 * Nodes, lowest level first; of equal level, the one that came in first. A heap on arrays with four children to each parent:
 * half as high as a binary one, and the children lie side by side in memory.
 */
final class NodeHeap {
    private static final int CHILDREN = 4;

    private int[] nodes = new int[1024];
    private double[] levels = new double[1024];
    private int[] arrivals = new int[1024];
    private int arrived;
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    /** The level of the node that comes next. */
    double lowest() {
        return levels[0];
    }

    void add(int node, double level) {
        if (size == nodes.length) {
            nodes = Arrays.copyOf(nodes, 2 * size);
            levels = Arrays.copyOf(levels, 2 * size);
            arrivals = Arrays.copyOf(arrivals, 2 * size);
        }
        int at = size++;
        while (at > 0 && level < levels[(at - 1) / CHILDREN]) {
            move((at - 1) / CHILDREN, at);
            at = (at - 1) / CHILDREN;
        }
        set(at, node, level, arrived++);
    }

    int poll() {
        int first = nodes[0];
        size--;
        double level = levels[size];
        int arrival = arrivals[size];
        int at = 0;
        int child = lowestChild(0);
        while (child < size && isBefore(child, level, arrival)) {
            move(child, at);
            at = child;
            child = lowestChild(at);
        }
        set(at, nodes[size], level, arrival);
        return first;
    }

    private int lowestChild(int at) {
        int lowest = CHILDREN * at + 1;
        int end = Math.min(lowest + CHILDREN, size);
        for (int child = lowest + 1; child < end; child++) {
            if (isBefore(child, levels[lowest], arrivals[lowest])) {
                lowest = child;
            }
        }
        return lowest;
    }

    private boolean isBefore(int at, double level, int arrival) {
        return levels[at] < level || (levels[at] == level && arrivals[at] < arrival);
    }

    private void move(int from, int to) {
        set(to, nodes[from], levels[from], arrivals[from]);
    }

    private void set(int at, int node, double level, int arrival) {
        nodes[at] = node;
        levels[at] = level;
        arrivals[at] = arrival;
    }
}
