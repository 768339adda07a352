package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.squareFeet;

import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class RoofRainTest implements MethodContract {

    @Override
    public Method method() {
        return RoofRain.METHOD;
    }

    @Override
    public double ours(Given given) {
        Answer<Flow> flow = RoofRain.flow(given.area("A"), given.intensity("i"));
        return given.what().equals("flow")
                ? given.in(flow)
                : given.in(flow.then(known -> RoofRain.served(known, given.intensity("harder"))));
    }

    @Test
    void disagreesWithAPageThatPrintsTheFactorWrong() {
        // A page about the 2021 edition writes 0.014, and in the same example has 3,684 ft2 at 3 in/h bring 115 gpm.
        assertThat(gallons(3684, 3)).isCloseTo(115, within(0.2));
        assertThat(0.014 * 3 * 3684).isGreaterThan(150);
    }

    @Test
    void disagreesWithAnAreaThatIsMisprinted() {
        // B-6240 prints 1,117 m2 at 50 mm/h under 2,334 m2 at 25 mm/h; twice the rain serves half the roof, 1,167.
        Area half = RoofRain.flow(new Area(2334), inchesPerHour(1))
                .then(flow -> RoofRain.served(flow, inchesPerHour(2)))
                .value()
                .orElseThrow();
        assertThat(half.squareMetres()).isCloseTo(1167, within(1e-6)).isNotCloseTo(1117, within(1.0));
    }

    @Test
    void aWallThatDrainsOntoTheRoofCountsHalf() {
        // International Plumbing Code 1106.4
        assertThat(RoofRain.counting(squareFeet(1000), squareFeet(300)).in(Unit.SQUARE_FOOT))
                .isCloseTo(1150, within(1e-9));
    }

    @Test
    void noRoofAndNoRainHaveNoAnswer() {
        assertThat(RoofRain.flow(squareFeet(0), inchesPerHour(1)).why()).contains("above zero");
        assertThat(RoofRain.flow(squareFeet(10), inchesPerHour(0)).why()).contains("above zero");
        assertThat(RoofRain.flow(squareFeet(10), inchesPerHour(1))
                        .then(flow -> RoofRain.served(flow, inchesPerHour(0)))
                        .why())
                .contains("above zero");
        assertThat(RoofRain.served(new Flow(0), inchesPerHour(1)).why()).contains("above zero");
    }

    private static double gallons(double squareFeet, double inchesPerHour) {
        return RoofRain.flow(squareFeet(squareFeet), inchesPerHour(inchesPerHour))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);
    }
}
