package org.fallrule.network;

import org.fallrule.measure.Unit;

/**
 * A place along a pipe as crews write it: hundreds of feet, a plus sign, feet and tenths. {@code 0+41.7} is 41.7 ft from the
 * start.
 *
 * @param metres distance from the start of the pipe
 */
public record Station(double metres) {

    @Override
    public String toString() {
        long tenths = Math.round(Math.max(0, metres) / Unit.FOOT.toSi() * 10);
        long feet = tenths / 10 % 100;
        return tenths / 1000 + (feet < 10 ? "+0" : "+") + feet + "." + tenths % 10;
    }
}
