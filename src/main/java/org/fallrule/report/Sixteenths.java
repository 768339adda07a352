package org.fallrule.report;

import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;

/** A small length as it stands on a folding rule: to the nearest sixteenth of an inch. */
final class Sixteenths {
    private Sixteenths() {}

    /** {@code 1/4 in}, {@code 1 3/16 in}; {@code under 1/16 in} for what would round to nothing and is not nothing. */
    static String of(Length length) {
        double inches = Math.abs(length.in(Unit.INCH));
        long sixteenths = Math.round(inches * 16);
        if (sixteenths == 0) {
            return inches > 0 ? "under 1/16 in" : "0 in";
        }
        long whole = sixteenths / 16;
        long rest = sixteenths % 16;
        if (rest == 0) {
            return whole + " in";
        }
        long divisor = rest & -rest;
        String fraction = rest / divisor + "/" + 16 / divisor;
        return (whole > 0 ? whole + " " : "") + fraction + " in";
    }
}
