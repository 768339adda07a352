package org.fallrule.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity as somebody wrote it: the amount, the unit they used, and their text.
 *
 * <p>Text is read as a number, a whole number with a fraction, or a fraction, then a unit: {@code 5 ft}, {@code 18 in},
 * {@code 1 1/2 in}, {@code 1/8 in/ft}, {@code 1 %}. A slope may also stand as a ratio, {@code 1:48} (fall to run).
 *
 * @param quantity the amount
 * @param unit the unit it was written in
 * @param text the text, tidied
 */
public record Written(Quantity quantity, Unit unit, String text) {
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile(
            "([-+]?\\d+\\s+)?([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?)(?:/(\\d+))?\\s*(\\D.*)?");
    private static final Pattern RATIO = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*:\\s*(\\d+(?:\\.\\d+)?)");

    /**
     * Reads a quantity of the wanted dimension.
     *
     * @throws UnreadableQuantity if there is no number, no unit, or a unit that does not measure the wanted dimension
     */
    public static Written parse(String text, Dimension wanted) {
        String tidy = text.strip().replaceAll("\\s+", " ");
        if (wanted == Dimension.SLOPE) {
            Matcher ratio = RATIO.matcher(tidy);
            if (ratio.matches() && Double.parseDouble(ratio.group(2)) > 0) {
                double slope = Double.parseDouble(ratio.group(1)) / Double.parseDouble(ratio.group(2));
                return new Written(wanted.of(slope), Unit.PERCENT, tidy);
            }
        }
        Matcher parts = NUMBER_AND_UNIT.matcher(tidy);
        if (!parts.matches()) {
            throw UnreadableQuantity.notANumber(text, wanted);
        }
        if (parts.group(4) == null) {
            throw UnreadableQuantity.unitMissing(text, wanted);
        }
        Unit unit = Unit.named(parts.group(4), wanted)
                .orElseThrow(() -> UnreadableQuantity.unitUnknown(text, parts.group(4), wanted));
        double si = number(parts, text, wanted) * unit.toSi();
        if (!Double.isFinite(si)) {
            throw UnreadableQuantity.notANumber(text, wanted);
        }
        return new Written(wanted.of(si), unit, tidy);
    }

    /** A bare number in a unit stated elsewhere. */
    public static Written of(double number, Unit unit) {
        return new Written(
                unit.dimension().of(number * unit.toSi()), unit, Printed.trimmed(number) + " " + unit.symbol());
    }

    /** A computed number in a unit, its text rounded to so many digits after the point. */
    public static Written of(double number, Unit unit, int decimals) {
        String text = Printed.rounded(number, decimals).toPlainString() + " " + unit.symbol();
        return new Written(unit.dimension().of(number * unit.toSi()), unit, text);
    }

    private static double number(Matcher parts, String text, Dimension wanted) {
        double last = Double.parseDouble(parts.group(2));
        if (parts.group(3) != null) {
            double divisor = Double.parseDouble(parts.group(3));
            if (divisor == 0) {
                throw UnreadableQuantity.notANumber(text, wanted);
            }
            last /= divisor;
        } else if (parts.group(1) != null) {
            throw UnreadableQuantity.notANumber(text, wanted);
        }
        if (parts.group(1) == null) {
            return last;
        }
        double whole = Double.parseDouble(parts.group(1).strip());
        return whole < 0 ? whole - last : whole + last;
    }
}
