package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inMinutes;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.percent;
import static org.fallrule.hydrology.Rains.table;

import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class KinematicWaveTest implements MethodContract {

    @Override
    public Method method() {
        return KinematicWave.METHOD;
    }

    @Test
    void followsTheFormula() {
        // Constructed; the inputs are those of an example in R. Charbeneau's course notes, its answer was not readable.
        assertThat(inMinutes(under(inchesPerHour(10)))).isCloseTo(2.86, within(0.005));
    }

    @Test
    void theMetricFormOfTheSourceAgreesWithinItsRounding() {
        double metric = 6.92 / Math.pow(254, 0.4) * Math.pow(0.015 * 60.96 / Math.sqrt(0.01), 0.6);
        assertThat(metric / inMinutes(under(inchesPerHour(10)))).isCloseTo(1, within(0.004));
    }

    @Test
    void underADesignStormTheTimeIsTheOneThatItsOwnIntensityBringsAbout() {
        DesignStorm storm = Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5);
        Answer<Time> settled = KinematicWave.time(new Ratio(0.24), Length.feet(90), percent(2), storm);
        Answer<Time> again = settled.then(storm::intensity)
                .then(rain -> KinematicWave.time(new Ratio(0.24), Length.feet(90), percent(2), rain));

        assertThat(inMinutes(settled)).isBetween(5.0, 60.0);
        assertThat(inMinutes(again)).isCloseTo(inMinutes(settled), within(1e-5));
    }

    @Test
    void aQuickPathRunsUnderTheShortestDurationThatCounts() {
        Answer<Time> quick = KinematicWave.time(
                new Ratio(0.011), Length.feet(30), percent(2), Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5));
        assertThat(inMinutes(quick))
                .isCloseTo(
                        inMinutes(
                                KinematicWave.time(new Ratio(0.011), Length.feet(30), percent(2), inchesPerHour(7.14))),
                        within(1e-9))
                .isLessThan(5);
    }

    @Test
    void whereTheTimeLeavesTheTableThereIsNoAnswer() {
        Answer<Time> slow =
                KinematicWave.time(new Ratio(0.8), Length.feet(1000), percent(0.5), Rains.storm(table(5, 7, 10, 5), 5));
        assertThat(slow.why()).contains("outside the table").contains("ends at 10 min");
    }

    @Test
    void noRainNoRoughnessNoFallHaveNoAnswer() {
        assertThat(under(inchesPerHour(0)).why()).contains("intensity above zero");
        assertThat(KinematicWave.time(new Ratio(0), Length.feet(10), percent(1), inchesPerHour(1))
                        .why())
                .contains("roughness");
        assertThat(KinematicWave.time(new Ratio(0.1), Length.feet(10), percent(0), inchesPerHour(1))
                        .why())
                .contains("does not fall");
    }

    private static Answer<Time> under(Intensity rain) {
        return KinematicWave.time(new Ratio(0.015), Length.feet(200), percent(1), rain);
    }
}
