package org.fallrule.measure;

import java.util.Locale;

/**
 * What kind of thing a number measures, and how small a difference is no difference.
 *
 * <p><b>The one tolerance.</b> A value misses its limit only when it is short by more than {@link #tolerance()}: 1 mm in a
 * length or elevation, 0.001 % in a slope, 1 cm² in an area, 0.001 degree in an angle. That is below what any survey of a
 * lot resolves, and above what conversions between feet, degrees and metres, and between grid and ground distance, can
 * move a value that a designer has put exactly on the limit.
 */
public enum Dimension {
    /** A distance, size, depth or cover; SI unit metre. */
    LENGTH(1e-3),
    /** A height in a vertical datum; SI unit metre. */
    ELEVATION(1e-3),
    /** Fall over plan length; SI unit metre per metre. */
    SLOPE(1e-5),
    /** SI unit square metre. */
    AREA(1e-4),
    /** SI unit radian. */
    ANGLE(Math.toRadians(1e-3));

    private final double tolerance;

    Dimension(double tolerance) {
        this.tolerance = tolerance;
    }

    /** The difference, in the SI unit, below which two values count as equal. */
    public double tolerance() {
        return tolerance;
    }

    /** A quantity of this dimension from its value in the SI unit. */
    public Quantity of(double si) {
        return switch (this) {
            case LENGTH -> new Length(si);
            case ELEVATION -> new Elevation(si);
            case SLOPE -> new Slope(si);
            case AREA -> new Area(si);
            case ANGLE -> new Angle(si);
        };
    }

    /** The word for it in messages: {@code length}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
