package org.fallrule.measure;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity as somebody wrote it: the amount, the unit they used, and their text.
 *
 * <p>Text is read as a number, a whole number with a fraction, or a fraction, then a unit: {@code 5 ft}, {@code 18 in},
 * {@code 1 1/2 in}, {@code 1/8 in/ft}, {@code 1 %}. A ratio is
 * a number alone. A slope may also stand as a ratio, {@code 1:48}, fall to run. A ratio that
 * falls more than it runs is refused: graders write side slopes run to rise, so that {@code 3:1} could mean either.
 *
 * @param quantity the amount
 * @param unit the unit it was written in
 * @param text the text, tidied
 */
public record Written(Quantity quantity, Unit unit, String text) {
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile(
            "(?:([-+]?\\d+)\\s+(?=\\d+/))?([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?)(?:/(\\d+))?\\s*([^\\d\\s.+-].*)?");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0\\u202f]+");
    /** In SI; far beyond any lot, and small enough for a double to resolve every {@link Dimension#tolerance()}. */
    public static final double GREATEST = 1e9;

    private static final int LONGEST = 60;
    private static final Pattern RATIO = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*:\\s*(\\d+(?:\\.\\d+)?)");

    /**
     * Reads a quantity of the wanted dimension.
     *
     * @throws UnreadableQuantity if there is no number, no unit, or a unit that does not measure the wanted dimension
     */
    public static Written parse(String text, Dimension wanted) {
        if (text.length() > LONGEST) {
            throw UnreadableQuantity.tooLong(text.substring(0, LONGEST), wanted);
        }
        String tidy = BLANKS.matcher(text).replaceAll(" ").strip();
        Matcher ratio = RATIO.matcher(tidy);
        if (wanted == Dimension.SLOPE && ratio.matches()) {
            return new Written(new Slope(fallToRun(ratio, text)), Unit.PERCENT, tidy);
        }
        Matcher parts = NUMBER_AND_UNIT.matcher(tidy);
        if (!parts.matches()) {
            throw UnreadableQuantity.notANumber(text, wanted);
        }
        String unitWord = Optional.ofNullable(parts.group(4)).orElse("");
        if (unitWord.isEmpty() && wanted != Dimension.RATIO) {
            throw UnreadableQuantity.unitMissing(text, wanted);
        }
        Unit unit =
                Unit.named(unitWord, wanted).orElseThrow(() -> UnreadableQuantity.unitUnknown(text, unitWord, wanted));
        double si = number(parts, text, wanted) * unit.toSi();
        if (Math.abs(si) > GREATEST) {
            throw UnreadableQuantity.tooGreat(text, wanted);
        }
        return new Written(wanted.of(si), unit, tidy);
    }

    /** A bare number in a unit stated elsewhere. */
    public static Written of(double number, Unit unit) {
        return new Written(
                unit.dimension().of(number * unit.toSi()),
                unit,
                (Printed.trimmed(number) + " " + unit.symbol()).strip());
    }

    /**
     * A computed number in a unit, rounded to so many digits after the point, or more where it takes more to stay within
     * {@link Dimension#tolerance()} of the number. Amount and text are the same, so that nobody is held to digits not shown.
     */
    public static Written of(double number, Unit unit, int decimals) {
        BigDecimal rounded = Printed.rounded(number, Math.max(decimals, unit.decimalsOfTolerance()));
        return new Written(
                unit.dimension().of(rounded.doubleValue() * unit.toSi()),
                unit,
                (rounded.toPlainString() + " " + unit.symbol()).strip());
    }

    private static double fallToRun(Matcher ratio, String text) {
        double fall = Double.parseDouble(ratio.group(1));
        double run = Double.parseDouble(ratio.group(2));
        if (run == 0) {
            throw UnreadableQuantity.notANumber(text, Dimension.SLOPE);
        }
        if (fall > run) {
            throw UnreadableQuantity.steepRatio(text);
        }
        return fall / run;
    }

    private static double number(Matcher parts, String text, Dimension wanted) {
        double last = Double.parseDouble(parts.group(2));
        if (parts.group(3) != null) {
            double divisor = Double.parseDouble(parts.group(3));
            if (divisor == 0) {
                throw UnreadableQuantity.notANumber(text, wanted);
            }
            last /= divisor;
        }
        if (parts.group(1) == null) {
            return last;
        }
        double whole = Double.parseDouble(parts.group(1));
        return parts.group(1).startsWith("-") ? whole - last : whole + last;
    }
}
