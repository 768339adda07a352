package org.fallrule.measure;

/**
 * A height above the datum of the plan.
 *
 * @param metres height in metres
 */
public record Elevation(double metres) implements Quantity {

    public Elevation {
        Quantity.finite(metres);
    }

    public static Elevation feet(double feet) {
        return new Elevation(feet * Unit.FOOT.toSi());
    }

    /** How far this stands above the other; negative when below. */
    public Length above(Elevation other) {
        return new Length(metres - other.metres);
    }

    public Elevation plus(Length rise) {
        return new Elevation(metres + rise.metres());
    }

    public Elevation minus(Length drop) {
        return new Elevation(metres - drop.metres());
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ELEVATION;
    }
}
