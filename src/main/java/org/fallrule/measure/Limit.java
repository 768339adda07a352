package org.fallrule.measure;

/**
 * A limit, and the only place where a value is held against one.
 *
 * @param bound which side is good
 * @param value the limit as its author wrote it
 */
public record Limit(Bound bound, Written value) {

    /**
     * Holds a value against this limit. A value that misses by no more than {@link Dimension#tolerance()} meets it. Where an
     * accuracy is known and the limit lies within it on either side of the value, the answer is {@link Standing#BORDERLINE}.
     *
     * @param measured the value, of the limit's dimension
     * @param accuracy half-width of the interval that the true value lies in, zero when not known or exact
     */
    public Standing standing(Quantity measured, double accuracy) {
        double shortfall = shortfall(measured);
        double tolerance = measured.dimension().tolerance();
        if (accuracy > tolerance && Math.abs(shortfall) < accuracy) {
            return Standing.BORDERLINE;
        }
        return shortfall <= tolerance ? Standing.MEETS : Standing.FAILS;
    }

    /** How far the value misses the limit, in the SI unit; zero or less when it does not. */
    public double shortfall(Quantity measured) {
        if (measured.dimension() != value.quantity().dimension()) {
            throw new IllegalArgumentException(
                    "a " + measured.dimension().word() + " cannot be held against " + value.text());
        }
        return bound.shortfall(measured.si(), value.quantity().si());
    }

    /** Whether this limit asks at least as much as the other, both with the same bound. */
    public boolean atLeastAsTightAs(Limit other) {
        return bound == other.bound
                && bound.shortfall(value.quantity().si(), other.value.quantity().si())
                        <= value.quantity().dimension().tolerance() * 1e-3;
    }
}
