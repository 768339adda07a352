package org.fallrule.measure;

/**
 * A plan area.
 *
 * @param squareMetres the area in square metres
 */
public record Area(double squareMetres) implements Quantity {

    public Area {
        Quantity.finite(squareMetres);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }
}
