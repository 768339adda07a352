package org.fallrule.terrain;

import java.util.Arrays;
import java.util.List;

/**
 * Tells surveyed heights from numbers that stand for none. Out of place are heights that no dry ground on earth has (below
 * the Dead Sea's shore at about -430 m, or above Everest's 8,849 m: -9999 feet or metres is among them), and a height of
 * exactly 0 when all others are far from it: when 0 is farther from their range than the range is wide.
 */
final class PlausibleHeights {
    private static final double LOWEST = -450;
    private static final double HIGHEST = 8900;

    /** Metres. Level ground has no range to speak of; a lot that is so near to the sea may have a true 0. */
    private static final double SMALLEST_RANGE = 3;

    private final boolean zeroIsPlausible;

    /** @param heights all heights of the survey, in metres */
    PlausibleHeights(List<Double> heights) {
        double[] others = heights.stream()
                .filter(z -> z != 0 && isOnEarth(z))
                .mapToDouble(Double::doubleValue)
                .toArray();
        double lowest = Arrays.stream(others).min().orElse(0);
        double highest = Arrays.stream(others).max().orElse(0);
        double reach = Math.max(highest - lowest, SMALLEST_RANGE);
        this.zeroIsPlausible = lowest - reach <= 0 && highest + reach >= 0;
    }

    boolean holds(double z) {
        return isOnEarth(z) && (z != 0 || zeroIsPlausible);
    }

    private static boolean isOnEarth(double z) {
        return z >= LOWEST && z <= HIGHEST;
    }
}
