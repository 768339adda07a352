package org.fallrule.hydraulics.outlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;

import java.util.List;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class RiprapApronTest implements MethodContract {
    private static final String FHWA = "HEC-14 3rd ed. design example of the riprap apron, from memory";

    @Override
    public Method method() {
        return RiprapApron.METHOD;
    }

    @Override
    public List<Published> published() {
        String given = "D 5 ft, Q 85 ft3/s, TW 1.6 ft";
        String metric = "D 1.5 m, Q 2.33 m3/s, TW 0.6 m";
        return List.of(
                new Published(
                        given,
                        0.43,
                        0.005,
                        "ft of D50",
                        FHWA,
                        () -> us().stone().in(Unit.FOOT)),
                new Published(
                        given, 5.2, 0.05, "in of D50", FHWA, () -> us().stone().in(Unit.INCH)),
                new Published(given, 2, 0, "class", FHWA, () -> us().stoneClass()),
                new Published(
                        given, 20, 0.5, "ft long", FHWA, () -> us().length().in(Unit.FOOT)),
                new Published(
                        given,
                        1.65,
                        0.005,
                        "ft deep",
                        FHWA,
                        () -> us().thickness().in(Unit.FOOT)),
                new Published(
                        given,
                        28.3,
                        0.05,
                        "ft wide at end",
                        FHWA,
                        () -> us().widthAtEnd().in(Unit.FOOT)),
                new Published(
                        metric,
                        0.13,
                        0.005,
                        "m of D50",
                        FHWA,
                        () -> si().stone().metres()),
                new Published(
                        metric, 6, 0.05, "m long", FHWA, () -> si().length().metres()),
                new Published(
                        metric,
                        8.5,
                        0.05,
                        "m wide at end",
                        FHWA,
                        () -> si().widthAtEnd().metres()));
    }

    private static RiprapApron us() {
        return RiprapApron.of(Length.feet(5), cfs(85), Length.feet(1.6)).value().orElseThrow();
    }

    private static RiprapApron si() {
        return RiprapApron.of(new Length(1.5), new Flow(2.33), new Length(0.6))
                .value()
                .orElseThrow();
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
