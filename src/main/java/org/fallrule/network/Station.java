package org.fallrule.network;

import java.util.Locale;
import org.fallrule.measure.Unit;

/**
 * A place along a pipe as crews write it. In feet: hundreds of feet, a plus sign, feet and tenths, {@code 0+41.7} for 41.7 ft
 * from the start; in metres {@code 12.71 m}.
 *
 * @param metres distance from the start of the pipe
 * @param metric whether it is written in metres
 */
public record Station(double metres, boolean metric) {

    /** A place that is written in feet. */
    public Station(double metres) {
        this(metres, false);
    }

    @Override
    public String toString() {
        double along = Math.max(0, metres);
        if (metric) {
            return String.format(Locale.ROOT, "%.2f m", along);
        }
        long tenths = Math.round(along / Unit.FOOT.toSi() * 10);
        long feet = tenths / 10 % 100;
        return tenths / 1000 + (feet < 10 ? "+0" : "+") + feet + "." + tenths % 10;
    }
}
