package org.fallrule.terrain.flow;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Area;
import org.locationtech.jts.geom.Coordinate;

/** Hands the area of each cell down the filled ground, from high to low, until a place takes it in or it leaves the grid. */
final class AreaSum {
    private final GroundGrid grid;
    private final List<Coordinate> places;

    /** The number of the place that takes in a node's water, counted from 1; 0 for none. */
    private final int[] takenBy;

    private final Flood flood;
    private final double[] squareMetres;
    private final boolean[] isCut;
    private final double[] sums;
    private final boolean[] cuts;

    AreaSum(GroundGrid grid, List<Coordinate> places, double radius) {
        this.grid = grid;
        this.places = List.copyOf(places);
        this.takenBy = new int[grid.size()];
        for (int i = 0; i < places.size(); i++) {
            take(places.get(i), i + 1, radius);
        }
        this.flood = new Flood(grid, node -> takenBy[node] > 0);
        this.squareMetres = new double[grid.size()];
        this.isCut = new boolean[grid.size()];
        this.sums = new double[places.size()];
        this.cuts = new boolean[places.size()];
        handDown();
    }

    private void take(Coordinate place, int number, double radius) {
        grid.nodeAt(place).ifPresent(node -> takenBy[node] = number);
        Coordinate cells = grid.inCells(place);
        double reach = radius / grid.spacing();
        int top = (int) Math.min(grid.rows() - 1.0, Math.floor(cells.y + reach));
        int right = (int) Math.min(grid.columns() - 1.0, Math.floor(cells.x + reach));
        for (int row = (int) Math.max(0, Math.ceil(cells.y - reach)); row <= top; row++) {
            for (int column = (int) Math.max(0, Math.ceil(cells.x - reach)); column <= right; column++) {
                int node = grid.node(column, row);
                double distance = grid.place(node).distance(place);
                if (distance <= radius && !grid.isHole(node) && isNearer(node, distance)) {
                    takenBy[node] = number;
                }
            }
        }
    }

    private boolean isNearer(int node, double distance) {
        return takenBy[node] == 0 || distance < grid.place(node).distance(places.get(takenBy[node] - 1));
    }

    private void handDown() {
        Facets facets = new Facets(grid, flood);
        double cell = grid.spacing() * grid.spacing();
        for (int position = flood.count() - 1; position >= 0; position--) {
            int node = flood.inOrder(position);
            boolean isRim = grid.isOnRim(node);
            squareMetres[node] = isRim ? 0 : squareMetres[node] + cell;
            isCut[node] |= isRim;
            if (takenBy[node] > 0) {
                sums[takenBy[node] - 1] += squareMetres[node];
                cuts[takenBy[node] - 1] |= isCut[node];
            } else if (facets.look(node)) {
                double share = facets.diagonalShare();
                give(node, facets.straight(), 1 - share);
                give(node, facets.diagonal(), share);
            } else if (flood.next(node) >= 0) {
                give(node, flood.next(node), 1);
            }
        }
    }

    private void give(int from, int to, double share) {
        if (share > 0) {
            squareMetres[to] += share * squareMetres[from];
            isCut[to] |= isCut[from];
        }
    }

    List<ContributingArea> areas() {
        List<ContributingArea> areas = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            areas.add(new ContributingArea(places.get(i), new Area(sums[i]), cuts[i]));
        }
        return areas;
    }
}
