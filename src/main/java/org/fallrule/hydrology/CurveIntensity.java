package org.fallrule.hydrology;

import org.fallrule.locality.IntensityCurve;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The intensity of a duration from a fitted formula. */
public final class CurveIntensity {
    public static final Method METHOD = Method.named(
                    "intensity_curve",
                    "Intensity from a formula",
                    "The mean intensity of a storm of a given duration, from a formula fitted to a place and a return"
                            + " period.")
            .formula("i = a / (t + b)^c")
            .formula("i = c / (t^e + f)")
            .symbol("i", "intensity", "in/h or mm/h, as the rule book states")
            .symbol("t", "duration", "min")
            .symbol("a, b, c", "numbers of the first form; they belong to the unit of i and to minutes", "")
            .symbol("c, e, f", "numbers of the second form", "")
            .source("First form: C. L. Chen, Rainfall intensity-duration-frequency formulas, Journal of Hydraulic"
                    + " Engineering 109(12), 1983; FHWA-RD-76-119 (1976) (read in a reprint of its New York example)")
            .source("Second form: H. G. Wenzel (1982), in Chow, Maidment, Mays, Applied Hydrology, 1988, table 14.2.3"
                    + " (from memory)")
            .limit("Only between the durations that the rule book says it was fitted to: no answer outside.")
            .limit("The numbers hold for one unit; a formula in mm/h has other numbers than the same in in/h.");

    private CurveIntensity() {}

    /** The intensity of a duration; none outside the durations that the formula was fitted to. */
    public static Answer<Intensity> of(IntensityCurve curve, Time duration) {
        double tolerance = Dimension.TIME.tolerance();
        if (duration.seconds() < curve.from().seconds() - tolerance) {
            return outside(duration, "begins", curve.from());
        }
        if (duration.seconds() > curve.to().seconds() + tolerance) {
            return outside(duration, "ends", curve.to());
        }
        double minutes = duration.in(Unit.MINUTE);
        double below = switch (curve.form()) {
            case POWER_OF_SUM -> Math.pow(minutes + curve.shift(), curve.power());
            case SUM_WITH_POWER -> Math.pow(minutes, curve.power()) + curve.shift();
        };
        return Answer.of(new Intensity(curve.scale() / below * curve.unit().toSi()));
    }

    private static Answer<Intensity> outside(Time duration, String end, Time at) {
        return Answer.none("outside the formula: " + TableIntensity.shown(duration.seconds()) + ", it " + end + " at "
                + TableIntensity.shown(at.seconds()));
    }
}
