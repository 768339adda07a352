package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.tinfour.common.IConstraint;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * The Delaunay triangulation of points, constrained to keep straight pieces of line as edges (C. L. Lawson, "Software for C1
 * surface interpolation", 1977; L. P. Chew, "Constrained Delaunay triangulations", Algorithmica 4, 1989; both as implemented
 * by Tinfour).
 *
 * @param facets the triangles; their corners are the very coordinates that were given
 * @param fixed the edges that lie on a given line
 * @param fixedEnds their ends
 * @param looseLines how many of the lines, the shortest, could not be kept as edges, as the library keeps {@value
 *     #MOST_LINES} at most
 */
record Triangulation(List<Facet> facets, Set<Edge> fixed, Set<Coordinate> fixedEnds, int looseLines) {
    private static final Triangulation NONE = new Triangulation(List.of(), Set.of(), Set.of(), 0);
    private static final int MOST_LINES = 8190;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

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
        List<LineString> lines = lines(pieces);
        List<IConstraint> constraints = new ArrayList<>();
        lines.stream().limit(MOST_LINES).forEach(line -> constraints.add(constraint(vertexAt, line)));
        if (!constraints.isEmpty()) {
            tin.addConstraints(constraints, false);
        }
        List<Facet> facets = new ArrayList<>();
        TriangleCollector.visitSimpleTriangles(tin, triangle -> add(triangle, points, facets));
        tin.dispose();
        Set<Coordinate> ends = new HashSet<>();
        pieces.forEach(piece -> ends.addAll(List.of(piece.a(), piece.b())));
        return new Triangulation(facets, new HashSet<>(pieces), ends, Math.max(0, lines.size() - MOST_LINES));
    }

    /** The pieces joined to lines as far as no third one meets them, the longest first. */
    private static List<LineString> lines(List<Edge> pieces) {
        LineMerger merger = new LineMerger();
        for (Edge piece : pieces) {
            merger.add(GEOMETRY.createLineString(new Coordinate[] {piece.a(), piece.b()}));
        }
        List<LineString> lines = new ArrayList<>();
        for (Object line : merger.getMergedLineStrings()) {
            lines.add((LineString) line);
        }
        lines.sort(Comparator.comparingDouble(LineString::getLength).reversed());
        return lines;
    }

    private static LinearConstraint constraint(Map<Coordinate, Vertex> vertexAt, LineString line) {
        List<Vertex> vertices = new ArrayList<>();
        for (Coordinate place : line.getCoordinates()) {
            Vertex vertex = vertexAt.get(place);
            if (vertex == null) {
                throw new IllegalArgumentException("A piece of line ends at no point: " + place);
            }
            vertices.add(vertex);
        }
        LinearConstraint constraint = new LinearConstraint(vertices);
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
