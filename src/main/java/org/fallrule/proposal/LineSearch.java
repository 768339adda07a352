package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;

/**
 * The way of least cost from an inlet: to an outfall, or to a drain that there is. Dijkstra's algorithm (E. W. Dijkstra, A note on
 * two problems in connexion with graphs, Numerische Mathematik 1, 1959) over the places of a {@link Lattice} and the direction that
 * each is reached in, so that a turn has its fitting and none is sharper than 45 degrees. Along the way the highest invert that
 * cover and least slope allow is carried; it says how deep the trench is, and which outfalls the line reaches by its fall.
 *
 * <p>The way that reaches a place cheapest is kept, though a dearer one might reach it higher: the search can miss a line
 * that gains fall by a detour.
 */
final class LineSearch {
    private static final int DIRECTIONS = 8;
    /** Stands for the direction at an inlet, from where any may be taken. */
    private static final int ANY = DIRECTIONS;

    private static final int NONE = -1;

    private final Field field;
    private final Heights heights;
    private final Lattice lattice;
    private final Coordinate inlet;
    private final double slope;
    private final double[] cost;
    private final double[] level;
    private final int[] before;
    private final boolean[] settled;
    private final double[] stepCost;
    private final double[] ground;
    private final double[] highest;
    private Predicate<Coordinate> tooNear = place -> false;

    /**
     * A search from one inlet.
     *
     * @param lattice of which the inlet is a place
     */
    LineSearch(Field field, Lattice lattice, Feature inlet) {
        this.field = field;
        this.heights = field.heights();
        this.lattice = lattice;
        this.inlet = inlet.geometry().getCoordinate();
        this.slope = heights.leastSlope();
        int states = lattice.size() * (DIRECTIONS + 1);
        this.cost = new double[states];
        this.level = new double[states];
        this.before = new int[states];
        this.settled = new boolean[states];
        this.stepCost = new double[lattice.size() * DIRECTIONS];
        Arrays.fill(stepCost, -1);
        this.ground = new double[lattice.size()];
        this.highest = new double[lattice.size()];
        Arrays.fill(ground, Double.NaN);
        Arrays.fill(highest, Double.NaN);
    }

    /**
     * A way found.
     *
     * @param axis from the inlet on
     * @param cost what it costs
     * @param end where it ends
     */
    record Found<E>(List<Coordinate> axis, double cost, E end) {}

    /**
     * An end of the way within reach of a place.
     *
     * @param way from that place on to it
     * @param cost from that place to it, all told
     * @param end what it is
     */
    record Last<E>(List<Coordinate> way, double cost, E end) {}

    /** Finds the ends within reach of a place. */
    interface Ends<E> {
        /**
         * The ends within reach of a place.
         *
         * @param place a place that the line comes to
         * @param direction the direction it comes in; any from the inlet itself
         * @param level the highest invert there
         */
        List<Last<E>> from(Coordinate place, int direction, double level);
    }

    /** Ground too near to something for the line to run, but for the step that ends it. */
    LineSearch keepingOff(Predicate<Coordinate> near) {
        this.tooNear = near;
        return this;
    }

    /** The cheapest way to any end. */
    <E> Optional<Found<E>> to(Ends<E> ends) {
        Optional<Double> start = heights.atInlet(inlet);
        if (start.isEmpty()) {
            return Optional.empty();
        }
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(settled, false);
        int first = lattice.start() * (DIRECTIONS + 1) + ANY;
        cost[first] = 0;
        level[first] = start.get();
        before[first] = NONE;
        PriorityQueue<Open> open = new PriorityQueue<>();
        open.add(new Open(0, first));
        Optional<Found<E>> best = Optional.empty();
        while (!open.isEmpty()) {
            Open next = open.remove();
            if (best.isPresent() && best.get().cost() <= next.cost) {
                return best;
            }
            if (!settled[next.state]) {
                settled[next.state] = true;
                best = better(best, next.state, ends);
                spread(next.state, open);
            }
        }
        return best;
    }

