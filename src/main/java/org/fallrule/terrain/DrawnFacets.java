package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Triangles that a plan draws as polygons with Z: what a program writes of its surface, or one stretch that is graded anew. */
public final class DrawnFacets {
    private static final int RING_OF_TRIANGLE = 4;

    private DrawnFacets() {}

    /**
     * Parts features with finite Z.
     *
     * @param facets takes in the triangles
     * @return the others
     */
    static List<Feature> takenFrom(List<Feature> features, List<Facet> facets) {
        List<Feature> others = new ArrayList<>();
        for (Feature feature : features) {
            if (isOne(feature)) {
                Coordinate[] ring = feature.geometry().getCoordinates();
                facets.add(new Facet(ring[0], ring[1], ring[2]));
            } else {
                others.add(feature);
            }
        }
        return others;
    }

    /** Whether a feature is drawn as one. */
    public static boolean isOne(Feature feature) {
        return feature.geometry() instanceof Polygon polygon
                && polygon.getNumInteriorRing() == 0
                && polygon.getExteriorRing().getNumPoints() == RING_OF_TRIANGLE;
    }
}
