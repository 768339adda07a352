package org.fallrule.hydrology;

import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** Time of overland flow, after Kerby. */
public final class Kerby {
    public static final Method METHOD = Method.named(
                    "kerby",
                    "Kerby time of overland flow",
                    "The time that water takes over ground before it reaches a swale or channel.")
            .formula("t = K (L N)^0.467 S^-0.235")
            .symbol("t", "time of overland flow", "min")
            .symbol("K", "0.828 with L in feet", "")
            .symbol("L", "length of the flow", "ft")
            .symbol(
                    "N",
                    "retardance: 0.02 smooth, 0.10 bare and packed, 0.20 poor grass, 0.40 average grass, 0.80"
                            + " dense grass",
                    "")
            .symbol("S", "slope", "ft/ft")
            .source("Texas Department of Transportation, Hydraulic Design Manual, chapter 4 section 11, equation 4-14"
                    + " (read)")
            .limit("Length, slope and retardance above zero; else there is no answer.")
            .limit(
                    "Overland flow only, up to about 1,200 ft (from memory); the way in a swale is added after Kirpich.");

    private Kerby() {}

    /** The time of overland flow, or why there is none. */
    public static Answer<Time> time(Ratio retardance, Length length, Slope slope) {
        if (retardance.value() <= 0) {
            return Answer.none("Kerby's formula needs a retardance above zero");
        }
        return Overland.sound(length, slope)
                .map(ground -> new Time(0.828
                        * Math.pow(length.in(Unit.FOOT) * retardance.value(), 0.467)
                        * Math.pow(slope.ratio(), -0.235)
                        * Unit.MINUTE.toSi()));
    }
}
