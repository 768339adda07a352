package org.fallrule.report.gradesheet;

import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.report.SheetUnits;

/**
 * How a grade sheet is made.
 *
 * @param every from one row to the next
 * @param bedding how far the trench bottom lies under the outside bottom of the pipe
 * @param byHand how near to a utility the trench is dug by hand
 */
public record Settings(Written every, Written bedding, HandZones byHand) {

    /** The units that the whole sheet is printed in: those in which the distance between rows was given. */
    public SheetUnits units() {
        boolean metric =
                every.unit() == Unit.METRE || every.unit() == Unit.CENTIMETRE || every.unit() == Unit.MILLIMETRE;
        return metric ? SheetUnits.METRES : SheetUnits.FEET;
    }

    static Length length(Written written) {
        return new Length(written.quantity().si());
    }
}
