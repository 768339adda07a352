package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Triangle;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * The ground as flat triangles between surveyed points (Delaunay triangulation; C. L. Lawson, "Software for C1 surface
 * interpolation", 1977, as implemented by Tinfour). Between points the ground is taken as straight; there is no answer
 * outside the points' convex hull.
 */
public final class TriangulatedGround implements GroundSurface {
    /** Plan slack in metres for a place on the outer edge of the surface. */
    private static final double EDGE_SLACK = 1e-6;

    private final STRtree triangles = new STRtree();
    private final GeometryFactory geometry = new GeometryFactory();

    private TriangulatedGround(List<Coordinate> points) {
        IncrementalTin tin = new IncrementalTin(nominalSpacing(points));
        List<Vertex> vertices = new ArrayList<>();
        for (Coordinate point : points) {
            vertices.add(new Vertex(point.x, point.y, point.getZ(), vertices.size()));
        }
        tin.add(vertices, null);
        if (tin.isBootstrapped()) {
            TriangleCollector.visitSimpleTriangles(tin, triangle -> add(triangle, points));
        }
        triangles.build();
    }

    /**
     * Triangulates points with finite Z in metres. Fewer than three points, or points all on one line, give no surface.
     */
    public static Optional<GroundSurface> of(List<Coordinate> points) {
        if (points.size() < 3) {
            return Optional.empty();
        }
        TriangulatedGround ground = new TriangulatedGround(points);
        return ground.triangles.isEmpty() ? Optional.empty() : Optional.of(ground);
    }

    private void add(SimpleTriangle triangle, List<Coordinate> points) {
        Triangle facet = new Triangle(
                corner(triangle.getVertexA(), points),
                corner(triangle.getVertexB(), points),
                corner(triangle.getVertexC(), points));
        if (facet.area() > 0) {
            Envelope envelope = new Envelope(facet.p0, facet.p1);
            envelope.expandToInclude(facet.p2);
            triangles.insert(envelope, facet);
        }
    }

    private static Coordinate corner(Vertex vertex, List<Coordinate> points) {
        return points.get(vertex.getIndex());
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(EDGE_SLACK);
        for (Object found : triangles.query(around)) {
            Triangle facet = (Triangle) found;
            if (holds(facet, place)) {
                return Optional.of(new Elevation(facet.interpolateZ(place)));
            }
        }
        return Optional.empty();
    }

    private static boolean holds(Triangle facet, Coordinate place) {
        double turn = Math.signum(Triangle.signedArea(facet.p0, facet.p1, facet.p2));
        return outside(facet.p0, facet.p1, place, turn) <= EDGE_SLACK
                && outside(facet.p1, facet.p2, place, turn) <= EDGE_SLACK
                && outside(facet.p2, facet.p0, place, turn) <= EDGE_SLACK;
    }

    /** How far, in metres, a place lies on the outer side of a triangle's edge; negative inside. */
    private static double outside(Coordinate a, Coordinate b, Coordinate place, double turn) {
        return turn * 2 * Triangle.signedArea(a, b, place) * -1 / a.distance(b);
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        List<Double> breaks = new ArrayList<>();
        LengthIndexedLine stations = new LengthIndexedLine(line);
        for (Coordinate bend : line.getCoordinates()) {
            breaks.add(stations.project(bend));
        }
        for (Object found : triangles.query(line.getEnvelopeInternal())) {
            Triangle facet = (Triangle) found;
            Geometry edges = geometry.createLineString(new Coordinate[] {facet.p0, facet.p1, facet.p2, facet.p0});
            for (Coordinate crossing : edges.intersection(line).getCoordinates()) {
                breaks.add(stations.project(crossing));
            }
        }
        return breaks.stream().sorted().distinct().toList();
    }

    private static double nominalSpacing(List<Coordinate> points) {
        Envelope extent = new Envelope();
        points.forEach(extent::expandToInclude);
        return Math.max(1e-3, Math.sqrt(Math.max(extent.getArea(), 1e-6) / points.size()));
    }
}
