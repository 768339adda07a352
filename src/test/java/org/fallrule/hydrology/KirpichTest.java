package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class KirpichTest implements MethodContract {

    @Override
    public Method method() {
        return Kirpich.METHOD;
    }

    @Override
    public double ours(Given given) {
        return given.in(Kirpich.time(given.length("L"), given.slope("S")));
    }

    @Test
    void theWholeLengthInsteadOfTheChannelsMissesThePublishedAnswer() {
        assertThat(minutes(5280, 50.0 / 5280)).isGreaterThan(34);
    }

    @Test
    void disagreesWithAPrintedExampleWhosePowersAreWrong() {
        // A general engineering web page prints 13.7 min for 2,000 ft at 4 %, from 2000^0.77 = 417.5 (it is 348.2).
        assertThat(minutes(2000, 0.04)).isCloseTo(9.38, within(0.005));
    }

    @Test
    void aLevelChannelHasNoAnswer() {
        assertThat(Kirpich.time(Length.feet(100), new Slope(0)).why()).contains("does not fall");
        assertThat(Kirpich.time(new Length(0), new Slope(0.01)).why()).contains("no length");
    }

    @Test
    void theMetricFormOfTheSourceAgrees() {
        // The source's metric constant 0.0195 is rounded from 0.01947.
        assertThat(minutes(1000 / 0.3048, 0.02))
                .isCloseTo(0.0195 * Math.pow(1000, 0.77) * Math.pow(0.02, -0.385), within(0.05));
    }

    private static double minutes(double feet, double slope) {
        Time time = Kirpich.time(Length.feet(feet), new Slope(slope)).value().orElseThrow();
        return time.in(Unit.MINUTE);
    }
}
