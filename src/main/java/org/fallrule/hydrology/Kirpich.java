package org.fallrule.hydrology;

import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** Time that water takes down a channel or swale, after Kirpich. */
public final class Kirpich {
    public static final Method METHOD = Method.named(
                    "kirpich", "Kirpich travel time", "The time that water takes down a channel or swale.")
            .formula("t = K L^0.77 S^-0.385")
            .symbol("t", "travel time", "min")
            .symbol("K", "0.0078 with L in feet", "")
            .symbol("L", "length of the channel", "ft")
            .symbol("S", "slope of the channel", "ft/ft")
            .source("Z. P. Kirpich, Time of concentration of small agricultural watersheds, Civil Engineering 10(6),"
                    + " 1940 (from memory)")
            .source("Texas Department of Transportation, Hydraulic Design Manual, chapter 4 section 11, equation 4-15"
                    + " (read)")
            .limit("Fitted to seven farmed watersheds of 1 to 112 acres with channels of 3 to 10 % (from memory); on a"
                    + " lot it is an estimate for a swale, not for a lawn or roof.")
            .limit("Slope and length above zero; a level channel has no answer.")
            .limit("No factor for lined or grassed channels is applied; the factors printed for them differ.");

    private Kirpich() {}

    /** The travel time, or why there is none. */
    public static Answer<Time> time(Length length, Slope slope) {
        return Overland.sound(length, slope)
                .map(swale -> new Time(0.0078
                        * Math.pow(length.in(Unit.FOOT), 0.77)
                        * Math.pow(slope.ratio(), -0.385)
                        * Unit.MINUTE.toSi()));
    }
}
