package org.fallrule.reader.frame;

/**
 * An ellipsoid of revolution with the semi-major axis that GRS 80 and WGS 84 share, and its conformal latitude.
 *
 * <p>Methods and references: C. F. F. Karney, <i>Transverse Mercator with an accuracy of a few nanometers</i>, Journal of Geodesy
 * 85 (2011) 475-485, equations 7-9 and 19-21. GRS 80: H. Moritz, <i>Geodetic Reference System 1980</i>, Journal of Geodesy 74
 * (2000) 128-133. WGS 84: NGA.STND.0036 (2014), table 3.1.
 *
 * @param f the flattening
 */
record Spheroid(double f) {
    /** The semi-major axis, metres. */
    static final double A = 6378137.0;

    static final Spheroid GRS_80 = new Spheroid(1 / 298.257222101);
    static final Spheroid WGS_84 = new Spheroid(1 / 298.257223563);

    private double e2() {
        return f * (2 - f);
    }

    /** The first eccentricity. */
    double e() {
        return Math.sqrt(e2());
    }

    /** Tangent of the conformal latitude from that of the geodetic (Karney 2011, equations 7-9). */
    double conformal(double tau) {
        double e = e();
        double root = Math.hypot(1, tau);
        double sigma = Math.sinh(e * atanh(e * tau / root));
        return tau * Math.hypot(1, sigma) - sigma * root;
    }

    /** The reverse of {@link #conformal}, by Newton's method (Karney 2011, equations 19-21), which needs two or three steps. */
    double geodetic(double wanted) {
        double e2 = e2();
        double tau = wanted;
        double change = Double.MAX_VALUE;
        for (int step = 0; step < 6 && Math.abs(change) > 1e-15 * Math.abs(tau); step++) {
            double got = conformal(tau);
            double slope = (1 + (1 - e2) * tau * tau) / ((1 - e2) * Math.hypot(1, tau));
            change = (wanted - got) / Math.hypot(1, got) * slope;
            tau += change;
        }
        return tau;
    }

    private static double atanh(double x) {
        return (Math.log1p(x) - Math.log1p(-x)) / 2;
    }
}
