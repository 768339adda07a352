package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Triangle;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.tinfour.common.IConstraint;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.HilbertSort;
import org.tinfour.utils.TriangleCollector;

/**
 * The Delaunay triangulation of points, constrained to keep straight pieces of line as edges (C. L. Lawson, "Software for C1
 * surface interpolation", 1977; L. P. Chew, "Constrained Delaunay triangulations", Algorithmica 4, 1989; both as implemented
 * by Tinfour).
 */
final class Triangulation {
    private static final int MOST_LINES = 8190;
    private static final int MANY = 10_000;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final List<Coordinate> points;
    private final int[] corners;
    private final Set<Edge> fixed;
    private final Set<Coordinate> fixedEnds = new HashSet<>();
    private final int looseLines;

    private Triangulation(List<Coordinate> points, int[] corners, List<Edge> pieces, int looseLines) {
        this.points = points;
        this.corners = corners;
        this.fixed = new HashSet<>(pieces);
        this.looseLines = looseLines;
        for (Edge piece : pieces) {
            fixedEnds.add(piece.a());
            fixedEnds.add(piece.b());
        }
    }

    /**
     * Triangulates points with finite Z.
     *
     * @param points in plan no two the same
     * @param pieces straight pieces of line between points of the list, which meet only at points of the list
     */
    static Triangulation of(List<Coordinate> points, List<Edge> pieces) {
        if (points.size() < 3) {
            return new Triangulation(points, new int[0], List.of(), 0);
        }
        List<Vertex> vertices = new ArrayList<>(points.size());
        for (Coordinate point : points) {
            vertices.add(new Vertex(point.x, point.y, point.getZ(), vertices.size()));
        }
        IncrementalTin tin = new IncrementalTin(nominalSpacing(points));
        tin.add(nearAfterNear(vertices), null);
        if (!tin.isBootstrapped()) {
            return new Triangulation(points, new int[0], List.of(), 0);
        }
        List<LineString> lines = lines(pieces);
        if (!lines.isEmpty()) {
            tin.addConstraints(constraints(lines, points, vertices), false);
        }
        int[] corners = corners(tin, points);
        tin.dispose();
        return new Triangulation(points, corners, pieces, Math.max(0, lines.size() - MOST_LINES));
    }

    /**
     * The points in an order in which each lies near the one before it (along a Hilbert curve), so that the place of each is
     * soon found: in any other order the search for it takes longer the more points there are. A few are found soon enough.
     */
    private static List<Vertex> nearAfterNear(List<Vertex> vertices) {
        if (vertices.size() < MANY) {
            return vertices;
        }
        List<Vertex> sorted = new ArrayList<>(vertices);
        new HilbertSort().sort(sorted);
        return sorted;
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

    private static List<IConstraint> constraints(
            List<LineString> lines, List<Coordinate> points, List<Vertex> vertices) {
        Map<Coordinate, Vertex> vertexAt = new HashMap<>();
        for (int i = 0; i < points.size(); i++) {
            vertexAt.putIfAbsent(points.get(i), vertices.get(i));
        }
        List<IConstraint> constraints = new ArrayList<>();
        lines.stream().limit(MOST_LINES).forEach(line -> constraints.add(constraint(vertexAt, line)));
        return constraints;
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

    private static int[] corners(IncrementalTin tin, List<Coordinate> points) {
        IntStream.Builder corners = IntStream.builder();
        TriangleCollector.visitSimpleTriangles(tin, triangle -> {
            int a = triangle.getVertexA().getIndex();
            int b = triangle.getVertexB().getIndex();
            int c = triangle.getVertexC().getIndex();
            if (Triangle.area(points.get(a), points.get(b), points.get(c)) > 0) {
                corners.add(a).add(b).add(c);
            }
        });
        return corners.build().toArray();
    }

    List<Coordinate> points() {
        return points;
    }

    /** How many triangles there are that are not too thin to have an area. */
    int count() {
        return corners.length / 3;
    }

    /** The number of the point at a triangle's corner, corners being counted through, three to each triangle. */
    int corner(int number) {
        return corners[number];
    }

    /** The edges that lie on a given line. */
    Set<Edge> fixed() {
        return Collections.unmodifiableSet(fixed);
    }

    /** Their ends. */
    Set<Coordinate> fixedEnds() {
        return Collections.unmodifiableSet(fixedEnds);
    }

    /** How many of the lines, the shortest, could not be kept as edges, as the library keeps {@value #MOST_LINES} at most. */
    int looseLines() {
        return looseLines;
    }

    /** One of the triangles; its corners are the very coordinates that were given. */
    Facet facet(int number) {
        return new Facet(
                points.get(corners[3 * number]),
                points.get(corners[3 * number + 1]),
                points.get(corners[3 * number + 2]));
    }

    List<Facet> facets() {
        return IntStream.range(0, count()).mapToObj(this::facet).toList();
    }

    private static double nominalSpacing(List<Coordinate> points) {
        Envelope extent = new Envelope();
        points.forEach(extent::expandToInclude);
        return Math.max(1e-3, Math.sqrt(Math.max(extent.getArea(), 1e-6) / points.size()));
    }
}
