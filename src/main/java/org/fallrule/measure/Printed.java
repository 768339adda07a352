package org.fallrule.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Quantities as text. A measured value is printed in the unit of its limit, with as many digits as it takes for the print not
 * to contradict the outcome: 4.9985 ft against 5 ft is never printed as {@code 5.00 ft} when it fails.
 */
public final class Printed {
    private static final int MOST_DECIMALS = 7;

    private Printed() {}

    /** The quantity in a unit with that unit's usual digits: {@code 3.50 ft}. */
    public static String of(Quantity quantity, Unit unit) {
        return of(quantity, unit, unit.decimals());
    }

    /** A value next to its limit, in the limit's unit, with digits enough to agree with the standing. */
    public static String beside(Quantity measured, Limit limit) {
        Unit unit = readable(limit.value().unit());
        return of(measured, unit, decimalsBeside(measured, limit, unit));
    }

    /** The shortfall printed with the same digits as the value it belongs to, and never as zero. */
    public static String shortfall(Quantity measured, Limit limit) {
        Unit unit = readable(limit.value().unit());
        Quantity gap = measured.dimension().of(limit.shortfall(measured));
        int decimals = decimalsBeside(measured, limit, unit);
        while (decimals < MOST_DECIMALS && rounded(gap.in(unit), decimals).signum() == 0) {
            decimals++;
        }
        return of(gap, unit, decimals);
    }

    /** The limit as its author wrote it; a slope in another form than percent also in percent. */
    public static String limit(Written written) {
        boolean plain =
                readable(written.unit()) == written.unit() && !written.text().contains(":");
        return plain ? written.text() : written.text() + " (" + of(written.quantity(), Unit.PERCENT) + ")";
    }

    /** A number without trailing zeros: {@code 5}, {@code 0.25}. */
    public static String trimmed(double number) {
        BigDecimal decimal = rounded(number, MOST_DECIMALS).stripTrailingZeros();
        return decimal.toPlainString();
    }

    private static String of(Quantity quantity, Unit unit, int decimals) {
        String number = rounded(quantity.in(unit), decimals).toPlainString();
        return number + " " + unit.symbol();
    }

    private static int decimalsBeside(Quantity measured, Limit limit, Unit unit) {
        boolean fails = limit.standing(measured, 0) == Standing.FAILS;
        double value = measured.in(unit);
        double asked = limit.value().quantity().in(unit);
        int decimals = unit.decimals();
        while (decimals < MOST_DECIMALS && fails != looksFailing(limit.bound(), value, asked, decimals)) {
            decimals++;
        }
        return fails == looksFailing(limit.bound(), value, asked, decimals) ? decimals : unit.decimals();
    }

    private static boolean looksFailing(Bound bound, double value, double asked, int decimals) {
        int order = rounded(value, decimals).compareTo(rounded(asked, decimals));
        return bound == Bound.AT_LEAST ? order < 0 : order > 0;
    }

    static BigDecimal rounded(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : rounded;
    }

    private static Unit readable(Unit unit) {
        return unit.dimension() == Dimension.SLOPE ? Unit.PERCENT : unit;
    }
}
