package org.fallrule.proposal;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Lines through places. */
final class Axis {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Axis() {}

    static LineString line(List<Coordinate> places) {
        return GEOMETRY.createLineString(places.toArray(new Coordinate[0]));
    }

    /** The axes of all reaches of a drain. */
    static Geometry lines(Drain drain) {
        return GEOMETRY.buildGeometry(
                drain.reaches().stream().map(reach -> line(reach.axis())).toList());
    }
}
