package org.fallrule.reader.frame;

/** A map projection between angles in radians, longitude counted from its central meridian, and metres from its origin. */
interface Projection {
    /** East and north of the origin. */
    double[] forward(double lambda, double phi);

    /** Longitude and latitude; without meaning, perhaps not a number, where the projection does not reach. */
    double[] inverse(double easting, double northing);
}
