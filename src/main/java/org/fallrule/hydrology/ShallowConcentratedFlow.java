package org.fallrule.hydrology;

import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** How fast water runs once a sheet has gathered, after the Natural Resources Conservation Service. */
public final class ShallowConcentratedFlow {
    public static final Method METHOD = Method.named(
                    "shallow_concentrated_flow",
                    "NRCS shallow concentrated flow",
                    "The velocity of water that has gathered on its way and runs in no channel yet, and its time.")
            .formula("V = 16.1345 s^0.5   (unpaved)")
            .formula("V = 20.3282 s^0.5   (paved)")
            .formula("t = L / V")
            .symbol("V", "velocity", "ft/s")
            .symbol("s", "slope", "ft/ft")
            .symbol("t", "travel time", "s")
            .symbol("L", "length of the flow", "ft")
            .source("NRCS (SCS), TR-55, Urban Hydrology for Small Watersheds, 2nd edition (1986), appendix F and figure"
                    + " 3-1 (from memory)")
            .limit("Length and slope above zero; else there is no answer.")
            .limit("Read in the source from a figure that begins at 0.5 % (from memory); flatter ground is slower than"
                    + " the formula.");

    /** What the water runs over. */
    public enum Surface {
        PAVED(20.3282),
        UNPAVED(16.1345);

        private final double feetPerSecondAtUnitSlope;

        Surface(double feetPerSecondAtUnitSlope) {
            this.feetPerSecondAtUnitSlope = feetPerSecondAtUnitSlope;
        }
    }

    private ShallowConcentratedFlow() {}

    /** The velocity, or why there is none. */
    public static Answer<Velocity> velocity(Surface surface, Slope slope) {
        return slope.ratio() <= 0
                ? Answer.none("the flow path does not fall; the formula needs a slope above zero")
                : Answer.of(
                        new Velocity(surface.feetPerSecondAtUnitSlope * Math.sqrt(slope.ratio()) * Unit.FOOT.toSi()));
    }

    /** The travel time, or why there is none. */
    public static Answer<Time> time(Surface surface, Length length, Slope slope) {
        return Overland.sound(length, slope)
                .then(ground -> velocity(surface, slope))
                .map(velocity -> new Time(length.metres() / velocity.metresPerSecond()));
    }
}
