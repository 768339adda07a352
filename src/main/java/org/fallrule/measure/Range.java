package org.fallrule.measure;

/**
 * The amounts that make sense somewhere, such as 0 to 1 for a share.
 *
 * @param least the least, in the SI unit
 * @param leastItself whether the least itself makes sense
 * @param greatest the greatest, in the SI unit; beyond every quantity where there is none
 * @param spoken what to give, for messages: {@code 0 to 1}
 */
public record Range(double least, boolean leastItself, double greatest, String spoken) {
    private static final double NONE = Double.MAX_VALUE;

    public static final Range FROM_ZERO = new Range(0, true, NONE, "zero or more");

    public static final Range ABOVE_ZERO = new Range(0, false, NONE, "more than zero");

    /** A part of a whole. */
    public static final Range SHARE = new Range(0, true, 1, "0 to 1");

    /** A part of a whole that is not nothing. */
    public static final Range SHARE_ABOVE_ZERO = new Range(0, false, 1, "more than 0 and at most 1");

    /** From an amount upward, such as {@code 1 in}. */
    public static Range from(String least, Dimension dimension) {
        Written written = Written.parse(least, dimension);
        return new Range(written.quantity().si(), true, NONE, written.text() + " or more");
    }

    /** From an amount to another, such as {@code 0 deg} to {@code 90 deg}. */
    public static Range between(String least, String greatest, Dimension dimension) {
        Written from = Written.parse(least, dimension);
        Written to = Written.parse(greatest, dimension);
        return new Range(from.quantity().si(), true, to.quantity().si(), from.text() + " to " + to.text());
    }

    public boolean isEverything() {
        return equals(FROM_ZERO);
    }

    public boolean hasGreatest() {
        return greatest < NONE;
    }

    public boolean holds(Quantity quantity) {
        double si = quantity.si();
        return si <= greatest && (leastItself ? si >= least : si > least);
    }
}
