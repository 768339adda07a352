package org.fallrule.reader.frame;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** The way from a system's coordinates back to the longitude and latitude it is based on, without change of datum. */
@FunctionalInterface
interface Unprojection {
    /** For coordinates that are degrees already. */
    Unprojection NONE = (x, y) -> Optional.of(new Coordinate(x, y));

    /** Longitude and latitude, degrees; empty when there is no such place. */
    Optional<Coordinate> lonLat(double x, double y);
}
