package org.fallrule.terrain.flow;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The outline of a set of cells, from those of their sides that have a cell of the set on one side only. */
final class CellOutline {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private CellOutline() {}

    static Geometry of(GroundGrid grid, int[] nodes) {
        Set<Integer> cells = new HashSet<>();
        for (int node : nodes) {
            cells.add(node);
        }
        List<LineString> sides = new ArrayList<>();
        for (int node : nodes) {
            for (int direction = 0; direction < Direction.COUNT; direction += 2) {
                int next = grid.neighbour(node, direction);
                if (next < 0 || !cells.contains(next)) {
                    sides.add(side(grid.inCells(grid.place(node)), direction, grid));
                }
            }
        }
        Polygonizer polygons = new Polygonizer(true);
        polygons.add(sides);
        return polygons.getGeometry();
    }

    /** Ends are computed from whole half-cells, so that sides which meet do so exactly. */
    private static LineString side(Coordinate cell, int direction, GroundGrid grid) {
        double x = 2 * Math.rint(cell.x) + Direction.DX[direction];
        double y = 2 * Math.rint(cell.y) + Direction.DY[direction];
        double acrossX = Direction.DY[direction];
        double acrossY = Direction.DX[direction];
        return GEOMETRY.createLineString(
                new Coordinate[] {corner(x - acrossX, y - acrossY, grid), corner(x + acrossX, y + acrossY, grid)});
    }

    private static Coordinate corner(double halvesX, double halvesY, GroundGrid grid) {
        Coordinate origin = grid.place(0);
        double half = grid.spacing() / 2;
        return new Coordinate(origin.x + halvesX * half, origin.y + halvesY * half);
    }
}
