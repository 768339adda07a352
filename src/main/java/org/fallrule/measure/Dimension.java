package org.fallrule.measure;

import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * What kind of thing a number measures, and how small a difference is no difference.
 *
 * <p><b>The one tolerance.</b> A value misses its limit only when it is short by more than {@link #tolerance()}: 1 mm in a
 * length or elevation, 0.001 % in a slope, 1 cm² in an area, 0.001 degree in an angle, 1 ml/s in a flow, 1 mm/s in a
 * velocity, 0.01 mm/h in an intensity, 0.1 s in a time, 0.1 l in a volume, 10 g in a mass, 0.0001 in a ratio. That is below what any survey
 * of a lot resolves and any formula of drainage tells, and above what conversions between units, and between grid and
 * ground distance, can move a value that a designer has put exactly on the limit.
 */
public enum Dimension {
    /** A distance, size, depth or cover; SI unit metre. */
    LENGTH(1e-3, "m", "18 in", Length::new),
    /** A height in a vertical datum; SI unit metre. */
    ELEVATION(1e-3, "m", "612.40 ft", Elevation::new),
    /** Fall over plan length; SI unit metre per metre. */
    SLOPE(1e-5, "m/m", "1/8 in/ft or 1 %", Slope::new),
    /** SI unit square metre. */
    AREA(1e-4, "m2", "1200 sq ft", Area::new),
    /** SI unit radian. */
    ANGLE(Math.toRadians(1e-3), "rad", "45 deg", Angle::new),
    /** Water that passes in a time; SI unit cubic metre per second. */
    FLOW(1e-6, "m3/s", "0.5 cfs or 120 gpm", Flow::new),
    /** SI unit metre per second. */
    VELOCITY(1e-3, "m/s", "2.5 ft/s", Velocity::new),
    /** Depth of rain in a time; SI unit metre per second. */
    INTENSITY(1e-5 / 3600, "m/s", "6.3 in/h", Intensity::new),
    /** SI unit second. */
    TIME(0.1, "s", "5 min", Time::new),
    /** SI unit cubic metre. */
    VOLUME(1e-4, "m3", "12 cu ft", Volume::new),
    /** SI unit kilogram. */
    MASS(1e-2, "kg", "80 lb", Mass::new),
    /** A number without a unit. */
    RATIO(1e-4, "1", "0.85", Ratio::new);

    private final double tolerance;
    private final String siSymbol;
    private final String example;

    @SuppressWarnings("ImmutableEnumChecker") // a constructor
    private final DoubleFunction<Quantity> maker;

    Dimension(double tolerance, String siSymbol, String example, DoubleFunction<Quantity> maker) {
        this.tolerance = tolerance;
        this.siSymbol = siSymbol;
        this.example = example;
        this.maker = maker;
    }

    /** The difference, in the SI unit, below which two values count as equal. */
    public double tolerance() {
        return tolerance;
    }

    /** A quantity of this dimension from its value in the SI unit. */
    public Quantity of(double si) {
        return maker.apply(si);
    }

    /** The sign of the SI unit: {@code m/m}. */
    public String siSymbol() {
        return siSymbol;
    }

    /** A quantity as the trade writes it, for messages: {@code 18 in}. */
    public String example() {
        return example;
    }

    /** The word for it in messages: {@code length}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
