package org.fallrule.site;

import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.measure.Length;

/**
 * How the plan's features were measured.
 *
 * @param date when
 * @param source by what means, in the plan's words
 * @param horizontalAccuracy half-width of the interval in plan that the true position lies in
 * @param verticalAccuracy the same for elevations
 */
public record Survey(
        Optional<LocalDate> date,
        Optional<String> source,
        Optional<Length> horizontalAccuracy,
        Optional<Length> verticalAccuracy) {

    public static final Survey UNKNOWN =
            new Survey(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
