package org.fallrule.terrain.flow;

import java.util.Arrays;

/** Nodes, the one that came in first first. A ring on an array whose length is a power of two. */
final class NodeQueue {
    private int[] nodes = new int[1024];
    private int first;
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void add(int node) {
        if (size == nodes.length) {
            int[] more = Arrays.copyOfRange(nodes, first, first + 2 * size);
            System.arraycopy(nodes, 0, more, size - first, first);
            nodes = more;
            first = 0;
        }
        nodes[(first + size++) & (nodes.length - 1)] = node;
    }

    int poll() {
        int node = nodes[first];
        first = (first + 1) & (nodes.length - 1);
        size--;
        return node;
    }
}
