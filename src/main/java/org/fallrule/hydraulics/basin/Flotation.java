package org.fallrule.hydraulics.basin;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.measure.Volume;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * An empty basin or tank in ground water: all that holds it down against the water that it displaces.
 *
 * @param heldDownKg mass of the basin, its lid, ballast and the soil that stands on it, as weighed in air
 * @param displaced volume below the water's level of all that is counted in that mass, hollows included
 */
public record Flotation(double heldDownKg, Volume displaced) {
    public static final Method METHOD = Method.named(
                    "flotation",
                    "Flotation of an empty basin",
                    "What holds a buried basin down over the uplift of the water that it displaces.")
            .formula("ratio = W / (gw V)")
            .formula("ballast in air: Fb = FS gw V - W;  ballast under water: volume = Fb / (gc - gw)")
            .symbol("W", "weight in air of all that holds down", "lb")
            .symbol("gw", "weight of water, 62.4", "lb/ft3")
            .symbol("V", "volume displaced", "ft3")
            .symbol("Fb", "weight that is lacking", "lb")
            .symbol("FS", "factor of safety", "")
            .symbol("gc", "weight of the ballast, 150 for concrete", "lb/ft3")
            .source("FEMA P-259, third edition, 2012, appendix C, example C7 (read)")
            .limit(
                    "Gross weight over gross uplift. Reckoned net, with weights under water, the same basin gives another"
                            + " ratio; a limit must say which it means.")
            .limit("Friction of the soil on the walls is not counted. Factors asked for run from 1.1 to 1.5.")
            .limit(
                    "Sea water is 2.5 % heavier. Common practice, without a source: an empty plastic basin without weep holes"
                            + " floats out of wet ground.");

    /** Mass of a cubic metre of concrete in kg: 150 lb/ft³, as in FEMA P-259, third edition, 2012, appendix C. */
    private static final double CONCRETE = 150 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    public Flotation {
        if (heldDownKg < 0 || displaced.cubicMetres() < 0) {
            throw new IllegalArgumentException("mass and volume must not be below zero");
        }
    }

    /** Weight over uplift: below 1 it floats. None when it displaces nothing. */
    public Answer<Double> ratio() {
        return displaced.cubicMetres() == 0
                ? Answer.none("nothing stands below the water, so nothing lifts it")
                : Answer.of(heldDownKg / upliftKg());
    }

    /** Mass in kg of the water displaced. */
    public double upliftKg() {
        return Water.DENSITY * displaced.cubicMetres();
    }

    /** Mass in kg that is lacking for a factor of safety, out of the water; zero when none is. */
    public double lackingKg(double factor) {
        return Math.max(0, factor * upliftKg() - heldDownKg);
    }

    /** The weight in air of concrete that under water, where it displaces water itself, weighs so much; in the same unit. */
    public static double concrete(double weightUnderWater) {
        return weightUnderWater * CONCRETE / (CONCRETE - Water.DENSITY);
    }

    /**
     * Volume of ballast under water that makes good what is lacking.
     *
     * @param kgPerCubicMetre its density, above that of water
     */
    public Volume ballast(double factor, double kgPerCubicMetre) {
        if (!(kgPerCubicMetre > Water.DENSITY)) {
            throw new IllegalArgumentException("ballast must be heavier than water, was " + kgPerCubicMetre + " kg/m3");
        }
        return new Volume(lackingKg(factor) / (kgPerCubicMetre - Water.DENSITY));
    }
}
