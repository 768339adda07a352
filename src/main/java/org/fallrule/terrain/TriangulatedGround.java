package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * The ground as flat triangles between surveyed points. Between points the ground is taken as straight; there is no answer
 * outside the triangles.
 */
public final class TriangulatedGround implements GroundSurface {
    /**
     * Plan slack in metres: a place so near outside of the surface is still on its edge, and a triangle narrower than this is
     * none. Along a straight row of points on the edge of the survey rounding leaves such triangles, on which the height would
     * change by any amount from one side to the other.
     */
    private static final double EDGE_SLACK = 1e-3;

    private final HPRtree facets = new HPRtree();
    private final Envelope extent = new Envelope();

    /**
     * The triangle that held the last place asked for; the next place mostly lies in it too. Threads may overwrite each other's:
     * a place well inside of a triangle is in no other one, so that the answer does not hang on it.
     */
    private Optional<Facet> last = Optional.empty();

    TriangulatedGround(List<Facet> triangles) {
        for (Facet facet : triangles) {
            if (facet.width() >= EDGE_SLACK) {
                facets.insert(facet.extent(), facet);
                extent.expandToInclude(facet.extent());
            }
        }
        facets.build();
    }

    /**
     * Triangulates points with finite Z in metres. Points at one place count with the mean of their heights. Fewer than three
     * points, or points all on one line, give no surface.
     */
    public static Optional<GroundSurface> of(List<Coordinate> points) {
        TriangulatedGround ground = new TriangulatedGround(
                Triangulation.of(atOnePlaceOnce(points), List.of()).facets());
        return ground.extent.isNull() ? Optional.empty() : Optional.of(ground);
    }

    private static List<Coordinate> atOnePlaceOnce(List<Coordinate> points) {
        Map<Coordinate, List<Coordinate>> byPlace =
                points.stream().collect(Collectors.groupingBy(point -> point, LinkedHashMap::new, Collectors.toList()));
        return byPlace.entrySet().stream()
                .map(place -> new Coordinate(
                        place.getKey().x,
                        place.getKey().y,
                        place.getValue().stream()
                                .mapToDouble(Coordinate::getZ)
                                .average()
                                .orElseThrow()))
                .toList();
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        return facetAt(place).map(facet -> new Elevation(facet.heightAt(place)));
    }

    /** Triangle by triangle; the nodes on their edges are looked up. */
    @Override
    public void addHeights(Lattice lattice, double[] metres) {
        BitSet onEdge = new BitSet(metres.length);
        for (Object found : facets.query(extent)) {
            new FacetRows((Facet) found, lattice, 2 * EDGE_SLACK).addTo(metres, onEdge);
        }
        onEdge.stream().filter(node -> Double.isNaN(metres[node])).forEach(node -> {
            Optional<Elevation> level = elevationAt(lattice.place(node));
            metres[node] = level.isPresent() ? level.get().metres() : Double.NaN;
        });
    }

    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        return facetAt(place).map(Facet::grade);
    }

    private Optional<Facet> facetAt(Coordinate place) {
        Optional<Facet> near = last;
        if (near.isPresent() && near.get().beyond(place) < -EDGE_SLACK) {
            return near;
        }
        Optional<Facet> found = searched(place);
        last = found.isPresent() ? found : near;
        return found;
    }

    private Optional<Facet> searched(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(EDGE_SLACK);
        Optional<Facet> nearest = Optional.empty();
        double least = EDGE_SLACK;
        for (Object found : facets.query(around)) {
            Facet facet = (Facet) found;
            double beyond = facet.beyond(place);
            if (beyond < -EDGE_SLACK) {
                return Optional.of(facet);
            }
            if (beyond <= least) {
                least = beyond;
                nearest = Optional.of(facet);
            }
        }
        return nearest;
    }

    @Override
    public Envelope extent() {
        return extent.copy();
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
}
