package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Heights along a skeleton whose ends are known: at each inner point the grades of the branches that meet there add up to
 * nothing, as heads do in a network of equal conductors. Solved by conjugate gradients (M. R. Hestenes and E. Stiefel,
 * "Methods of conjugate gradients for solving linear systems", 1952).
 */
final class SkeletonHeights {
    private static final int MOST_STEPS = 10_000;
    private static final double EXACT = 1e-10;

    /** Metres; a point so close to the level it lies in gives no shape. */
    private static final double LEVEL = 1e-4;

    /** Metres; a middle so close to a point that is there already is that point. */
    private static final double SAME = 0.001;

    private record Link(int from, int to, double conductance) {}

    private final Map<Edge, Integer> nodes = new LinkedHashMap<>();
    private final List<Coordinate> places = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<double[]> anchors = new ArrayList<>();

    /** Takes in the middle of an edge, which lies in an area of some level. */
    void start(Edge edge, double level) {
        if (nodes.putIfAbsent(edge, places.size()) == null) {
            places.add(edge.middle(level));
            anchors.add(new double[2]);
        }
    }

    /** Joins the middles of two edges that share a triangle; the second may come in later. */
    void link(Edge one, Edge other) {
        int from = node(one);
        int to = node(other);
        links.add(new Link(from, to, conductance(places.get(from), places.get(to))));
    }

    /** Joins the middle of an edge to a point of known height. */
    void anchor(Edge edge, Coordinate known) {
        int node = node(edge);
        double conductance = conductance(places.get(node), known);
        anchors.get(node)[0] += conductance;
        anchors.get(node)[1] += conductance * (known.getZ() - places.get(node).getZ());
    }

    private static double conductance(Coordinate one, Coordinate other) {
        return 1 / Math.max(one.distance(other), SAME / 2);
    }

    private int node(Edge edge) {
        Integer node = nodes.get(edge);
        if (node == null) {
            throw new IllegalStateException("An edge that was not taken in: " + edge);
        }
        return node;
    }

    /** The points that do not stay at their area's level, with their heights. */
    List<Coordinate> shaped() {
        double[] rise = solved();
        List<Coordinate> shaped = new ArrayList<>();
        for (int i = 0; i < rise.length; i++) {
            if (Math.abs(rise[i]) > LEVEL && anchors.get(i)[0] < 1 / SAME) {
                Coordinate place = places.get(i);
                shaped.add(new Coordinate(place.x, place.y, place.getZ() + rise[i]));
            }
        }
        return shaped;
    }

    /** How far each point stands above its area's level. */
    private double[] solved() {
        int count = places.size();
        double[] rise = new double[count];
        double[] residual = new double[count];
        for (int i = 0; i < count; i++) {
            residual[i] = anchors.get(i)[1];
        }
        double[] direction = residual.clone();
        double size = dot(residual, residual);
        double enough = size * EXACT * EXACT;
        for (int step = 0; step < MOST_STEPS && size > enough && size > 0; step++) {
            double[] image = image(direction);
            double length = size / dot(direction, image);
            for (int i = 0; i < count; i++) {
                rise[i] += length * direction[i];
                residual[i] -= length * image[i];
            }
            double next = dot(residual, residual);
            for (int i = 0; i < count; i++) {
                direction[i] = residual[i] + next / size * direction[i];
            }
            size = next;
        }
        return rise;
    }

    private double[] image(double[] rise) {
        double[] image = new double[rise.length];
        for (int i = 0; i < rise.length; i++) {
            image[i] = anchors.get(i)[0] * rise[i];
        }
        for (Link link : links) {
            double flow = link.conductance * (rise[link.from] - rise[link.to]);
            image[link.from] += flow;
            image[link.to] -= flow;
        }
        return image;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
