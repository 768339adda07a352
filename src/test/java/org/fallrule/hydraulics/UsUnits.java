package org.fallrule.hydraulics;

import org.fallrule.hydraulics.pipe.Roughness;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Velocity;
import org.fallrule.measure.Volume;

/** Quantities in the units that the sources of the checks print. */
public final class UsUnits {
    private UsUnits() {}

    public static Flow cfs(double value) {
        return new Flow(value * Unit.CUBIC_FOOT_PER_SECOND.toSi());
    }

    public static Flow gpm(double value) {
        return new Flow(value * Unit.GALLON_PER_MINUTE.toSi());
    }

    public static Velocity fps(double value) {
        return new Velocity(value * Unit.FOOT_PER_SECOND.toSi());
    }

    public static Area squareFeet(double value) {
        return new Area(value * Unit.SQUARE_FOOT.toSi());
    }

    public static Area squareInches(double value) {
        return squareFeet(value / 144);
    }

    public static Volume cubicFeet(double value) {
        return new Volume(value * Unit.CUBIC_FOOT.toSi());
    }

    public static Intensity inchesPerHour(double value) {
        return new Intensity(value * Unit.INCH_PER_HOUR.toSi());
    }

    public static Slope inchPerFoot(double value) {
        return new Slope(value / 12);
    }

    /** A pipe of a bore in inches and Manning's n. */
    public static RoundPipe pipe(double boreInches, double n) {
        return new RoundPipe(Length.inches(boreInches), new Roughness(n));
    }
}
