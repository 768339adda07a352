package org.fallrule.network;

import java.util.Locale;

/**
 * A place along a pipe as crews write it: hundreds of feet, a plus sign, feet and tenths. {@code 0+41.7} is 41.7 ft from the
 * start.
 *
 * @param metres distance from the start of the pipe
 */
public record Station(double metres) {

    @Override
    public String toString() {
        long tenths = Math.round(Math.max(0, metres) / 0.3048 * 10);
        return String.format(Locale.ROOT, "%d+%02d.%d", tenths / 1000, tenths / 10 % 100, tenths % 10);
    }
}
