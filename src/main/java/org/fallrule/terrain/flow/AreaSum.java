package org.fallrule.terrain.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;

/** Hands the area of each cell down the filled ground until a place takes it in or it leaves the grid. */
final class AreaSum {
    private final GroundGrid grid;
    private final List<Coordinate> places;

    /** The number of the place that takes in a node's water, counted from 1; 0 for none. */
    private final int[] takenBy;

    private final Function<Coordinate, Optional<String>> label;
    private final Flood flood;
    private final List<String> labels = new ArrayList<>();

    /** For each label the square metres at each node that its rain fell on. */
    private final List<double[]> squareMetres = new ArrayList<>();

    private final LongestWays ways;
    private final boolean[] isCut;
    private final List<Map<String, Double>> sums = new ArrayList<>();
    private final boolean[] cuts;
    private final ContributingArea.FlowWay[] farthest;

    AreaSum(FilledGround ground, List<Coordinate> places, double radius, Function<Coordinate, Optional<String>> label) {
        this.grid = ground.grid();
        this.label = label;
        this.places = List.copyOf(places);
        this.takenBy = new int[grid.size()];
        for (int i = 0; i < places.size(); i++) {
            take(places.get(i), i + 1, radius);
        }
        this.flood = ground.drainedAt(takenBy);
        this.ways = new LongestWays(grid);
        this.isCut = new boolean[grid.size()];
        this.cuts = new boolean[places.size()];
        this.farthest = new ContributingArea.FlowWay[places.size()];
        Arrays.fill(farthest, new ContributingArea.FlowWay(new Length(0), new Length(0)));
        places.forEach(place -> sums.add(new TreeMap<>()));
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
        Receivers receivers = new Receivers(grid, flood);
        Upstream upstream = new Upstream(grid, takenBy, receivers);
        while (!upstream.isEmpty()) {
            int node = upstream.poll();
            boolean isRim = grid.isOnRim(node);
            isCut[node] |= isRim;
            if (isRim) {
                squareMetres.forEach(areas -> areas[node] = 0);
            } else {
                rainOn(node);
            }
            if (takenBy[node] > 0) {
                takeIn(node, takenBy[node] - 1);
            } else if (receivers.first(node) >= 0) {
                double share = receivers.secondShare(node);
                give(node, receivers.first(node), 1 - share);
                give(node, receivers.second(node), share);
            }
        }
    }

    private void rainOn(int node) {
        label.apply(grid.place(node)).ifPresent(what -> squareMetresOf(what)[node] += grid.spacing() * grid.spacing());
    }

    private double[] squareMetresOf(String what) {
        int at = labels.indexOf(what);
        if (at >= 0) {
            return squareMetres.get(at);
        }
        double[] areas = new double[grid.size()];
        labels.add(what);
        squareMetres.add(areas);
        return areas;
    }

    private void takeIn(int node, int place) {
        for (int i = 0; i < labels.size(); i++) {
            double area = squareMetres.get(i)[node];
            if (area > 0) {
                sums.get(place).merge(labels.get(i), area, Double::sum);
            }
        }
        cuts[place] |= isCut[node];
        ContributingArea.FlowWay way = ways.to(node);
        if (way.length().metres() > farthest[place].length().metres()) {
            farthest[place] = way;
        }
    }

    private void give(int from, int to, double share) {
        if (share > 0) {
            for (double[] areas : squareMetres) {
                areas[to] += share * areas[from];
            }
            isCut[to] |= isCut[from];
        }
        if (share >= 0.5) {
            ways.lead(from, to);
        }
    }

    List<ContributingArea> areas() {
        List<ContributingArea> areas = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            Map<String, Area> byLabel = new TreeMap<>();
            sums.get(i).forEach((what, square) -> byLabel.put(what, new Area(square)));
            double all = sums.get(i).values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            areas.add(new ContributingArea(places.get(i), new Area(all), cuts[i], byLabel, farthest[i]));
        }
        return areas;
    }
}
