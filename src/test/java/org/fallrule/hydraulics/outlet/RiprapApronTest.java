package org.fallrule.hydraulics.outlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;

import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class RiprapApronTest implements MethodContract {
    @Override
    public Method method() {
        return RiprapApron.METHOD;
    }

    @Override
    public double ours(Given given) {
        RiprapApron apron = RiprapApron.of(given.length("D"), given.flow("Q"), given.length("TW"))
                .value()
                .orElseThrow();
        return switch (given.what()) {
            case "D50" -> given.in(apron.stone());
            case "class" -> apron.stoneClass();
            case "length" -> given.in(apron.length());
            case "thickness" -> given.in(apron.thickness());
            default -> given.in(apron.widthAtEnd());
        };
    }

    /** Made by arithmetic for this test, not published. */
    @Test
    void aLotsOutfallAsksForStoneSmallerThanTheSmallestClass() {
        RiprapApron apron = RiprapApron.of(Length.inches(6), cfs(0.6), new Length(0))
                .value()
                .orElseThrow();

        assertThat(apron.stone().in(Unit.INCH)).isCloseTo(1.5, within(0.05));
        assertThat(apron.stoneClass()).isEqualTo(1);
        assertThat(RiprapApron.stoneSize(Length.inches(4), cfs(0.2), new Length(0))
                        .in(Unit.INCH))
                .isCloseTo(0.9, within(0.05));
    }

    @Test
    void tailwaterCountsFromFourTenthsOfTheDiameterToAllOfIt() {
        Length bore = Length.feet(1);
        Length at40 = RiprapApron.stoneSize(bore, cfs(3), Length.feet(0.4));

        assertThat(RiprapApron.stoneSize(bore, cfs(3), Length.feet(0.1))).isEqualTo(at40);
        assertThat(RiprapApron.stoneSize(bore, cfs(3), Length.feet(5)).metres())
                .isCloseTo(at40.metres() * 0.4, within(1e-12));
    }

    @Test
    void rapidFlowIsReckonedOnTheMiddleOfDiameterAndDepth() {
        RiprapApron rapid = RiprapApron.ofRapidFlow(Length.feet(2), Length.feet(1), cfs(20), new Length(0))
                .value()
                .orElseThrow();

        assertThat(rapid.stone()).isEqualTo(RiprapApron.stoneSize(Length.feet(1.5), cfs(20), new Length(0)));
        assertThat(rapid.length().in(Unit.FOOT) % 2).isCloseTo(0, within(1e-9));
    }

    @Test
    void beyondTheTableThereIsNoApron() {
        assertThat(RiprapApron.of(Length.feet(1), cfs(40), new Length(0)).why()).contains("class 6");
        assertThat(RiprapApron.of(Length.feet(1), cfs(0), new Length(0)).why()).contains("no water");
    }
}
