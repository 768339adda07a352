package org.fallrule.measure;

/** A measured or required amount. Holds SI inside; a unit comes in only where text is read or printed. */
public sealed interface Quantity
        permits Length, Mass, Elevation, Slope, Area, Angle, Flow, Velocity, Intensity, Time, Volume, Ratio {

    /** The value in the SI unit of its dimension. */
    double si();

    Dimension dimension();

    /** This quantity's value in a unit of the same dimension. */
    default double in(Unit unit) {
        if (unit.dimension() != dimension()) {
            throw new IllegalArgumentException(
                    unit + " does not measure " + dimension().word());
        }
        return si() / unit.toSi();
    }

    /** Refuses NaN and infinity: a quantity that could not be computed is absent, not a number. */
    static double finite(double si) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be a finite number, found " + si);
        }
        return si;
    }
}
