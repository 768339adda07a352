package org.fallrule.reader.frame;

/**
 * The transverse Mercator projection of an ellipsoid, scale 1 on the central meridian, by Krüger's series to the sixth order in
 * the third flattening.
 *
 * <p>Methods and references: L. Krüger, <i>Konforme Abbildung des Erdellipsoids in der Ebene</i>, Potsdam 1912; C. F. F. Karney,
 * <i>Transverse Mercator with an accuracy of a few nanometers</i>, Journal of Geodesy 85 (2011) 475-485, equations 7-11, 14,
 * 19-21, 35 and 36. Errors stay below a micrometre within 30 degrees of the central meridian; beyond some 80 degrees the series
 * is of no use.
 */
final class TransverseMercator implements Projection {
    /** Karney 2011, equation 35: factors of n^j, n^(j+1) ... of the j-th term. */
    private static final double[][] ALPHA = {
        {1.0 / 2, -2.0 / 3, 5.0 / 16, 41.0 / 180, -127.0 / 288, 7891.0 / 37800},
        {13.0 / 48, -3.0 / 5, 557.0 / 1440, 281.0 / 630, -1983433.0 / 1935360},
        {61.0 / 240, -103.0 / 140, 15061.0 / 26880, 167603.0 / 181440},
        {49561.0 / 161280, -179.0 / 168, 6601661.0 / 7257600},
        {34729.0 / 80640, -3418889.0 / 1995840},
        {212378941.0 / 319334400}
    };

    /** Karney 2011, equation 36. */
    private static final double[][] BETA = {
        {1.0 / 2, -2.0 / 3, 37.0 / 96, -1.0 / 360, -81.0 / 512, 96199.0 / 604800},
        {1.0 / 48, 1.0 / 15, -437.0 / 1440, 46.0 / 105, -1118711.0 / 3870720},
        {17.0 / 480, -37.0 / 840, -209.0 / 4480, 5569.0 / 90720},
        {4397.0 / 161280, -11.0 / 504, -830251.0 / 7257600},
        {4583.0 / 161280, -108847.0 / 3991680},
        {20648693.0 / 638668800}
    };

    /** Of {@link Spheroid#GRS_80}. */
    static final TransverseMercator GRS_80 = new TransverseMercator(Spheroid.GRS_80);

    private final Spheroid spheroid;
    private final double rectifyingRadius;
    private final double[] alpha;
    private final double[] beta;

    TransverseMercator(Spheroid spheroid) {
        double n = spheroid.f() / (2 - spheroid.f());
        this.spheroid = spheroid;
        this.rectifyingRadius = Spheroid.A / (1 + n) * (1 + n * n / 4 + Math.pow(n, 4) / 64 + Math.pow(n, 6) / 256);
        this.alpha = terms(ALPHA, n);
        this.beta = terms(BETA, n);
    }

    /**
     * Projects a point.
     *
     * @param lambda longitude from the central meridian, radians
     * @param phi latitude, radians
     * @return easting from the central meridian and northing from the equator, metres
     */
    @Override
    public double[] forward(double lambda, double phi) {
        double t = spheroid.conformal(Math.tan(phi));
        double cos = Math.cos(lambda);
        double xi = Math.atan2(t, cos);
        double eta = asinh(Math.sin(lambda) / Math.hypot(t, cos));
        double northing = xi;
        double easting = eta;
        for (int j = 1; j <= alpha.length; j++) {
            northing += alpha[j - 1] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            easting += alpha[j - 1] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        return new double[] {rectifyingRadius * easting, rectifyingRadius * northing};
    }

    /**
     * Unprojects a point.
     *
     * @param easting from the central meridian, metres
     * @param northing from the equator, metres
     * @return longitude from the central meridian and latitude, radians
     */
    @Override
    public double[] inverse(double easting, double northing) {
        double xi = northing / rectifyingRadius;
        double eta = easting / rectifyingRadius;
        double xiSphere = xi;
        double etaSphere = eta;
        for (int j = 1; j <= beta.length; j++) {
            xiSphere -= beta[j - 1] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            etaSphere -= beta[j - 1] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        double sinh = Math.sinh(etaSphere);
        double cos = Math.cos(xiSphere);
        double t = Math.sin(xiSphere) / Math.hypot(sinh, cos);
        return new double[] {Math.atan2(sinh, cos), Math.atan(spheroid.geodetic(t))};
    }

    private static double[] terms(double[][] factors, double n) {
        double[] terms = new double[factors.length];
        for (int j = 0; j < factors.length; j++) {
            for (int k = factors[j].length - 1; k >= 0; k--) {
                terms[j] += factors[j][k] * Math.pow(n, j + 1 + k);
            }
        }
        return terms;
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        return Math.copySign(Math.log1p(size + size * size / (1 + Math.hypot(1, size))), x);
    }
}
