package org.fallrule.hydrology;

import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** Time of sheet flow, after the Natural Resources Conservation Service. */
public final class SheetFlow {
    public static final Method METHOD = Method.named(
                    "sheet_flow", "NRCS sheet flow", "The time that water takes as a sheet over a plane surface.")
            .formula("Tt = 0.007 (n L)^0.8 / (P2^0.5 s^0.4)")
            .symbol("Tt", "travel time", "h")
            .symbol("n", "roughness for sheet flow: 0.011 smooth, 0.15 short grass, 0.24 dense grass", "")
            .symbol("L", "length of the flow", "ft")
            .symbol("P2", "depth of the 2 year, 24 hour rain", "in")
            .symbol("s", "slope", "ft/ft")
            .source(
                    "NRCS (SCS), TR-55, Urban Hydrology for Small Watersheds, 2nd edition (1986), equation 3-3 and table"
                            + " 3-1 (from memory; a filled-in copy of its worksheet 3 was read)")
            .limit("Length up to 100 ft after the National Engineering Handbook part 630, chapter 15 (2010) (from"
                    + " memory), up to 300 ft after TR-55 of 1986; beyond it there is no answer, and water further on"
                    + " runs as shallow concentrated flow.")
            .limit("Length, slope, roughness and rain above zero; else there is no answer.");

    /** How long a sheet holds, by the text that is followed. */
    public enum Edition {
        TR_55_1986(300),
        NEH_630_2010(100);

        private final double longestFeet;

        Edition(double longestFeet) {
            this.longestFeet = longestFeet;
        }

        /** The longest sheet flow that the text allows. */
        public Length longest() {
            return Length.feet(longestFeet);
        }
    }

    private SheetFlow() {}

    /**
     * The travel time, or why there is none.
     *
     * @param roughness the roughness n for sheet flow, which is not that of a channel
     * @param rain the depth of the 2 year, 24 hour rain
     */
    public static Answer<Time> time(Ratio roughness, Length length, Length rain, Slope slope, Edition edition) {
        if (roughness.value() <= 0 || rain.metres() <= 0) {
            return Answer.none("sheet flow needs a roughness and a depth of rain above zero");
        }
        Length longest = edition.longest();
        if (length.metres() > longest.metres() + Dimension.LENGTH.tolerance()) {
            return Answer.none("sheet flow ends after " + Printed.feet(longest.metres()) + ", the path is "
                    + Printed.feet(length.metres()) + "; take the rest as shallow concentrated flow");
        }
        return Overland.sound(length, slope)
                .map(ground -> new Time(0.007
                        * Math.pow(roughness.value() * length.in(Unit.FOOT), 0.8)
                        / (Math.sqrt(rain.in(Unit.INCH)) * Math.pow(slope.ratio(), 0.4))
                        * Unit.HOUR.toSi()));
    }
}
