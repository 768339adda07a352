package org.fallrule.measure;

/**
 * A number without a unit, such as a runoff coefficient.
 *
 * @param value the number
 */
public record Ratio(double value) implements Quantity {

    public Ratio {
        Quantity.finite(value);
    }

    @Override
    public double si() {
        return value;
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }
}
