package org.fallrule.measure;

/**
 * An angle.
 *
 * @param radians the angle in radians
 */
public record Angle(double radians) implements Quantity {

    public Angle {
        Quantity.finite(radians);
    }

    public static Angle degrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    @Override
    public double si() {
        return radians;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }
}
