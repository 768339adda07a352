package org.fallrule.terrain;

import org.fallrule.measure.Angle;
import org.fallrule.measure.Slope;

/**
 * How steep the ground is, and which way it falls.
 *
 * @param slope fall over plan length in the steepest direction, 0 or more
 * @param downhill the bearing of that direction, clockwise from the local frame's north, 0 to 360 degrees; 0 where it is
 *     level
 */
public record Grade(Slope slope, Angle downhill) {

    /** The grade of ground that rises so many metres per metre eastward and northward. */
    static Grade ofRise(double eastward, double northward) {
        double steepness = Math.hypot(eastward, northward);
        double bearing = steepness == 0 ? 0 : Math.atan2(-eastward, -northward);
        return new Grade(new Slope(steepness), new Angle(bearing < 0 ? bearing + 2 * Math.PI : bearing + 0.0));
    }
}
