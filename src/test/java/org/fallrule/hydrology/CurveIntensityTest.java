package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inInchesPerHour;
import static org.fallrule.hydrology.Rains.minutes;

import org.fallrule.locality.IntensityCurve;
import org.fallrule.locality.IntensityCurve.Form;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurveIntensityTest implements MethodContract {

    @Override
    public Method method() {
        return CurveIntensity.METHOD;
    }

    @Override
    public double ours(Given given) {
        IntensityCurve curve = new IntensityCurve(
                Form.valueOf(given.text("form")),
                given.number("a"),
                given.number("b"),
                given.number("c"),
                Unit.INCH_PER_HOUR,
                minutes(5),
                minutes(60));
        return given.in(CurveIntensity.of(curve, given.time("duration")));
    }

    /** Two formulas fitted to New York by different people; the second (Wenzel, 1982) from memory. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 15, 30, 60})
    void theTwoFormsAgreeOnNewYork(double minutes) {
        double one = at(chen(51.39), minutes);
        double other = at(wenzel(78.1, 0.82, 6.57), minutes);
        assertThat(one / other).isCloseTo(1, within(0.02));
    }

    @Test
    void aFormulaInMillimetresGivesMillimetres() {
        IntensityCurve metric = new IntensityCurve(
                Form.POWER_OF_SUM, 1305.3, 7.85, 0.75, Unit.MILLIMETRE_PER_HOUR, minutes(5), minutes(60));
        assertThat(CurveIntensity.of(metric, minutes(10)).value().orElseThrow().in(Unit.MILLIMETRE_PER_HOUR))
                .isCloseTo(at(chen(51.39), 10) * 25.4, within(0.01));
    }

    @Test
    void outsideOfWhatItWasFittedToThereIsNoAnswer() {
        assertThat(CurveIntensity.of(chen(51.39), minutes(4)).why())
                .isEqualTo("outside the formula: 4 min, it begins at 5 min");
        assertThat(CurveIntensity.of(chen(51.39), minutes(90)).why())
                .isEqualTo("outside the formula: 90 min, it ends at 60 min");
    }

    private static IntensityCurve chen(double a) {
        return new IntensityCurve(Form.POWER_OF_SUM, a, 7.85, 0.75, Unit.INCH_PER_HOUR, minutes(5), minutes(60));
    }

    private static IntensityCurve wenzel(double c, double e, double f) {
        return new IntensityCurve(Form.SUM_WITH_POWER, c, f, e, Unit.INCH_PER_HOUR, minutes(5), minutes(60));
    }

    private static double at(IntensityCurve curve, double minutes) {
        return inInchesPerHour(CurveIntensity.of(curve, minutes(minutes)));
    }
}
