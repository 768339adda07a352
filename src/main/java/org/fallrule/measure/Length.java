package org.fallrule.measure;

/**
 * A distance, size, depth or cover.
 *
 * @param metres the length in metres; negative where a depth or gap is on the wrong side
 */
public record Length(double metres) implements Quantity, Comparable<Length> {

    public Length {
        Quantity.finite(metres);
    }

    public static Length feet(double feet) {
        return new Length(feet * Unit.FOOT.toSi());
    }

    public static Length inches(double inches) {
        return new Length(inches * Unit.INCH.toSi());
    }

    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    public Length times(double factor) {
        return new Length(metres * factor);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }
}
