package org.fallrule.measure;

/**
 * Depth of rain that falls in a time.
 *
 * @param metresPerSecond the intensity in metres per second; 1 in/h is 7.06e-6 m/s
 */
public record Intensity(double metresPerSecond) implements Quantity {

    public Intensity {
        Quantity.finite(metresPerSecond);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.INTENSITY;
    }
}
