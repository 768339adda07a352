package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inMinutes;
import static org.fallrule.hydrology.Rains.percent;

import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class KerbyTest implements MethodContract {

    @Override
    public Method method() {
        return Kerby.METHOD;
    }

    @Override
    public double ours(Given given) {
        return given.in(Kerby.time(given.ratio("N"), given.length("L"), given.slope("S")));
    }

    @Test
    void theMetricFormOfTheSourceAgrees() {
        // The source's metric constant 1.44 is rounded from 1.442.
        double metric = 1.44 * Math.pow(100 * 0.4, 0.467) * Math.pow(0.02, -0.235);
        assertThat(minutes(100 / 0.3048, 0.4, 2)).isCloseTo(metric, within(0.05));
    }

    @Test
    void aSmoothOrLevelPathHasNoAnswer() {
        assertThat(Kerby.time(new Ratio(0), Length.feet(100), percent(1)).why()).contains("retardance above zero");
        assertThat(Kerby.time(new Ratio(0.4), Length.feet(100), percent(0)).why())
                .contains("does not fall");
    }

    private static double minutes(double feet, double retardance, double percent) {
        return inMinutes(Kerby.time(new Ratio(retardance), Length.feet(feet), percent(percent)));
    }
}
