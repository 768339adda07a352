package org.fallrule.reader.frame;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** The way from a system's coordinates back to the longitude and latitude it is based on and forth, without change of datum. */
interface Unprojection {
    /** For coordinates that are degrees already. */
    Unprojection NONE = new Unprojection() {
        @Override
        public Optional<Coordinate> lonLat(double x, double y) {
            return Optional.of(new Coordinate(x, y));
        }

        @Override
        public Optional<Coordinate> grid(double lon, double lat) {
            return Optional.of(new Coordinate(lon, lat));
        }
    };

    /** Longitude and latitude, degrees; empty when there is no such place. */
    Optional<Coordinate> lonLat(double x, double y);

    /** Easting and northing, in the system's unit, of a place in degrees; empty when the projection does not reach it. */
    Optional<Coordinate> grid(double lon, double lat);
}
