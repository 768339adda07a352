package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;
import static org.fallrule.hydraulics.UsUnits.pipe;

import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriticalDepthTest implements MethodContract {

    @Override
    public Method method() {
        return CriticalDepth.METHOD;
    }

    /**
     * The fitted formula dc = 1.01 / D^0.26 (Q^2/g)^0.25 in metres, for dc/D from 0.02 to 0.85; W. O. Straub, Civil
     * Engineering, 1978 (from memory).
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.002", "0.15, 0.008", "0.2, 0.02", "0.3, 0.05", "0.6, 0.3"})
    void agreesWithAFittedFormulaToThreePercent(double diameter, double flow) {
        double fitted = 1.01 / Math.pow(diameter, 0.26) * Math.pow(flow * flow / 9.81, 0.25);

        assertThat(metres(diameter, flow)).isCloseTo(fitted, within(0.03 * fitted));
    }

    private static double metres(double diameter, double flow) {
        return CriticalDepth.of(new Length(diameter), new Flow(flow))
                .value()
                .orElseThrow()
                .metres();
    }

    @Test
    void theFroudeNumberIsOneThereAndTheEnergyLeast() {
        double depth = metres(0.2, 0.012);
        Flow flow = new Flow(0.012);

        assertThat(CriticalDepth.froude(new Length(0.2), new Length(depth), flow)
                        .value()
                        .orElseThrow())
                .isCloseTo(1, within(1e-9));
        double least = new CircularSection(0.2, depth).specificEnergyM(0.012);
        assertThat(new CircularSection(0.2, depth * 1.01).specificEnergyM(0.012))
                .isGreaterThan(least);
        assertThat(new CircularSection(0.2, depth * 0.99).specificEnergyM(0.012))
                .isGreaterThan(least);
    }

    @Test
    void onTheCriticalSlopeNormalAndCriticalDepthAreOne() {
        RoundPipe pipe = pipe(6, 0.012);
        Flow flow = cfs(0.3);
        Slope slope = CriticalDepth.slope(pipe, flow).value().orElseThrow();
        NormalFlow.Open open = (NormalFlow.Open) NormalDepth.of(pipe, slope, flow);

        assertThat(open.depth().metres())
                .isCloseTo(
                        CriticalDepth.of(pipe.bore(), flow)
                                .value()
                                .orElseThrow()
                                .metres(),
                        within(1e-9));
    }

    @Test
    void nearsTheCrownAndNeverPassesIt() {
        assertThat(metres(0.1, 0.02)).isBetween(0.099, 0.1);
        assertThat(metres(0.1, 10)).isBetween(0.0999, 0.1);
    }

    @Test
    void thereIsNoneWithoutFlowOrFreeSurface() {
        Length bore = Length.inches(4);

        assertThat(CriticalDepth.of(bore, new Flow(0)).why()).contains("no water flows");
        assertThat(CriticalDepth.slope(pipe(4, 0.01), new Flow(0)).value()).isEmpty();
        assertThat(CriticalDepth.froude(bore, bore, cfs(0.1)).why()).contains("full");
        assertThat(CriticalDepth.froude(bore, new Length(0), cfs(0.1)).why()).contains("no water in the pipe");
    }
}
