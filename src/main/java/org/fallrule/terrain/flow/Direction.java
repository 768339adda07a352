package org.fallrule.terrain.flow;

/** The eight neighbours of a node, counterclockwise from the east; even ones are straight, odd ones diagonal. */
final class Direction {
    static final int COUNT = 8;
    static final int[] DX = {1, 1, 0, -1, -1, -1, 0, 1};
    static final int[] DY = {0, 1, 1, 1, 0, -1, -1, -1};

    private Direction() {}
}
