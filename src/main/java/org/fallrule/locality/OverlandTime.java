package org.fallrule.locality;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;

/**
 * How a place reckons the time that water takes over the ground.
 *
 * @param by the method
 * @param roughness roughness n for sheet flow, which is not that of a channel; for the methods that need it
 * @param twoYearRain depth of the 2 year, 24 hour rain; for the methods that need it
 */
public record OverlandTime(By by, Optional<Ratio> roughness, Optional<Length> twoYearRain) {

    /** The methods, by the names of their pages. */
    public enum By {
        /** From runoff coefficient, length and slope. */
        FAA_TIME,
        /** From length and slope, for swales. */
        KIRPICH,
        /** From roughness, length, slope and the storm itself. */
        KINEMATIC_WAVE,
        /** Sheet flow over the first 100 ft, from roughness and rain; the rest as shallow concentrated flow over lawn. */
        SHEET_FLOW;

        /** The word that rule books use. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public boolean needsRoughness() {
            return this == KINEMATIC_WAVE || this == SHEET_FLOW;
        }

        public boolean needsRain() {
            return this == SHEET_FLOW;
        }

        static List<String> words() {
            return Arrays.stream(values()).map(By::word).toList();
        }
    }
}
