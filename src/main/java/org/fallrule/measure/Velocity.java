package org.fallrule.measure;

/**
 * How fast water runs.
 *
 * @param metresPerSecond the velocity in metres per second
 */
public record Velocity(double metresPerSecond) implements Quantity {

    public Velocity {
        Quantity.finite(metresPerSecond);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VELOCITY;
    }
}
