package org.fallrule.reader.frame;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The frame of a plan: metres east and north of an origin, on a transverse Mercator projection of the GRS 80 ellipsoid with its
 * central meridian through the origin and scale 1. At the size of a lot its distances and areas are those on the ellipsoid: 200
 * m from the origin they are off by 5e-10, 10 km from it by 1.2e-6. Ground at height H above the ellipsoid is longer by H /
 * 6,371,000 m (about 1e-4 at 650 m), which is left out here as it is in survey plans on grid.
 */
public final class LocalFrame {
    private final double originLon;
    private final double originLat;
    private final double originNorthing;

    private LocalFrame(double lon, double lat) {
        this.originLon = lon;
        this.originLat = lat;
        this.originNorthing = TransverseMercator.GRS_80.forward(0, Math.toRadians(lat))[1];
    }

    /**
     * The frame with its origin at a place.
     *
     * @param lon longitude, degrees, -180 to 180
     * @param lat latitude, degrees, -90 to 90
     * @throws IllegalArgumentException when there is no such place on earth
     */
    public static LocalFrame at(double lon, double lat) {
        if (!(Math.abs(lon) <= 180 && Math.abs(lat) <= 90)) {
            throw new IllegalArgumentException("No place on earth: longitude " + lon + ", latitude " + lat);
        }
        return new LocalFrame(lon, lat);
    }

    /** Longitude of the origin, degrees. */
    public double originLon() {
        return originLon;
    }

    /** Latitude of the origin, degrees. */
    public double originLat() {
        return originLat;
    }

    /** Metres east and north of the origin, for longitude and latitude in degrees. Z is kept as it is. */
    public Coordinate toLocal(Coordinate lonLat) {
        double lambda = Math.toRadians(Math.IEEEremainder(lonLat.x - originLon, 360));
        double[] grid = TransverseMercator.GRS_80.forward(lambda, Math.toRadians(lonLat.y));
        return new Coordinate(grid[0], grid[1] - originNorthing, lonLat.getZ());
    }

    /** Longitude and latitude in degrees, for metres east and north of the origin. Z is kept as it is. */
    public Coordinate toLonLat(Coordinate local) {
        double[] angles = TransverseMercator.GRS_80.inverse(local.x, local.y + originNorthing);
        double lon = Math.IEEEremainder(originLon + Math.toDegrees(angles[0]), 360);
        return new Coordinate(lon, Math.toDegrees(angles[1]), local.getZ());
    }

    /** A new geometry in longitude and latitude, for one in this frame; Z and the factory are kept. */
    public Geometry toLonLat(Geometry local) {
        return Moved.copy(local, this::toLonLat);
    }
}
