package org.fallrule.measure;

/**
 * Fall over plan length, positive when it falls in the direction of flow.
 *
 * @param ratio fall divided by plan length, 0.01 for one percent
 */
public record Slope(double ratio) implements Quantity {

    public Slope {
        Quantity.finite(ratio);
    }

    @Override
    public double si() {
        return ratio;
    }

    @Override
    public Dimension dimension() {
        return Dimension.SLOPE;
    }
}
