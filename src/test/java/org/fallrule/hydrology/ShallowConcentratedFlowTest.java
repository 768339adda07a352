package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inHours;
import static org.fallrule.hydrology.Rains.percent;

import java.util.List;
import org.fallrule.hydrology.ShallowConcentratedFlow.Surface;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class ShallowConcentratedFlowTest implements MethodContract {
    private static final String TR_55 = "NRCS TR-55 (1986), example 3-1, segment BC (from memory)";

    @Override
    public Method method() {
        return ShallowConcentratedFlow.METHOD;
    }

    @Override
    public List<Published> published() {
        return List.of(
                new Published("unpaved, s 0.01", 1.6, 0.05, "ft/s", TR_55, () -> feetPerSecond(Surface.UNPAVED, 1)),
                new Published(
                        "unpaved, s 0.01, L 1,400 ft",
                        0.24,
                        0.005,
                        "h",
                        TR_55,
                        () -> inHours(ShallowConcentratedFlow.time(Surface.UNPAVED, Length.feet(1400), percent(1)))));
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
