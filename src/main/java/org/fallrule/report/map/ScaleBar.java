package org.fallrule.report.map;

import org.fallrule.measure.Length;

/**
 * A bar of a round number of feet.
 *
 * @param feet its length on the ground
 * @param px its length on the sheet
 */
record ScaleBar(int feet, double px) {
    private static final int[] ROUND = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000};

    /** The longest bar of a round length that is no longer than so many pixels. */
    static ScaleBar within(double mostPx, double pxPerMetre) {
        ScaleBar bar = of(ROUND[0], pxPerMetre);
        for (int feet : ROUND) {
            if (of(feet, pxPerMetre).px() <= mostPx) {
                bar = of(feet, pxPerMetre);
            }
        }
        return bar;
    }

    private static ScaleBar of(int feet, double pxPerMetre) {
        return new ScaleBar(feet, Length.feet(feet).metres() * pxPerMetre);
    }
}
