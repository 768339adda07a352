package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.percent;

import org.fallrule.hydrology.ShallowConcentratedFlow.Surface;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class ShallowConcentratedFlowTest implements MethodContract {
    @Override
    public Method method() {
        return ShallowConcentratedFlow.METHOD;
    }

    @Override
    public double ours(Given given) {
        Surface surface = Surface.valueOf(given.text("surface"));
        return given.what().equals("velocity")
                ? given.in(ShallowConcentratedFlow.velocity(surface, given.slope("s")))
                : given.in(ShallowConcentratedFlow.time(surface, given.length("L"), given.slope("s")));
    }

    /** FHWA HEC-22, 3rd edition (2009): V = 3.28 k Sp^0.5, Sp in percent, k 0.619 paved, 0.491 unpaved (from memory). */
    @Test
    void agreesWithTheFormOfHec22() {
        assertThat(feetPerSecond(Surface.PAVED, 4) / (3.28 * 0.619 * 2)).isCloseTo(1, within(0.002));
        assertThat(feetPerSecond(Surface.UNPAVED, 4) / (3.28 * 0.491 * 2)).isCloseTo(1, within(0.002));
    }

    @Test
    void aLevelPathHasNoAnswer() {
        assertThat(ShallowConcentratedFlow.velocity(Surface.PAVED, percent(0)).why())
                .contains("does not fall");
        assertThat(ShallowConcentratedFlow.time(Surface.PAVED, Length.feet(0), percent(1))
                        .why())
                .contains("no length");
    }

    @Test
    void pavementIsFaster() {
        assertThat(feetPerSecond(Surface.PAVED, 1) / feetPerSecond(Surface.UNPAVED, 1))
                .isCloseTo(1.26, within(0.005));
    }

    private static double feetPerSecond(Surface surface, double percent) {
        return ShallowConcentratedFlow.velocity(surface, percent(percent))
                .value()
                .orElseThrow()
                .in(Unit.FOOT_PER_SECOND);
    }
}
