package org.fallrule.hydraulics.basin;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Time;
import org.fallrule.measure.Volume;
import org.fallrule.method.Method;

/** A sump that drains through weep holes into stone and soil. */
public final class SumpDrainDown {
    public static final Method METHOD = Method.named(
                    "drain_down",
                    "Drain-down of a sump",
                    "The time in which a basin's sump, or a bed of stone, drains into the soil.")
            .formula("holes, falling head: t = 2 A (h1^0.5 - h2^0.5) / (Cd a (2g)^0.5)")
            .formula("soil: t = A h / (f As);  stone bed: t = n d / f;  stone = water / n")
            .formula("at every depth the slower of holes and soil counts")
            .symbol("t", "time", "s")
            .symbol("A", "plan area of the sump", "m2")
            .symbol("h1, h2", "depth of water above the holes, before and after", "m")
            .symbol("Cd", "coefficient of discharge; 0.6 for a sharp-edged hole", "")
            .symbol("a", "area of all holes together", "m2")
            .symbol("g", "acceleration of gravity", "m/s2")
            .symbol("f", "infiltration rate of the soil", "m/s")
            .symbol("As", "area of soil that takes the water", "m2")
            .symbol("n", "void ratio of the stone", "")
            .symbol("d", "depth of stone", "m")
            .source("Falling head: R. K. Bansal, A Textbook of Fluid Mechanics (read in a reprint that cites it)")
            .source("Stone: continuity; storage in its voids as in a Pennsylvania town's stormwater ordinance (read)")
            .limit("An Ontario guide allows less stone: it prints hours times voids, 19.2 f for 48 h (read).")
            .limit("Holes at the bottom. Holes that stand higher leave water below them.")
            .limit(
                    "Stone around the basin takes water at once in truth; here it must pass the soil, so that the time is too"
                            + " long rather than too short. Soil below the water table takes none.")
            .limit(
                    "Published infiltration rates of one soil differ up to tenfold: give the source with the rate, better a"
                            + " test on the spot.")
            .limit(
                    "Usual limits differ: 24 to 72 h in local codes. 72 h is common practice against mosquitoes, without a"
                            + " source.");

    private SumpDrainDown() {}

    /**
     * Time in which a straight-walled box drains through holes in its bottom into the open air.
     *
     * @param coefficient coefficient of discharge, above 0 and at most 1
     * @throws IllegalArgumentException if the water would rise, or a size is not above zero
     */
    public static Time throughHoles(Area plan, Length before, Length after, Area holes, double coefficient) {
        if (before.metres() < after.metres() || after.metres() < 0) {
            throw new IllegalArgumentException("the water must fall from a depth to a lesser one");
        }
        return new Time(
                fallingHeadS(plan.squareMetres(), before.metres(), after.metres(), strength(holes, coefficient)));
    }

    /**
     * How a sump drains through holes into soil.
     *
     * @param depth of water above the holes
     * @param holes area of all holes together; zero when there are none
     * @param coefficient coefficient of discharge, above 0 and at most 1
     * @param soil area of soil that takes the water
     * @param rate infiltration rate of that soil
     */
    public static DrainDown of(Area plan, Length depth, Area holes, double coefficient, Area soil, Intensity rate) {
        double soilCms = soil.squareMetres() * rate.metresPerSecond();
        if (depth.metres() <= 0) {
            return new DrainDown.Empties(new Time(0));
        }
        if (holes.squareMetres() <= 0) {
            return new DrainDown.HoldsWater("the sump has no weep holes");
        }
        if (soilCms <= 0) {
            return new DrainDown.HoldsWater("the soil takes no water");
        }
        double strength = strength(holes, coefficient);
        double turning = Math.pow(soilCms / strength, 2);
        double above = Math.max(0, depth.metres() - turning);
        double below = Math.min(depth.metres(), turning);
        double seconds = plan.squareMetres() * above / soilCms + fallingHeadS(plan.squareMetres(), below, 0, strength);
        return new DrainDown.Empties(new Time(seconds));
    }

    /** How a bed of stone, full of water, drains through its floor. */
    public static DrainDown ofStone(Length depth, double voidRatio, Intensity rate) {
        if (rate.metresPerSecond() <= 0) {
            return new DrainDown.HoldsWater("the soil takes no water");
        }
        return new DrainDown.Empties(new Time(voidRatio * depth.metres() / rate.metresPerSecond()));
    }

    /** The greatest depth of stone that drains through its floor in a time. */
    public static Length deepestStone(Intensity rate, Time time, double voidRatio) {
        return new Length(rate.metresPerSecond() * time.seconds() / voidRatio);
    }

    /** The volume of stone that holds a volume of water in its voids. */
    public static Volume stoneHolding(Volume water, double voidRatio) {
        return new Volume(water.cubicMetres() / voidRatio);
    }

    /** Flow in m³/s at a depth of one metre. */
    private static double strength(Area holes, double coefficient) {
        if (!(holes.squareMetres() > 0 && coefficient > 0 && coefficient <= 1)) {
            throw new IllegalArgumentException(
                    "the holes' area must be above zero and the coefficient of discharge from 0 to 1");
        }
        return coefficient * holes.squareMetres() * Math.sqrt(2 * Water.GRAVITY);
    }

    private static double fallingHeadS(double planSqM, double beforeM, double afterM, double strength) {
        return 2 * planSqM * (Math.sqrt(beforeM) - Math.sqrt(afterM)) / strength;
    }
}
