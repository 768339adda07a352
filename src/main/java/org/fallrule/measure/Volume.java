package org.fallrule.measure;

/**
 * An amount of water or earth.
 *
 * @param cubicMetres the volume in cubic metres
 */
public record Volume(double cubicMetres) implements Quantity {

    public Volume {
        Quantity.finite(cubicMetres);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }
}
