package org.fallrule.remedy;

import java.util.Locale;
import org.fallrule.measure.Unit;

/**
 * Earth that is moved, in cubic metres, measured in its place.
 *
 * @param fill what is brought
 * @param cut what is taken away
 */
record Earthwork(double fill, double cut) {

    Earthwork plus(Earthwork other) {
        return new Earthwork(fill + other.fill, cut + other.cut);
    }

    /** {@code about 0.8 cu yd of fill and 0.1 cu yd of cut}; of less than a tenth of it only the larger part is told. */
    String spoken(boolean metric) {
        Unit unit = metric ? Unit.CUBIC_METRE : Unit.CUBIC_YARD;
        double least = unit.toSi() / 20;
        if (fill < least && cut < least) {
            return "less than 0.1 " + unit.symbol() + " of earth";
        }
        String filled = tenths(fill, unit) + " of fill";
        String taken = tenths(cut, unit) + " of cut";
        return "about " + (cut < least ? filled : fill < least ? taken : filled + " and " + taken);
    }

    private static String tenths(double cubicMetres, Unit unit) {
        return String.format(Locale.ROOT, "%.1f %s", cubicMetres / unit.toSi(), unit.symbol());
    }
}
