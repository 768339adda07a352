package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.common.VertexMergerGroup;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * The ground as flat triangles between surveyed points (Delaunay triangulation; C. L. Lawson, "Software for C1 surface
 * interpolation", 1977, as implemented by Tinfour). Between points the ground is taken as straight; there is no answer
 * outside the points' convex hull. Points at one place count with the mean of their heights.
 */
public final class TriangulatedGround implements GroundSurface {
    /**
     * Plan slack in metres: a place so near outside of the surface is still on its edge, and a triangle narrower than this is
     * none. Along a straight row of points on the edge of the survey rounding leaves such triangles, on which the height would
     * change by any amount from one side to the other.
     */
    private static final double EDGE_SLACK = 1e-3;

    private final STRtree facets = new STRtree();

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
        facets.build();
    }

    /**
     * Triangulates points with finite Z in metres. Fewer than three points, or points all on one line, give no surface.
     */
    public static Optional<GroundSurface> of(List<Coordinate> points) {
        if (points.size() < 3) {
            return Optional.empty();
        }
        TriangulatedGround ground = new TriangulatedGround(points);
        return ground.facets.isEmpty() ? Optional.empty() : Optional.of(ground);
    }

    private void add(SimpleTriangle triangle, List<Coordinate> points) {
        Facet facet = new Facet(
                corner(triangle.getVertexA(), points),
                corner(triangle.getVertexB(), points),
                corner(triangle.getVertexC(), points));
        if (facet.width() >= EDGE_SLACK) {
            facets.insert(facet.envelope(), facet);
        }
    }

    /** A vertex with the height of its point, which Tinfour itself keeps in single precision only. */
    private static Coordinate corner(Vertex vertex, List<Coordinate> points) {
        Vertex[] merged = vertex instanceof VertexMergerGroup group ? group.getVertices() : new Vertex[] {vertex};
        double height = Arrays.stream(merged)
                .mapToDouble(each -> points.get(each.getIndex()).getZ())
                .average()
                .orElseThrow();
        return new Coordinate(vertex.x, vertex.y, height);
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(EDGE_SLACK);
        Optional<Facet> nearest = Optional.empty();
        double least = EDGE_SLACK;
        for (Object found : facets.query(around)) {
            Facet facet = (Facet) found;
            double beyond = facet.beyond(place);
            if (beyond <= least) {
                least = beyond;
                nearest = Optional.of(facet);
            }
        }
        return nearest.map(facet -> new Elevation(facet.heightAt(place)));
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        Stationing stationing = new Stationing(line);
        List<Double> breaks = new ArrayList<>(stationing.ofVertices());
        for (Object found : facets.query(line.getEnvelopeInternal())) {
            breaks.addAll(stationing.where(((Facet) found).outline()));
        }
        return breaks.stream().sorted().distinct().toList();
    }

    private static double nominalSpacing(List<Coordinate> points) {
        Envelope extent = new Envelope();
        points.forEach(extent::expandToInclude);
        return Math.max(1e-3, Math.sqrt(Math.max(extent.getArea(), 1e-6) / points.size()));
    }
}
