package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.acres;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.runoff;

import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class RationalMethodTest implements MethodContract {
    @Override
    public Method method() {
        return RationalMethod.METHOD;
    }

    @Override
    public double ours(Given given) {
        CompositeRunoff runoff = new CompositeRunoff(given.area("A"), given.ratio("C"));
        double exact = given.in(RationalMethod.flow(runoff, given.intensity("i")));
        return given.what().equals("flow") ? exact : exact / RationalMethod.DROPPED_BY_US_SHEETS;
    }

    @Test
    void disagreesWithAMetricFigureThatIsRememberedWrong() {
        // HEC-22 example 3-3 is remembered as 0.88 m3/s for C 0.315, 58 mm/h, 17.55 ha; its own formula gives 0.89.
        double cubicMetres = flow(0.315, millimetresPerHour(58), hectares(17.55)) * Unit.CUBIC_FOOT_PER_SECOND.toSi();
        assertThat(cubicMetres).isCloseTo(0.8907, within(0.00005));
    }

    @Test
    void anAcreInchInAnHourIsATouchMoreThanACubicFootInASecond() {
        assertThat(flow(1, inchesPerHour(1), acres(1))).isCloseTo(1.008333, within(1e-6));
    }

    @Test
    void aCoefficientAboveOneAndNoAreaAndNoRainHaveNoAnswer() {
        assertThat(RationalMethod.flow(runoff(1.2, acres(1)), inchesPerHour(1)).why())
                .isEqualTo("a runoff coefficient lies between 0 and 1, found 1.2");
        assertThat(RationalMethod.flow(runoff(0.5, acres(0)), inchesPerHour(1)).why())
                .contains("above zero, found 0 m2");
        assertThat(RationalMethod.flow(runoff(0.5, acres(1)), inchesPerHour(0)).why())
                .isEqualTo("an intensity must be above zero");
    }

    private static double flow(double coefficient, Intensity intensity, Area area) {
        return RationalMethod.flow(runoff(coefficient, area), intensity)
                .value()
                .orElseThrow()
                .in(Unit.CUBIC_FOOT_PER_SECOND);
    }

    private static Intensity millimetresPerHour(double millimetres) {
        return new Intensity(millimetres * Unit.MILLIMETRE_PER_HOUR.toSi());
    }

    private static Area hectares(double hectares) {
        return new Area(hectares * 1e4);
    }
}
