package org.fallrule.analysis;

import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * The plan distance between two features, edge to edge.
 *
 * <p>The edge of a pipe or utility is its centreline plus or minus half its outside diameter. A lot is measured to its line:
 * inside of the lot the distance is positive, outside of the site's own lot negative; a lot that the plan says nothing of may be
 * the own one and counts as such. Where two features overlap the distance is zero or, of a pipe, negative by the overlap. A
 * pipe of which no diameter is known counts as its centreline.
 *
 * @param gap the distance
 * @param between the straight line between the nearest places of the two, centrelines for pipes
 */
public record PlanDistance(Length gap, LineString between) {

    public static PlanDistance between(Feature one, Feature other) {
        return between(one, one.geometry(), other);
    }

    /** The distance from a part of a feature's geometry, such as some of a pipe's run. */
    public static PlanDistance between(Feature one, Geometry partOfOne, Feature other) {
        Geometry from = measuredPart(one, partOfOne);
        Geometry to = measuredPart(other, other.geometry());
        Coordinate[] nearest = DistanceOp.nearestPoints(from, to);
        double centres = nearest[0].distance(nearest[1]);
        boolean outside = isOutsideOwnLot(nearest[0], other) || isOutsideOwnLot(nearest[1], one);
        double gap = (outside ? -centres : centres) - radius(one) - radius(other);
        return new PlanDistance(new Length(gap), partOfOne.getFactory().createLineString(nearest));
    }

    private static Geometry measuredPart(Feature feature, Geometry part) {
        return feature.role() == Role.LOT ? part.getBoundary() : part;
    }

    private static double radius(Feature feature) {
        boolean isPipe = feature.role() == Role.PIPE || feature.role() == Role.UTILITY;
        return isPipe ? OutsideDiameter.of(feature).map(OutsideDiameter::radius).orElse(0.0) : 0;
    }

    private static boolean isOutsideOwnLot(Coordinate place, Feature feature) {
        return feature.role() == Role.LOT
                && feature.get(Attribute.OWN).orElse(true)
                && SimplePointInAreaLocator.locate(place, feature.geometry()) == Location.EXTERIOR;
    }
}
