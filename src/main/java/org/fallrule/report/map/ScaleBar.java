package org.fallrule.report.map;

import org.fallrule.measure.Length;
import org.fallrule.site.Site;

/**
 * A bar of a round length.
 *
 * @param number its length on the ground in that unit
 * @param unit the unit
 * @param px its length on the sheet
 */
public record ScaleBar(int number, GroundUnit unit, double px) {
    private static final int[] ROUND = {
        1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000
    };

    /** The units that it may be in. */
    public enum GroundUnit {
        FEET(Length.feet(1).metres(), "ft"),
        METRES(1, "m");

        private final double metres;
        private final String symbol;

        /** The unit of a plan whose heights are in metres, or of one whose heights are in feet. */
        public static GroundUnit of(Site site) {
            return site.metric() ? METRES : FEET;
        }

        GroundUnit(double metres, String symbol) {
            this.metres = metres;
            this.symbol = symbol;
        }
    }

    /** The longest bar of a round length that is no longer than so many pixels. */
    public static ScaleBar within(double mostPx, double pxPerMetre, GroundUnit unit) {
        ScaleBar bar = of(ROUND[0], unit, pxPerMetre);
        for (int number : ROUND) {
            if (of(number, unit, pxPerMetre).px() <= mostPx) {
                bar = of(number, unit, pxPerMetre);
            }
        }
        return bar;
    }

    private static ScaleBar of(int number, GroundUnit unit, double pxPerMetre) {
        return new ScaleBar(number, unit, number * unit.metres * pxPerMetre);
    }

    /** Its length in words. */
    public String words() {
        return number + " " + unit.symbol;
    }
}
