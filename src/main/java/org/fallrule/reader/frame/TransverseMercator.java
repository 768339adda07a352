package org.fallrule.reader.frame;

/**
 * The transverse Mercator projection of the GRS 80 ellipsoid, scale 1 on the central meridian, by Krüger's series to the sixth
 * order in the third flattening.
 *
 * <p>Methods and references: L. Krüger, <i>Konforme Abbildung des Erdellipsoids in der Ebene</i>, Potsdam 1912; C. F. F. Karney,
 * <i>Transverse Mercator with an accuracy of a few nanometers</i>, Journal of Geodesy 85 (2011) 475-485, equations 7-11, 14,
 * 19-21, 35 and 36. GRS 80: H. Moritz, <i>Geodetic Reference System 1980</i>, Journal of Geodesy 74 (2000) 128-133. Errors stay
 * below a micrometre within 30 degrees of the central meridian; beyond some 80 degrees the series is of no use.
 */
final class TransverseMercator {
    private static final double A = 6378137.0;
    private static final double F = 1 / 298.257222101;
    private static final double E2 = F * (2 - F);
    private static final double E = Math.sqrt(E2);
    private static final double N = F / (2 - F);
    private static final double RECTIFYING_RADIUS =
            A / (1 + N) * (1 + N * N / 4 + Math.pow(N, 4) / 64 + Math.pow(N, 6) / 256);

    /** Karney 2011, equation 35: factors of n^j, n^(j+1) ... of the j-th term. */
    private static final double[] ALPHA = terms(new double[][] {
        {1.0 / 2, -2.0 / 3, 5.0 / 16, 41.0 / 180, -127.0 / 288, 7891.0 / 37800},
        {13.0 / 48, -3.0 / 5, 557.0 / 1440, 281.0 / 630, -1983433.0 / 1935360},
        {61.0 / 240, -103.0 / 140, 15061.0 / 26880, 167603.0 / 181440},
        {49561.0 / 161280, -179.0 / 168, 6601661.0 / 7257600},
        {34729.0 / 80640, -3418889.0 / 1995840},
        {212378941.0 / 319334400}
    });

    /** Karney 2011, equation 36. */
    private static final double[] BETA = terms(new double[][] {
        {1.0 / 2, -2.0 / 3, 37.0 / 96, -1.0 / 360, -81.0 / 512, 96199.0 / 604800},
        {1.0 / 48, 1.0 / 15, -437.0 / 1440, 46.0 / 105, -1118711.0 / 3870720},
        {17.0 / 480, -37.0 / 840, -209.0 / 4480, 5569.0 / 90720},
        {4397.0 / 161280, -11.0 / 504, -830251.0 / 7257600},
        {4583.0 / 161280, -108847.0 / 3991680},
        {20648693.0 / 638668800}
    });

    private TransverseMercator() {}

    /**
     * Projects a point.
     *
     * @param lambda longitude from the central meridian, radians
     * @param phi latitude, radians
     * @return easting from the central meridian and northing from the equator, metres
     */
    static double[] forward(double lambda, double phi) {
        double t = conformal(Math.tan(phi));
        double cos = Math.cos(lambda);
        double xi = Math.atan2(t, cos);
        double eta = asinh(Math.sin(lambda) / Math.hypot(t, cos));
        double northing = xi;
        double easting = eta;
        for (int j = 1; j <= ALPHA.length; j++) {
            northing += ALPHA[j - 1] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            easting += ALPHA[j - 1] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        return new double[] {RECTIFYING_RADIUS * easting, RECTIFYING_RADIUS * northing};
    }

    /**
     * Unprojects a point.
     *
     * @param easting from the central meridian, metres
     * @param northing from the equator, metres
     * @return longitude from the central meridian and latitude, radians
     */
    static double[] inverse(double easting, double northing) {
        double xi = northing / RECTIFYING_RADIUS;
        double eta = easting / RECTIFYING_RADIUS;
        double xiSphere = xi;
        double etaSphere = eta;
        for (int j = 1; j <= BETA.length; j++) {
            xiSphere -= BETA[j - 1] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            etaSphere -= BETA[j - 1] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        double sinh = Math.sinh(etaSphere);
        double cos = Math.cos(xiSphere);
        double t = Math.sin(xiSphere) / Math.hypot(sinh, cos);
        return new double[] {Math.atan2(sinh, cos), Math.atan(geodetic(t))};
    }

    /** Tangent of the conformal latitude from that of the geodetic (Karney 2011, equations 7-9). */
    private static double conformal(double tau) {
        double root = Math.hypot(1, tau);
        double sigma = Math.sinh(E * atanh(E * tau / root));
        return tau * Math.hypot(1, sigma) - sigma * root;
    }

    /** The reverse of {@link #conformal}, by Newton's method (Karney 2011, equations 19-21), which needs two or three steps. */
    private static double geodetic(double wanted) {
        double tau = wanted;
        for (int step = 0; step < 6; step++) {
            double got = conformal(tau);
            double slope = (1 + (1 - E2) * tau * tau) / ((1 - E2) * Math.hypot(1, tau));
            tau += (wanted - got) / Math.hypot(1, got) * slope;
        }
        return tau;
    }

    private static double[] terms(double[][] factors) {
        double[] terms = new double[factors.length];
        for (int j = 0; j < factors.length; j++) {
            for (int k = factors[j].length - 1; k >= 0; k--) {
                terms[j] += factors[j][k] * Math.pow(N, j + 1 + k);
            }
        }
        return terms;
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        return Math.copySign(Math.log1p(size + size * size / (1 + Math.hypot(1, size))), x);
    }

    private static double atanh(double x) {
        return (Math.log1p(x) - Math.log1p(-x)) / 2;
    }
}
