package org.fallrule.hydrology;

import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** Time of sheet flow under the rain that itself depends on it. */
public final class KinematicWave {
    public static final Method METHOD = Method.named(
                    "kinematic_wave",
                    "Kinematic wave time of sheet flow",
                    "The time that a sheet of water takes over a plane while the design storm rains on it.")
            .formula("t = (Ku / i^0.4) (n L / S^0.5)^0.6")
            .symbol("t", "time of sheet flow", "min")
            .symbol("Ku", "0.933 with L in feet and i in inches per hour", "")
            .symbol("i", "intensity over the duration t, found by repeating until t stays", "in/h")
            .symbol("n", "roughness for sheet flow", "")
            .symbol("L", "length of the flow", "ft")
            .symbol("S", "slope", "ft/ft")
            .source("FHWA HEC-22, Urban Drainage Design Manual, 3rd edition (2009), equation 3-3 (from memory)")
            .limit("Length, slope, roughness and intensity above zero; else there is no answer.")
            .limit("While it is repeated, the intensity is that of the shortest duration at least; outside of the table"
                    + " there is no answer.")
            .limit("The source's metric constant 6.92 is rounded from 6.94, 0.3 % apart; the one in feet is used.");

    private static final int MOST_ROUNDS = 100;

    private KinematicWave() {}

    /** The time under a known intensity, or why there is none. */
    public static Answer<Time> time(Ratio roughness, Length length, Slope slope, Intensity intensity) {
        if (roughness.value() <= 0 || intensity.metresPerSecond() <= 0) {
            return Answer.none("the kinematic wave needs a roughness and an intensity above zero");
        }
        return Overland.sound(length, slope)
                .map(plane -> new Time(0.933
                        / Math.pow(intensity.in(Unit.INCH_PER_HOUR), 0.4)
                        * Math.pow(roughness.value() * length.in(Unit.FOOT) / Math.sqrt(slope.ratio()), 0.6)
                        * Unit.MINUTE.toSi()));
    }

    /**
     * The time under a design storm: the one whose own intensity brings it about. A longer time means a weaker rain, and that a
     * longer time again, each step less than the one before, so that it settles.
     */
    public static Answer<Time> time(Ratio roughness, Length length, Slope slope, DesignStorm storm) {
        Answer<Time> time = Answer.of(storm.duration(new Time(0)));
        if (storm.shortestDuration().isEmpty()) {
            return Answer.none("no shortest duration is stated; give storm: shortest_duration");
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Answer<Time> next =
                    time.map(storm::duration).then(storm::intensity).then(rain -> time(roughness, length, slope, rain));
            if (next.value().isEmpty() || same(time, next)) {
                return next;
            }
            time = next;
        }
        return Answer.none("the time of sheet flow does not settle under this storm");
    }

    private static boolean same(Answer<Time> one, Answer<Time> other) {
        double settled = Dimension.TIME.tolerance() * 1e-3;
        return Math.abs(one.value().orElseThrow().seconds()
                        - other.value().orElseThrow().seconds())
                < settled;
    }
}
