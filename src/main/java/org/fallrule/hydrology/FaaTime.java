package org.fallrule.hydrology;

import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** Time of overland flow from the runoff coefficient, after the Federal Aviation Administration. */
public final class FaaTime {
    public static final Method METHOD = Method.named(
                    "faa_time",
                    "FAA time of overland flow",
                    "The time that water takes over graded ground to an inlet.")
            .formula("tc = 1.8 (1.1 - C) L^(1/2) / S^(1/3)")
            .symbol("tc", "time of overland flow", "min")
            .symbol("C", "runoff coefficient", "")
            .symbol("L", "length of the flow", "ft")
            .symbol("S", "slope in percent, 2 for 2 %", "%")
            .source(
                    "Federal Aviation Administration, Airport Drainage, advisory circular 150/5320-5 (1965) (read in two"
                            + " pages about it, which give the formula and the percent)")
            .limit("C from 0 to 1, length and slope above zero; else there is no answer.")
            .limit("The slope counts in percent: as a fraction it would give 4.6 times the time.")
            .limit("Some print the power of the slope as 0.33; taken as 1/3 here, 0.5 % apart at 4 %.");

    private FaaTime() {}

    /** The time of overland flow, or why there is none. */
    public static Answer<Time> time(Ratio runoffCoefficient, Length length, Slope slope) {
        if (runoffCoefficient.value() < 0 || runoffCoefficient.value() > 1) {
            return Answer.none(
                    "a runoff coefficient lies between 0 and 1, found " + Printed.trimmed(runoffCoefficient.value()));
        }
        return Overland.sound(length, slope)
                .map(ground -> new Time(1.8
                        * (1.1 - runoffCoefficient.value())
                        * Math.sqrt(length.in(Unit.FOOT))
                        / Math.cbrt(slope.in(Unit.PERCENT))
                        * Unit.MINUTE.toSi()));
    }
}
