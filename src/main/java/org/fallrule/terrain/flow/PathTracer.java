package org.fallrule.terrain.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Traces water down. On sloping ground a step of half a cell goes against the gradient, taken by central differences over
 * one cell of the bilinear surface, which favours none of the grid's directions and is exact on a plane; it is shortened
 * while it would not lead lower. Where no step leads lower (water, level ground, the bottom of a sharp valley) the path goes
 * to the lowest corner of its cell and from node to node in the order of flooding, which stays in the water and leads to its
 * spill.
 */
final class PathTracer {
    private static final double STEP = 0.5;
    private static final int SHORTENINGS = 3;

    private final FilledGround ground;
    private final GroundGrid grid;
    private final List<Coordinate> path = new ArrayList<>();

    PathTracer(FilledGround ground) {
        this.ground = ground;
        this.grid = ground.grid();
    }

    Optional<DownhillPath> from(Coordinate place) {
        Coordinate at = grid.inCells(place);
        double level = ground.levelInCells(at);
        if (Double.isNaN(level)) {
            return Optional.empty();
        }
        at.setZ(level);
        path.add(at);
        // A path of steps that hardly fall could go on for very long; past this many it keeps to the nodes.
        int steps = 50 * (grid.columns() + grid.rows());
        while (!isOnRim(at)) {
            Optional<Coordinate> step = steps-- > 0 ? downhill(at) : Optional.empty();
            at = step.isPresent() ? step.get() : nextNode(at);
            path.add(at);
        }
        return Optional.of(result(at));
    }

    private Optional<Coordinate> downhill(Coordinate at) {
        double half = 0.5;
        double dx = level(at.x + half, at.y) - level(at.x - half, at.y);
        double dy = level(at.x, at.y + half) - level(at.x, at.y - half);
        double steepness = Math.hypot(dx, dy);
        if (!(steepness > 0)) {
            return Optional.empty();
        }
        double length = STEP;
        for (int i = 0; i <= SHORTENINGS; i++) {
            Coordinate step = new Coordinate(at.x - length * dx / steepness, at.y - length * dy / steepness);
            step.setZ(level(step.x, step.y));
            if (step.getZ() < at.getZ()) {
                return Optional.of(step);
            }
            length /= 2;
        }
        return Optional.empty();
    }

    /** From between nodes to the lowest corner of the cell; from a node to the next one on the way out. */
    private Coordinate nextNode(Coordinate at) {
        int column = (int) Math.rint(at.x);
        int row = (int) Math.rint(at.y);
        if (at.x == column && at.y == row) {
            return atNode(ground.next(grid.node(column, row)));
        }
        int lowest = -1;
        for (int corner = 0; corner < 4; corner++) {
            int x = (int) (corner % 2 == 0 ? Math.floor(at.x) : Math.ceil(at.x));
            int y = (int) (corner / 2 == 0 ? Math.floor(at.y) : Math.ceil(at.y));
            int node = grid.node(x, y);
            lowest = lowest < 0 || ground.level(node) < ground.level(lowest) ? node : lowest;
        }
        Coordinate node = atNode(lowest);
        node.setZ(Math.min(node.getZ(), at.getZ()));
        return node;
    }

    private Coordinate atNode(int node) {
        Coordinate place = new Coordinate(grid.columnOf(node), grid.rowOf(node));
        place.setZ(ground.level(node));
        return place;
    }

    private double level(double x, double y) {
        return ground.levelInCells(new Coordinate(x, y));
    }

    /** Whether no central difference can be taken any more: beside the edge or a hole; or on a node where water leaves. */
    private boolean isOnRim(Coordinate at) {
        boolean isNode = at.x == Math.rint(at.x) && at.y == Math.rint(at.y);
        if (isNode && ground.next(grid.node((int) at.x, (int) at.y)) < 0) {
            return true;
        }
        return isAtEdge(at) || isAtHole(at);
    }

    private boolean isAtEdge(Coordinate at) {
        return !(at.x > 0.5 && at.y > 0.5 && at.x < grid.columns() - 1.5 && at.y < grid.rows() - 1.5);
    }

    private boolean isAtHole(Coordinate at) {
        return Double.isNaN(level(at.x + 0.5, at.y))
                || Double.isNaN(level(at.x - 0.5, at.y))
                || Double.isNaN(level(at.x, at.y + 0.5))
                || Double.isNaN(level(at.x, at.y - 0.5));
    }

    private DownhillPath result(Coordinate last) {
        if (path.size() == 1) {
            path.add(last.copy());
        }
        Coordinate origin = grid.place(0);
        Coordinate[] line = path.stream()
                .map(cells -> new Coordinate(
                        origin.x + cells.x * grid.spacing(), origin.y + cells.y * grid.spacing(), cells.getZ()))
                .toArray(Coordinate[]::new);
        return new DownhillPath(
                new GeometryFactory().createLineString(line),
                isAtEdge(last) ? DownhillPath.End.EDGE : DownhillPath.End.HOLE);
    }
}
