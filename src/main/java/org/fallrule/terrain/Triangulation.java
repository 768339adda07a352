package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.tinfour.common.IConstraint;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * The Delaunay triangulation of points, constrained to keep straight pieces of line as edges (C. L. Lawson, "Software for C1 surface
 * interpolation", 1977; L. P. Chew, "Constrained Delaunay triangulations", Algorithmica 4, 1989; both as implemented by Tinfour).
 *
 * @param facets the triangles; their corners are the very coordinates that were given
 * @param fixed the edges that lie on a given line
 * @param fixedEnds their ends
 */
record Triangulation(List<Facet> facets, Set<Edge> fixed, Set<Coordinate> fixedEnds) {
    private static final Triangulation NONE = new Triangulation(List.of(), Set.of(), Set.of());

    /**
     * Triangulates points with finite Z.
     *
     * @param points in plan no two the same
     * @param pieces straight pieces of line between points of the list, which meet only at points of the list
     */
    static Triangulation of(List<Coordinate> points, List<Edge> pieces) {
        if (points.size() < 3) {
            return NONE;
        }
        List<Vertex> vertices = new ArrayList<>(points.size());
        Map<Coordinate, Vertex> vertexAt = new LinkedHashMap<>();
        for (Coordinate point : points) {
            Vertex vertex = new Vertex(point.x, point.y, point.getZ(), vertices.size());
            vertices.add(vertex);
            vertexAt.putIfAbsent(point, vertex);
        }
        IncrementalTin tin = new IncrementalTin(nominalSpacing(points));
        tin.add(vertices, null);
        if (!tin.isBootstrapped()) {
            return NONE;
        }
        List<IConstraint> constraints = new ArrayList<>();
        for (Edge piece : pieces) {
            constraints.add(constraint(vertexAt, piece));
        }
        if (!constraints.isEmpty()) {
            tin.addConstraints(constraints, false);
        }
        List<Facet> facets = new ArrayList<>();
        TriangleCollector.visitSimpleTriangles(tin, triangle -> add(triangle, points, facets));
        tin.dispose();
        Set<Coordinate> ends = new HashSet<>();
        pieces.forEach(piece -> ends.addAll(List.of(piece.a(), piece.b())));
        return new Triangulation(facets, new HashSet<>(pieces), ends);
    }

    private static LinearConstraint constraint(Map<Coordinate, Vertex> vertexAt, Edge piece) {
        Vertex a = vertexAt.get(piece.a());
        Vertex b = vertexAt.get(piece.b());
        if (a == null || b == null) {
            throw new IllegalArgumentException("A piece of line ends at no point: " + piece);
        }
        LinearConstraint constraint = new LinearConstraint(List.of(a, b));
        constraint.complete();
        return constraint;
    }

    private static void add(SimpleTriangle triangle, List<Coordinate> points, List<Facet> facets) {
        Facet facet = new Facet(
                points.get(triangle.getVertexA().getIndex()),
                points.get(triangle.getVertexB().getIndex()),
                points.get(triangle.getVertexC().getIndex()));
        if (facet.planArea() > 0) {
            facets.add(facet);
        }
    }

    private static double nominalSpacing(List<Coordinate> points) {
        Envelope extent = new Envelope();
        points.forEach(extent::expandToInclude);
        return Math.max(1e-3, Math.sqrt(Math.max(extent.getArea(), 1e-6) / points.size()));
    }
}
