package org.fallrule.report.map;

import java.awt.Color;

/**
 * Ways to see colours: as most people do, as people do who lack one kind of cone, on a grey print. Matrices for linear sRGB at
 * full severity: Machado, Oliveira and Fernandes, A Physiologically-based Model for Simulation of Color Vision Deficiency, IEEE
 * Transactions on Visualization and Computer Graphics 15(6), 2009. Grey keeps the relative luminance of WCAG 2.2.
 */
public enum Sight {
    USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900),
    GREY_PRINT(0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722);

    @SuppressWarnings("ImmutableEnumChecker") // never written to
    private final double[] matrix;

    Sight(double... matrix) {
        this.matrix = matrix;
    }

    /** Contrast ratio of two CSS colours as they are seen, after WCAG 2.2. */
    public double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private double luminance(String css) {
        double[] seen = seen(css);
        return 0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2];
    }

    /** How far two colours lie apart in CIE 1976 L*a*b* (CIE 15, D65 white); under about 10 they may be taken for one. */
    public double difference(String one, String other) {
        double[] a = lab(seen(one));
        double[] b = lab(seen(other));
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    private double[] seen(String css) {
        Color colour = Color.decode(css);
        double[] linear = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = 0;
            for (int k = 0; k < 3; k++) {
                sum += matrix[3 * i + k] * linear[k];
            }
            seen[i] = Math.max(0, Math.min(1, sum));
        }
        return seen;
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    private static double[] lab(double[] rgb) {
        double x = share((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505);
        double y = share(0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]);
        double z = share((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double share(double of) {
        return of > 216.0 / 24389 ? Math.cbrt(of) : (24389.0 / 27 * of + 16) / 116;
    }
}
