package org.fallrule.hydraulics.pipe;

import org.fallrule.hydraulics.mechanics.Water;

/**
 * The wetted part of a round pipe: a segment of a circle. A pipe filled to the crown or beyond counts as the whole circle
 * without a free surface. For solvers: numbers are SI, the unit stands in the name.
 *
 * <p>With theta the angle in radians that the water's surface spans at the pipe's centre: theta = 2 acos(1 - 2y/D), area
 * D²(theta - sin theta)/8, wetted perimeter D theta/2. V. T. Chow, Open-Channel Hydraulics, 1959, table 2-1 (from memory).
 *
 * @param diameterM inside diameter in metres
 * @param depthM depth of water in metres, from zero
 */
public record CircularSection(double diameterM, double depthM) {
    /** Below this angle the difference of the angle and its sine is taken from its series, good to 1e-12 there. */
    private static final double SMALL_ANGLE = 0.02;

    /** The angle in radians that the surface spans; a full turn when full. */
    public double angle() {
        return 4 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, depthM / diameterM))));
    }

    public double areaSqM() {
        double theta = angle();
        return diameterM * diameterM / 8 * segment(theta);
    }

    public double wettedPerimeterM() {
        return diameterM * angle() / 2;
    }

    /** Area over wetted perimeter; zero when dry. */
    public double hydraulicRadiusM() {
        double theta = angle();
        return theta == 0 ? 0 : diameterM / 4 * segment(theta) / theta;
    }

    /** Width of the free surface; zero when dry or full. */
    public double topWidthM() {
        return depthM >= diameterM ? 0 : 2 * Math.sqrt(depthM * (diameterM - depthM));
    }

    /** Area times hydraulic radius to the power 2/3: what Manning's formula takes from the shape, in m^(8/3). */
    public double sectionFactor() {
        double theta = angle();
        double segment = segment(theta);
        return theta == 0
                ? 0
                : diameterM * diameterM / 8 * segment * Math.pow(diameterM / 4 * segment / theta, 2.0 / 3);
    }

    public double velocityMps(double flowCms) {
        return flowCms / areaSqM();
    }

    /** Depth and velocity head together, in metres, above the invert. */
    public double specificEnergyM(double flowCms) {
        return depthM + Water.velocityHead(velocityMps(flowCms));
    }

    /** The slope that friction takes from the energy line, by Manning's formula. */
    public double frictionSlope(double flowCms, Roughness roughness) {
        double ratio = flowCms * roughness.n() / sectionFactor();
        return ratio * ratio;
    }

    private static double segment(double theta) {
        double square = theta * theta;
        return theta < SMALL_ANGLE ? theta * square / 6 * (1 - square / 20) : theta - Math.sin(theta);
    }
}
