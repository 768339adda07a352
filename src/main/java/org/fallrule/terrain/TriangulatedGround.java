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
import org.locationtech.jts.index.hprtree.HPRtree;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * The ground as flat triangles between surveyed points. Between points the ground is taken as straight; there is no answer
 * outside the triangles.
 */
public final class TriangulatedGround implements GroundSurface {
    /** Plan slack in metres for a place on the outer edge of the surface. */
    private static final double EDGE_SLACK = 1e-6;

    private final HPRtree facets = new HPRtree();
    private final Envelope extent = new Envelope();
    private final GeometryFactory geometry = new GeometryFactory();

    TriangulatedGround(List<Facet> triangles) {
        for (Facet facet : triangles) {
            facets.insert(facet.extent(), facet);
            extent.expandToInclude(facet.extent());
        }
        facets.build();
    }

    /**
     * Triangulates points with finite Z in metres. Fewer than three points, or points all on one line, give no surface.
     */
    public static Optional<GroundSurface> of(List<Coordinate> points) {
        List<Facet> triangles = Triangulation.of(points, List.of()).facets();
        return triangles.isEmpty() ? Optional.empty() : Optional.of(new TriangulatedGround(triangles));
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        return facetAt(place).map(facet -> new Elevation(facet.heightAt(place)));
    }

    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        return facetAt(place).map(Facet::grade);
    }

    private Optional<Facet> facetAt(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(EDGE_SLACK);
        for (Object found : facets.query(around)) {
            if (found instanceof Facet facet && facet.holds(place, EDGE_SLACK)) {
                return Optional.of(facet);
            }
        }
        return Optional.empty();
    }

    @Override
    public Envelope extent() {
        return extent.copy();
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        List<Double> breaks = new ArrayList<>();
        LengthIndexedLine stations = new LengthIndexedLine(line);
        for (Coordinate bend : line.getCoordinates()) {
            breaks.add(stations.project(bend));
        }
        for (Object found : facets.query(line.getEnvelopeInternal())) {
            Facet facet = (Facet) found;
            Geometry edges = geometry.createLineString(new Coordinate[] {facet.a(), facet.b(), facet.c(), facet.a()});
            for (Coordinate crossing : edges.intersection(line).getCoordinates()) {
                breaks.add(stations.project(crossing));
            }
        }
        return breaks.stream().sorted().distinct().toList();
    }
}
