package org.fallrule.filter;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The relations of two values. Texts are compared letter by letter, numbers up to {@link #SAME_NUMBER}. A number that is
 * written as text counts as a number where the other value is one; any other text is unlike every number, and neither less
 * nor more.
 */
public enum Relation {
    EQUAL,
    LESS,
    AT_MOST,
    MORE,
    AT_LEAST;

    /** Two numbers nearer to each other than this part of themselves are equal. */
    public static final double SAME_NUMBER = 1e-6;

    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");

    Truth between(Object value, Object to) {
        if (!(value instanceof Number) && !(to instanceof Number)) {
            return Truth.of(holds(String.valueOf(value).compareTo(String.valueOf(to))));
        }
        Optional<Double> number = number(value);
        Optional<Double> limit = number(to);
        if (number.isPresent() && limit.isPresent()) {
            return Truth.of(holds(order(number.get(), limit.get())));
        }
        return this == EQUAL ? Truth.FALSE : Truth.UNKNOWN;
    }

    private static Optional<Double> number(Object value) {
        if (value instanceof Number number) {
            return Optional.of(number.doubleValue());
        }
        String text = String.valueOf(value).strip();
        return NUMBER.matcher(text).matches() ? Optional.of(Double.parseDouble(text)) : Optional.empty();
    }

    private static int order(double value, double to) {
        double same = SAME_NUMBER * Math.max(Math.abs(value), Math.abs(to));
        return Math.abs(value - to) <= same ? 0 : Double.compare(value, to);
    }

    private boolean holds(int order) {
        return switch (this) {
            case EQUAL -> order == 0;
            case LESS -> order < 0;
            case AT_MOST -> order <= 0;
            case MORE -> order > 0;
            case AT_LEAST -> order >= 0;
        };
    }
}
