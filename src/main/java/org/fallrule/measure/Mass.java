package org.fallrule.measure;

/**
 * How much something weighs.
 *
 * @param kilograms its mass in kilograms
 */
public record Mass(double kilograms) implements Quantity {

    public Mass {
        Quantity.finite(kilograms);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }
}