    private record Open(double cost, int state) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            int byCost = Double.compare(cost, other.cost);
            return byCost != 0 ? byCost : Integer.compare(state, other.state);
        }
    }

    private <E> Optional<Found<E>> better(Optional<Found<E>> best, int state, Ends<E> ends) {
        Optional<Found<E>> better = best;
        int direction = state % (DIRECTIONS + 1);
        for (Last<E> last : ends.from(placeOf(state), direction, level[state])) {
            double all = cost[state] + last.cost();
            if (better.isEmpty() || all < better.get().cost()) {
                List<Coordinate> axis = way(state);
                axis.addAll(last.way());
                better = Optional.of(new Found<>(straightened(axis), all, last.end()));
            }
        }
        return better;
    }

    private Coordinate placeOf(int state) {
        return state / (DIRECTIONS + 1) == lattice.start() ? inlet : lattice.place(state / (DIRECTIONS + 1));
    }

    private List<Coordinate> way(int state) {
        List<Coordinate> way = new ArrayList<>();
        for (int at = state; at != NONE; at = before[at]) {
            way.add(0, placeOf(at));
        }
        return way;
    }

    /** Without the places at which it runs straight on. */
    static List<Coordinate> straightened(List<Coordinate> way) {
        List<Coordinate> bends = new ArrayList<>(List.of(way.get(0)));
        for (int i = 1; i < way.size() - 1; i++) {
            Coordinate from = bends.get(bends.size() - 1);
            Coordinate at = way.get(i);
            Coordinate to = way.get(i + 1);
            double across = (at.x - from.x) * (to.y - at.y) - (at.y - from.y) * (to.x - at.x);
            if (Math.abs(across) > 1e-6 * from.distance(at) * at.distance(to)) {
                bends.add(at);
            }
        }
        bends.add(way.get(way.size() - 1));
        return bends;
    }

    private void spread(int state, PriorityQueue<Open> open) {
        int node = state / (DIRECTIONS + 1);
        int from = state % (DIRECTIONS + 1);
        for (int direction = 0; direction < DIRECTIONS; direction++) {
            int next = lattice.next(node, direction);
            if (next != NONE && mayTurn(from, direction)) {
                step(state, node, from, next, direction, open);
            }
        }
    }

    /** The ground is known wherever a pipe may lie. */
    private void look(int node, Coordinate place) {
        if (Double.isNaN(ground[node])) {
            ground[node] = heights.ground(place).orElseThrow();
            highest[node] = heights.highest(place).orElseThrow();
        }
    }

    static boolean mayTurn(int from, int to) {
        return from == ANY || Lattice.turn(from, to) <= 1;
    }

    private void step(int state, int node, int from, int next, int direction, PriorityQueue<Open> open) {
        int reached = next * (DIRECTIONS + 1) + direction;
        double flat = settled[reached] ? Double.POSITIVE_INFINITY : stepCost(node, next, direction);
        if (flat == Double.POSITIVE_INFINITY) {
            return;
        }
        Coordinate there = lattice.place(next);
        look(next, there);
        look(node, placeOf(state));
        double length = lattice.step(direction);
        double invert = Math.min(level[state] - slope * length, highest[next]);
        double depth = (ground[node] - level[state] + ground[next] - invert) / 2;
        double all = cost[state] + flat + field.trenchPerMetre(depth) * length + turning(from, direction);
        if (all < cost[reached]) {
            cost[reached] = all;
            level[reached] = invert;
            before[reached] = state;
            open.add(new Open(all, reached));
        }
    }

    double turning(int from, int to) {
        return from == ANY ? 0 : Lattice.turn(from, to) * field.fitting();
    }

    /** What a step costs without its trench, looked at once; beyond all measure where no pipe may lie. */
    private double stepCost(int node, int next, int direction) {
        int key = node * DIRECTIONS + direction;
        if (stepCost[key] < 0) {
            Coordinate from = node == lattice.start() ? inlet : lattice.place(node);
            Coordinate to = lattice.place(next);
            boolean open = !tooNear.test(to) && field.isOpen(from, to, inlet);
            stepCost[key] = open ? field.cost(from, to) : Double.POSITIVE_INFINITY;
        }
        return stepCost[key];
    }
}
