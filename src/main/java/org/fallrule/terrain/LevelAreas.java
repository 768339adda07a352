package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/**
 * Gives shape to the level triangles that come where a contour bends: all three corners lie on one level, though a ridge or
 * a valley runs there. The skeleton of such an area joins the middles of the triangles' inner edges (the chordal axis: L.
 * Prasad, "Morphological analysis of shapes", CNLS Newsletter 139, 1997; points along the skeleton of the space between
 * contours as the remedy: D. Thibault and C. M. Gold, "Terrain reconstruction from contours by skeleton construction",
 * GeoInformatica 4(4), 2000; both from memory). From the tip of the bend, at the contour's level, to where the skeleton
 * leaves for a point of another level, heights are linear along it, and where it forks they are the means that keep it so on
 * each branch. The points are then triangulated with the rest.
 *
 * <p>Limits: heights stay between the levels that the skeleton joins, so the error is less than the contour interval
 * wherever the ground has no top or hollow between two contours. On the axis of a symmetric ridge of even fall it is nil.
 * Where every way out is of the same level (a summit or hollow without a spot, a pass between two equal contours) the area
 * stays level.
 */
final class LevelAreas {
    /** Splitting may leave new level triangles beside the old; few remain after the second time. */
    private static final int ROUNDS = 3;

    private final Triangulation tin;
    private final List<Facet> facets;
    private final Set<Coordinate> onContours;
    private final Map<Edge, List<Facet>> facetsAt = new HashMap<>();
    private final SkeletonHeights heights = new SkeletonHeights();

    private LevelAreas(Triangulation tin, Set<Coordinate> onContours) {
        this.tin = tin;
        this.facets = tin.facets();
        this.onContours = onContours;
        for (Facet facet : facets) {
            for (Edge edge : edges(facet)) {
                facetsAt.computeIfAbsent(edge, key -> new ArrayList<>(2)).add(facet);
            }
        }
    }

    /** The triangulation of points and pieces of line, its level areas shaped. */
    static Triangulation shaped(List<Coordinate> points, List<Edge> pieces, List<Edge> ofContours) {
        Set<Coordinate> onContours = new HashSet<>();
        for (Edge edge : ofContours) {
            onContours.add(edge.a());
            onContours.add(edge.b());
        }
        List<Coordinate> all = new ArrayList<>(points);
        Triangulation tin = Triangulation.of(all, pieces);
        for (int round = 0; round < ROUNDS && !onContours.isEmpty(); round++) {
            List<Coordinate> added = new LevelAreas(tin, onContours).skeleton();
            if (added.isEmpty()) {
                break;
            }
            all.addAll(added);
            tin = Triangulation.of(all, pieces);
        }
        return tin;
    }

    private List<Coordinate> skeleton() {
        for (Facet facet : facets) {
            if (isLevelArea(facet)) {
                link(facet);
            }
        }
        return heights.shaped();
    }

    private boolean isLevelArea(Facet facet) {
        return facet.isLevel()
                && onContours.contains(facet.a())
                && onContours.contains(facet.b())
                && onContours.contains(facet.c());
    }

    private static List<Edge> edges(Facet facet) {
        return List.of(new Edge(facet.a(), facet.b()), new Edge(facet.b(), facet.c()), new Edge(facet.c(), facet.a()));
    }

    private void link(Facet facet) {
        List<Edge> inner = edges(facet).stream()
                .filter(edge -> !tin.fixed().contains(edge))
                .toList();
        double level = facet.a().getZ();
        for (Edge edge : inner) {
            heights.start(edge, level);
            linkOutward(edge);
        }
        if (inner.size() == 1) {
            heights.anchor(inner.get(0), opposite(facet, inner.get(0)));
        }
        for (int i = 0; i < inner.size(); i++) {
            for (int j = i + 1; j < inner.size(); j++) {
                heights.link(inner.get(i), inner.get(j));
            }
        }
    }

    private void linkOutward(Edge edge) {
        for (Facet beyond : facetsAt.getOrDefault(edge, List.of())) {
            if (!isLevelArea(beyond)) {
                heights.anchor(edge, opposite(beyond, edge));
            }
        }
    }

    private static Coordinate opposite(Facet facet, Edge edge) {
        for (Coordinate corner : List.of(facet.a(), facet.b())) {
            if (!corner.equals2D(edge.a()) && !corner.equals2D(edge.b())) {
                return corner;
            }
        }
        return facet.c();
    }
}
