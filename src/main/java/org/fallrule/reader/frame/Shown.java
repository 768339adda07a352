package org.fallrule.reader.frame;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.locationtech.jts.geom.Coordinate;

/** Coordinates as text for faults: plain decimals, never in powers of ten. */
final class Shown {

    private Shown() {}

    static String number(double value) {
        if (!Double.isFinite(value) || Math.abs(value) > 1e15) {
            return String.valueOf(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String xy(Coordinate position) {
        return "(" + number(position.x) + ", " + number(position.y) + ")";
    }

    static String lonLat(Coordinate position) {
        return "longitude " + number(position.x) + ", latitude " + number(position.y);
    }
}
