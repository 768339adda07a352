package org.fallrule.hydraulics.mechanics;

import java.util.function.DoubleUnaryOperator;

/** Solves an equation by halving the interval that holds its root, until no number lies between its ends. */
public final class Bisection {
    /** Enough to halve any interval of ordinary numbers down to neighbours. */
    private static final int MOST_HALVINGS = 200;

    private Bisection() {}

    /**
     * Where a rising function reaches zero.
     *
     * @param low where it is zero or less; the answer when it is above zero there
     * @param high where it is zero or more; the answer when it is below zero there
     */
    public static double rootOfRising(DoubleUnaryOperator function, double low, double high) {
        double under = low;
        double over = high;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double middle = under + (over - under) / 2;
            if (middle <= under || middle >= over) {
                return middle;
            }
            if (function.applyAsDouble(middle) < 0) {
                under = middle;
            } else {
                over = middle;
            }
        }
        return over;
    }
}
