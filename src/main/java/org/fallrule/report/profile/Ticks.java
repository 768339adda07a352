package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.report.SheetUnits;

/**
 * Round places on an axis, in the unit of the axis.
 *
 * @param step from one to the next
 * @param all the places
 */
record Ticks(double step, List<Double> all) {
    private static final double[] HEIGHTS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 500, 1000};
    private static final double[] STATIONS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};

    static Ticks heights(double from, double to, double pxPerUnit) {
        return of(HEIGHTS, from, to, 24 / pxPerUnit);
    }

    static Ticks stations(double from, double to, double pxPerUnit) {
        return of(STATIONS, from, to, 42 / pxPerUnit);
    }

    private static Ticks of(double[] steps, double from, double to, double least) {
        double step = steps[steps.length - 1];
        for (int i = steps.length - 1; i >= 0 && steps[i] >= least; i--) {
            step = steps[i];
        }
        List<Double> all = new ArrayList<>();
        for (double k = Math.ceil(from / step - 1e-9); k * step <= to + 1e-9; k++) {
            all.add(k * step);
        }
        return new Ticks(step, all);
    }

    /** {@code 97.5}, each with as many digits as the step has. */
    String height(double place) {
        int digits = step >= 1 ? 0 : step * 10 % 1 < 1e-9 ? 1 : 2;
        return String.format(Locale.ROOT, "%." + digits + "f", place + 0.0);
    }

    /** {@code 0+40} in feet, {@code 12} in metres. */
    static String station(double place, SheetUnits units) {
        long whole = Math.round(place);
        return units == SheetUnits.FEET
                ? String.format(Locale.ROOT, "%d+%02d", whole / 100, whole % 100)
                : String.valueOf(whole);
    }
}
