package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inMinutes;
import static org.fallrule.hydrology.Rains.percent;

import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaaTimeTest implements MethodContract {

    @Override
    public Method method() {
        return FaaTime.METHOD;
    }

    /** Constructed: arithmetic of the formula, nothing published. */
    @ParameterizedTest
    @CsvSource({"0.9, 60, 2, 2.21", "0.30, 100, 2, 11.43", "0.30, 100, 5, 8.42", "0.5, 100, 1, 10.80"})
    void followsTheFormula(double coefficient, double feet, double percent, double minutes) {
        assertThat(minutes(coefficient, feet, percent)).isCloseTo(minutes, within(0.005));
    }

    @Test
    void theSlopeCountsInPercent() {
        double asFraction = 1.8 * (1.1 - 0.3) * Math.sqrt(100) / Math.cbrt(0.02);
        assertThat(asFraction / minutes(0.3, 100, 2)).isCloseTo(4.64, within(0.01));
    }

    @Test
    void theMetricFormAgrees() {
        // 3.26 with metres, as two pages print it, is 1.8 times the root of 3.2808.
        double metric = 3.26 * (1.1 - 0.3) * Math.sqrt(30.48) / Math.cbrt(2);
        assertThat(minutes(0.3, 100, 2)).isCloseTo(metric, within(0.01));
    }

    @Test
    void aCoefficientAboveOneALevelPathAndNoPathHaveNoAnswer() {
        assertThat(FaaTime.time(new Ratio(1.05), Length.feet(100), percent(2)).why())
                .isEqualTo("a runoff coefficient lies between 0 and 1, found 1.05");
        assertThat(FaaTime.time(new Ratio(0.5), Length.feet(100), percent(0)).why())
                .contains("does not fall");
        assertThat(FaaTime.time(new Ratio(0.5), Length.feet(100), percent(-2)).why())
                .contains("does not fall");
        assertThat(FaaTime.time(new Ratio(0.5), Length.feet(0), percent(2)).why())
                .contains("no length");
    }

    @Test
    void bothEndsOfACoefficientHaveAnAnswerAndBelowNoneThereIsNone() {
        // Constructed: 1.8 (1.1 - C) 10 / 8^(1/3)
        assertThat(minutes(1, 100, 8)).isCloseTo(0.9, within(1e-9));
        assertThat(minutes(0, 100, 8)).isCloseTo(9.9, within(1e-9));
        assertThat(FaaTime.time(new Ratio(-0.05), Length.feet(100), percent(2)).why())
                .contains("found -0.05");
    }

    private static double minutes(double coefficient, double feet, double percent) {
        return inMinutes(FaaTime.time(new Ratio(coefficient), Length.feet(feet), percent(percent)));
    }
}
