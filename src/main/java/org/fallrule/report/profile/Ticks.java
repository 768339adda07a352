package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.measure.Printed;

/**
 * Round places on an axis, in feet.
 *
 * @param step from one to the next
 * @param all the places
 */
record Ticks(double step, List<Double> all) {
    private static final double[] HEIGHTS = {0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 500, 1000};
    private static final double[] STATIONS = {2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};

    static Ticks heights(double from, double to, double pxPerFoot) {
        return of(HEIGHTS, from, to, 24 / pxPerFoot);
    }

    static Ticks stations(double length, double pxPerFoot) {
        return of(STATIONS, 0, length, 42 / pxPerFoot);
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

    /** {@code 97.5}. */
    static String height(double feet) {
        return Printed.trimmed(Math.round(feet * 10) / 10.0);
    }

    /** {@code 0+40}. */
    static String station(double feet) {
        long whole = Math.round(feet);
        return String.format(Locale.ROOT, "%d+%02d", whole / 100, whole % 100);
    }
}
