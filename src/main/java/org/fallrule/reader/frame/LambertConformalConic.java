package org.fallrule.reader.frame;

/**
 * The Lambert conformal conic projection of an ellipsoid.
 *
 * <p>Methods and references: J. P. Snyder, <i>Map Projections: A Working Manual</i>, U.S. Geological Survey Professional Paper
 * 1395 (1987), equations 14-1, 14-2, 14-4, 14-9 to 14-11, 14-15 and 15-7 to 15-11, with the isometric latitude in place of the logarithm of t,
 * and the latitude back from it by {@link Spheroid#geodetic} in place of equation 7-9. Not for parallels on both sides of the
 * equator that are equally far from it.
 */
final class LambertConformalConic implements Projection {
    private final Spheroid spheroid;

    /** Snyder's n and F times a. */
    private final double n;

    private final double aF;
    private final double rhoAtOrigin;

    private LambertConformalConic(Spheroid spheroid, double n, double aF, double origin) {
        this.spheroid = spheroid;
        this.n = n;
        this.aF = aF;
        this.rhoAtOrigin = rho(isometric(spheroid, origin));
    }

    /** With two standard parallels; angles in radians. */
    static LambertConformalConic ofParallels(Spheroid spheroid, double one, double other, double origin) {
        double m1 = m(spheroid, one);
        double psi1 = isometric(spheroid, one);
        double n = Math.abs(one - other) < 1e-10
                ? Math.sin(one)
                : Math.log(m1 / m(spheroid, other)) / (isometric(spheroid, other) - psi1);
        return new LambertConformalConic(spheroid, n, Spheroid.A * m1 * Math.exp(n * psi1) / n, origin);
    }

    /** With one standard parallel, the latitude of origin, and the scale on it. */
    static LambertConformalConic ofScale(Spheroid spheroid, double origin, double scale) {
        double n = Math.sin(origin);
        double aF = scale * Spheroid.A * m(spheroid, origin) * Math.exp(n * isometric(spheroid, origin)) / n;
        return new LambertConformalConic(spheroid, n, aF, origin);
    }

    /** Snyder's equation 14-15. */
    private static double m(Spheroid spheroid, double phi) {
        double eSin = spheroid.e() * Math.sin(phi);
        return Math.cos(phi) / Math.sqrt(1 - eSin * eSin);
    }

    /** The isometric latitude, which is the negative logarithm of Snyder's t (equation 15-9). */
    private static double isometric(Spheroid spheroid, double phi) {
        double t = spheroid.conformal(Math.tan(phi));
        return Math.copySign(Math.log(Math.abs(t) + Math.hypot(1, t)), t);
    }

    private double rho(double psi) {
        return aF * Math.exp(-n * psi);
    }

    /**
     * Projects a point.
     *
     * @param lambda longitude from the central meridian, radians
     * @param phi latitude, radians
     * @return metres east and north of the origin
     */
    @Override
    public double[] forward(double lambda, double phi) {
        double rho = rho(isometric(spheroid, phi));
        double theta = n * lambda;
        return new double[] {rho * Math.sin(theta), rhoAtOrigin - rho * Math.cos(theta)};
    }

    /**
     * Unprojects a point.
     *
     * @return longitude from the central meridian and latitude, radians
     */
    @Override
    public double[] inverse(double easting, double northing) {
        double sign = Math.signum(n);
        double rho = Math.hypot(easting, rhoAtOrigin - northing);
        double theta = Math.atan2(sign * easting, sign * (rhoAtOrigin - northing));
        double psi = -Math.log(sign * rho / aF) / n;
        return new double[] {theta / n, Math.atan(spheroid.geodetic(Math.sinh(psi)))};
    }
}
