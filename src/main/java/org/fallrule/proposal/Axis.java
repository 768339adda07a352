package org.fallrule.proposal;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Lines through places. */
final class Axis {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Axis() {}

    static LineString line(List<Coordinate> places) {
        return GEOMETRY.createLineString(places.toArray(new Coordinate[0]));
    }
}
