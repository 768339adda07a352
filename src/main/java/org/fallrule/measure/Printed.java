package org.fallrule.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Quantities as text. A measured value is printed in the unit of its limit, with as many digits as it takes for the print not
 * to contradict the outcome: 4.996 ft, which fails 5 ft, is not printed as {@code 5.00 ft}. A value that misses its limit by no
 * more than {@link Dimension#tolerance()} counts as equal to it, and is printed as equal to it.
 */
public final class Printed {
    private static final int MOST_DECIMALS = 9;
    private static final int LIMIT_DECIMALS = 7;

    /** Numbers of so few steps of the last decimal are told from a half by arithmetic alone, as near to it as this. */
    private static final double FEW_STEPS = 1e9;

    private static final double NEAR_HALF = 1e-6;

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    private Printed() {}

    /** The quantity in a unit with that unit's usual digits: {@code 3.50 ft}. */
    public static String of(Quantity quantity, Unit unit) {
        return of(quantity, unit, unit.decimals());
    }

    /** A length in feet, whole feet without digits: {@code 10 ft}, {@code 7.26 ft}. */
    public static String feet(double metres) {
        return whole(metres, Unit.FOOT);
    }

    /** A length in a unit, a whole number without digits: {@code 10 ft}, {@code 3 m}. */
    public static String whole(double metres, Unit unit) {
        double number = metres / unit.toSi();
        boolean whole = Math.abs(number - Math.rint(number)) * unit.toSi() <= Dimension.LENGTH.tolerance();
        return whole ? trimmed(Math.rint(number)) + " " + unit.symbol() : of(new Length(metres), unit);
    }

    /** A value next to its limit, in the limit's unit, with digits enough to agree with the standing. */
    public static String beside(Quantity measured, Limit limit) {
        return beside(measured, limit, false);
    }

    /**
     * A value next to its limit.
     *
     * @param metric whether to print it in a metric unit whatever unit the limit is written in
     */
    public static String beside(Quantity measured, Limit limit, boolean metric) {
        Unit unit = readable(limit.value().unit(), metric);
        Quantity shown = limit.standing(measured, 0) == Standing.FAILS || limit.shortfall(measured) <= 0
                ? measured
                : limit.value().quantity();
        return text(numberBeside(shown, limit, unit), unit);
    }

    /** The shortfall printed with the same digits as the value it belongs to, and never as zero. */
    public static String shortfall(Quantity measured, Limit limit) {
        return shortfall(measured, limit, false);
    }

    /**
     * The shortfall.
     *
     * @param metric whether to print it in a metric unit whatever unit the limit is written in
     */
    public static String shortfall(Quantity measured, Limit limit, boolean metric) {
        Unit unit = readable(limit.value().unit(), metric);
        Quantity gap = measured.dimension().of(limit.shortfall(measured));
        int decimals = numberBeside(measured, limit, unit).scale();
        while (decimals < MOST_DECIMALS && rounded(gap.in(unit), decimals).signum() == 0) {
            decimals++;
        }
        return of(gap, unit, decimals);
    }

    /** The limit as its author wrote it; a slope in another form than percent also in percent. */
    public static String limit(Written written) {
        return limit(written, false);
    }

    /**
     * The limit as its author wrote it.
     *
     * @param metric whether to add what it is in a metric unit, where it is written in another: {@code 5 ft (1.524 m)}
     */
    public static String limit(Written written, boolean metric) {
        Unit unit = readable(written.unit(), metric);
        boolean isNothing = metric && written.quantity().si() == 0;
        return isNothing || isPlain(written, unit)
                ? written.text()
                : written.text() + " (" + printedNumber(written, unit).toPlainString() + " " + unit.symbol() + ")";
    }

    /** A number without trailing zeros: {@code 5}, {@code 0.25}. */
    public static String trimmed(double number) {
        BigDecimal decimal = rounded(number, LIMIT_DECIMALS).stripTrailingZeros();
        return decimal.toPlainString();
    }

    private static String of(Quantity quantity, Unit unit, int decimals) {
        return text(rounded(quantity.in(unit), decimals), unit);
    }

    private static String text(BigDecimal number, Unit unit) {
        String digits = number.toPlainString();
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }

    /** The value with as many decimals as it takes to look as it stands. */
    private static BigDecimal numberBeside(Quantity measured, Limit limit, Unit unit) {
        boolean fails = limit.standing(measured, 0) == Standing.FAILS;
        double value = measured.in(unit);
        BigDecimal asked = printedNumber(limit.value(), unit);
        BigDecimal number = rounded(value, unit.decimals());
        while (number.scale() < MOST_DECIMALS && fails != looksFailing(limit.bound(), number, asked)) {
            number = rounded(value, number.scale() + 1);
        }
        return number;
    }

    private static boolean looksFailing(Bound bound, BigDecimal value, BigDecimal asked) {
        int order = value.compareTo(asked);
        return bound == Bound.AT_LEAST ? order < 0 : order > 0;
    }

    /** The number that a reader sees in the print of a limit. */
    private static BigDecimal printedNumber(Written limit, Unit unit) {
        double number = limit.quantity().in(unit);
        BigDecimal usual = rounded(number, unit.decimals());
        if (!isPlain(limit, unit)) {
            boolean exact = usual.compareTo(rounded(number, LIMIT_DECIMALS)) == 0;
            return exact ? usual : rounded(number, unit.decimalsOfTolerance());
        }
        boolean endless = rounded(number, LIMIT_DECIMALS).compareTo(rounded(number, MOST_DECIMALS)) != 0;
        return rounded(number, endless ? unit.decimalsOfTolerance() : LIMIT_DECIMALS);
    }

    private static boolean isPlain(Written written, Unit unit) {
        return unit == written.unit() && !written.text().contains(":");
    }

    /** A number rounded half up, by its shortest decimal form, as a reader would who sees that. */
    static BigDecimal rounded(double number, int decimals) {
        double steps = Math.abs(number) * tens(decimals);
        double beyond = steps - Math.floor(steps);
        if (steps < FEW_STEPS && Math.abs(beyond - 0.5) > NEAR_HALF) {
            long whole = (long) Math.floor(steps) + (beyond > 0.5 ? 1 : 0);
            return BigDecimal.valueOf(number < 0 ? -whole : whole, decimals);
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : rounded;
    }

    /** A power of ten; those that are asked for again and again stand in a table. */
    private static double tens(int power) {
        return power < TENS.length ? TENS[power] : Math.pow(10, power);
    }

    private static Unit readable(Unit unit, boolean metric) {
        Unit read = unit.dimension() == Dimension.SLOPE ? Unit.PERCENT : unit;
        return metric ? read.metric() : read;
    }
}
