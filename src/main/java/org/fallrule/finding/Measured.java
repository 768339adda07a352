package org.fallrule.finding;

import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;

/**
 * A value and the limit it was held against.
 *
 * @param of what was measured, as a sentence names it: {@code plan distance}
 * @param value the value
 * @param accuracy half-width in SI of the interval that the true value lies in; zero when not known
 * @param limit the limit; empty for a bare fact
 * @param limitSetBy the line of the rule book that set the limit
 * @param metric whether it is of a plan in metres, and is printed in metric units; else in those of the limit
 */
public record Measured(
        String of, Quantity value, double accuracy, Optional<Limit> limit, Optional<Place> limitSetBy, boolean metric) {

    public Measured(String of, Quantity value, double accuracy, Optional<Limit> limit, Optional<Place> limitSetBy) {
        this(of, value, accuracy, limit, limitSetBy, false);
    }

    /** The same of a plan in metres. */
    public Measured inMetres() {
        return new Measured(of, value, accuracy, limit, limitSetBy, true);
    }

    /** The unit to print a value in that comes with none. */
    public Unit usualUnit() {
        Unit usual = Unit.usual(value.dimension());
        return metric ? usual.metric() : usual;
    }

    /** The value without its limit. */
    public Measured asFact() {
        return new Measured(of, value, 0, Optional.empty(), Optional.empty(), metric);
    }

    /** A value that no limit is asked of. */
    public static Measured fact(String of, Quantity value) {
        return new Measured(of, value, 0, Optional.empty(), Optional.empty());
    }
}
