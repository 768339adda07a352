package org.fallrule.finding;

import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;

/**
 * A value and the limit it was held against.
 *
 * @param of what was measured, as a sentence names it: {@code plan distance}
 * @param value the value
 * @param accuracy half-width in SI of the interval that the true value lies in; zero when not known
 * @param limit the limit; empty for a bare fact
 * @param limitSetBy the line of the rule book that set the limit
 */
public record Measured(String of, Quantity value, double accuracy, Optional<Limit> limit, Optional<Place> limitSetBy) {

    /** The value without its limit. */
    public Measured asFact() {
        return fact(of, value);
    }

    /** A value that no limit is asked of. */
    public static Measured fact(String of, Quantity value) {
        return new Measured(of, value, 0, Optional.empty(), Optional.empty());
    }
}
