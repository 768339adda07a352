package org.fallrule.hydraulics.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cubicFeet;

import java.util.List;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class FlotationTest implements MethodContract {
    private static final double POUND = 0.45359237;
    private static final double POUND_PER_CUBIC_FOOT = POUND / (0.3048 * 0.3048 * 0.3048);

    @Override
    public Method method() {
        return Flotation.METHOD;
    }

    @Override
    public List<Published> published() {
        String fema = "FEMA P-259 appendix C example C7, read";
        return List.of(
                new Published(
                        "tank of 250 gal at 0.134 ft3 each, 670 lb, factor 1.3: weight lacking",
                        2048,
                        1,
                        "lb",
                        fema,
                        () -> tank().lackingKg(1.3) / POUND),
                new Published(
                        "concrete of 150 lb/ft3 under water to hold it",
                        23.4,
                        0.05,
                        "ft3",
                        fema,
                        () -> tank().ballast(1.3, 150 * POUND_PER_CUBIC_FOOT).in(Unit.CUBIC_FOOT)),
                new Published(
                        "tank 7.83 ft by 6.25 ft and sump 3.5 ft by 3 ft: uplift",
                        21,
                        0.5,
                        "kip",
                        "San Joaquin County record 294347 p. 6, 1999, read",
                        () -> new Flotation(0, cubicFeet(301 + 29)).upliftKg() / POUND / 1000),
                new Published(
                        "340 ft3 of concrete, 384 ft3 of soil at 110 lb/ft3, 980 ft3 displaced",
                        1.52,
                        0.006,
                        "",
                        "an engineers' forum, read",
                        () -> new Flotation((340 * 150 + 384 * 110) * POUND, cubicFeet(980))
                                .ratio()
                                .value()
                                .orElseThrow()));
    }

    private static Flotation tank() {
        return new Flotation(670 * POUND, cubicFeet(0.134 * 250));
    }

    /** Made by arithmetic for this test, not published. */
    @Test
    void aBasinOfTwoCubicFeetIsLiftedWithAHundredAndTwentyFivePounds() {
        assertThat(new Flotation(0, cubicFeet(2)).upliftKg() / POUND).isCloseTo(124.8, within(0.01));
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
    }
}
