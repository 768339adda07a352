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

    /**
     * The accuracy in metres of a plan distance between two features. What was measured counts, what is only designed has
     * the place that the design gives it. Independent errors add in squares (JCGM 100:2008, 5.1.2). Zero when the survey
     * states none.
     */
    public double ofDistance(Feature one, Feature other) {
        return Math.hypot(of(one, horizontalAccuracy), of(other, horizontalAccuracy));
    }

    /** The accuracy in metres of a height of the first feature above the second, as {@link #ofDistance} in plan. */
    public double ofHeight(Feature one, Feature other) {
        return Math.hypot(of(one, verticalAccuracy), of(other, verticalAccuracy));
    }

    /** The accuracy in metres of a plan distance from a feature to a place on the surveyed ground. */
    public double ofDistanceOnGround(Feature feature) {
        return Math.hypot(
                of(feature, horizontalAccuracy),
                horizontalAccuracy.map(Length::metres).orElse(0.0));
    }

    /** The accuracy in metres of a height of a feature above or below the surveyed ground. */
    public double ofHeightAtGround(Feature feature) {
        return Math.hypot(
                of(feature, verticalAccuracy),
                verticalAccuracy.map(Length::metres).orElse(0.0));
    }

    private static double of(Feature feature, Optional<Length> accuracy) {
        return feature.isDesigned() ? 0 : accuracy.map(Length::metres).orElse(0.0);
    }
}
