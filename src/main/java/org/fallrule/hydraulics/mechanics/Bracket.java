package org.fallrule.hydraulics.mechanics;

import java.util.function.DoubleUnaryOperator;

/**
 * Solves an equation by closing the interval that holds its root: the next number tried lies where a straight line between the
 * values at both ends crosses zero, a little further toward the middle so that both ends close in, and never so far from the
 * middle that halving would have been done sooner (I. F. D. Oliveira and R. H. C. Takahashi, "An enhancement of the bisection
 * method average performance preserving minmax optimality", ACM Transactions on Mathematical Software 47(1), 2020, with n0 = 1,
 * kappa1 = 0.2 over the interval, kappa2 = 2). It takes a few steps where a function bends little, and one more than halving at
 * most.
 */
public final class Bracket {
    /** Metres, or what the root is in, as a share of the first interval: a few neighbouring numbers. */
    private static final double CLOSE = 1e-15;

    private static final double TOWARD_MIDDLE = 0.2;

    private final DoubleUnaryOperator function;
    private final double scale;
    private double under;
    private double over;
    private double valueUnder = Double.NaN;
    private double valueOver = Double.NaN;

    private Bracket(DoubleUnaryOperator function, double low, double high) {
        this.function = function;
        this.scale = high - low;
        this.under = low;
        this.over = high;
    }

    /**
     * Where a rising function reaches zero. It is not asked at the ends.
     *
     * @param low where it is zero or less; the answer when it is above zero there
     * @param high where it is zero or more; the answer when it is below zero there
     */
    public static double rootOfRising(DoubleUnaryOperator function, double low, double high) {
        return new Bracket(function, low, high).root();
    }

    private double root() {
        double allowed = scale;
        while (over - under > CLOSE * scale && isApart(middle())) {
            double next = next(allowed - (over - under) / 2);
            close(isApart(next) ? next : middle());
            allowed /= 2;
        }
        return middle();
    }

    private double middle() {
        return under + (over - under) / 2;
    }

    private boolean isApart(double number) {
        return number > under && number < over;
    }

    /** @param reach how far from the middle it may lie */
    private double next(double reach) {
        double middle = middle();
        double crossing = (valueOver * under - valueUnder * over) / (valueOver - valueUnder);
        if (Double.isNaN(crossing)) {
            return middle;
        }
        double toMiddle = middle - crossing;
        double shift = TOWARD_MIDDLE / scale * (over - under) * (over - under);
        double shifted = shift <= Math.abs(toMiddle) ? crossing + Math.copySign(shift, toMiddle) : middle;
        return Math.abs(shifted - middle) <= reach ? shifted : middle - Math.copySign(Math.max(0, reach), toMiddle);
    }

    private void close(double number) {
        double value = function.applyAsDouble(number);
        if (value < 0) {
            under = number;
            valueUnder = value;
        } else {
            over = number;
            valueOver = value;
        }
    }
}
