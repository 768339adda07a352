package org.fallrule.hydraulics.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cubicFeet;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.measure.Volume;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class FlotationTest implements MethodContract {
    private static final double POUND = 0.45359237;
    private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;

    @Override
    public Method method() {
        return Flotation.METHOD;
    }

    @Override
    public double ours(Given given) {
        Flotation basin = new Flotation(given.mass("weight").si(), given.volume("displaced"));
        return switch (given.what()) {
            case "weight lacking" -> basin.lackingKg(given.number("factor")) / POUND;
            case "concrete to hold it" ->
                given.in(basin.ballast(
                        given.number("factor"),
                        given.mass("a cubic foot of concrete").si() / CUBIC_FOOT));
            case "uplift" -> basin.upliftKg() / POUND;
            default -> basin.ratio().value().orElseThrow();
        };
    }

    private static Flotation tank() {
        return new Flotation(670 * POUND, cubicFeet(0.134 * 250));
    }

    /** Made by arithmetic for this test, not published. */
    @Test
    void aBasinOfTwoCubicFeetIsLiftedWithAHundredAndTwentyFivePounds() {
        assertThat(new Flotation(0, cubicFeet(2)).upliftKg() / POUND).isCloseTo(124.8, within(0.01));
    }

    /** FEMA P-259, third edition, 2012, appendix C, example C7: 2048 lb are lacking, which 23.4 cu ft of concrete make good. */
    @Test
    void concreteUnderWaterWeighsLessThanItDoesInAir() {
        assertThat(Flotation.concrete(2048)).isCloseTo(23.4 * 150, within(5.0));
    }

    /** Common practice, without a source: a plastic basin without weep holes floats out of wet ground. */
    @Test
    void anEmptyPlasticBasinFloats() {
        Flotation plastic = new Flotation(15 * POUND, cubicFeet(2));

        assertThat(plastic.ratio().value().orElseThrow()).isLessThan(0.2);
    }

    @Test
    void theSameBoxHasOtherRatiosWhenReckonedNet() {
        double up = 980 * 62.4;
        double gross = (340 * 150 + 384 * 110) / up;
        double net = (340 * (150 - 62.4) + 384 * (110 - 62.4)) / (up - (340 + 384) * 62.4);

        assertThat(net).isGreaterThan(gross * 1.5);
    }

    @Test
    void onTheFactorNothingIsLacking() {
        Flotation even = new Flotation(new Flotation(0, cubicFeet(2)).upliftKg() * 1.2, cubicFeet(2));

        assertThat(even.lackingKg(1.2)).isZero();
        assertThat(even.lackingKg(1.1)).isZero();
        assertThat(even.lackingKg(1.3)).isPositive();
    }

    @Test
    void nothingUnderWaterIsNotLifted() {
        assertThat(new Flotation(10, new Volume(0)).ratio().why()).contains("nothing lifts it");
    }

    @Test
    void impossibleMassesAreRefused() {
        assertThatThrownBy(() -> new Flotation(-1, new Volume(1))).hasMessageContaining("below zero");
        assertThatThrownBy(() -> tank().ballast(1.3, 900)).hasMessageContaining("heavier than water");
        assertThatThrownBy(() -> tank().ballast(1.3, Water.DENSITY)).hasMessageContaining("heavier than water");
    }
}
