package org.fallrule.terrain;

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

    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    /** Takes in a height of the survey, in metres; all of them before the first is asked about. */
    void take(double z) {
        if (z != 0 && isOnEarth(z)) {
            lowest = Math.min(lowest, z);
            highest = Math.max(highest, z);
        }
    }

    boolean holds(double z) {
        return isOnEarth(z) && (z != 0 || zeroIsPlausible());
    }

    private boolean zeroIsPlausible() {
        double reach = Math.max(highest - lowest, SMALLEST_RANGE);
        return lowest > highest || (lowest - reach <= 0 && highest + reach >= 0);
    }

    private static boolean isOnEarth(double z) {
        return z >= LOWEST && z <= HIGHEST;
    }
}
