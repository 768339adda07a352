package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.squareFeet;

import java.util.List;
import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class RoofRainTest implements MethodContract {

    @Override
    public Method method() {
        return RoofRain.METHOD;
    }

    @Override
    public List<Published> published() {
        return List.of(
                new Published(
                        "1 ft2 at 1 in/h",
                        0.0104,
                        0.00005,
                        "gpm",
                        "International Plumbing Code, 2012 and 2021 (read in pages about them)",
                        () -> gallons(1, 1)),
                new Published(
                        "1 ft2 at 1 in/h, i/12 x 7.48/60",
                        0.01039,
                        0.000005,
                        "gpm",
                        "National Standard Plumbing Code, 2015, appendix A",
                        () -> gallons(1, 1)),
                new Published(
                        "what serves 21,400 ft2 at 1 in/h, at 3.2 in/h",
                        6688,
                        1,
                        "ft2",
                        "Uniform Plumbing Code, appendix D, example D3",
                        () -> RoofRain.flow(squareFeet(21_400), inchesPerHour(1))
                                .then(flow -> RoofRain.served(flow, inchesPerHour(3.2)))
                                .value()
                                .orElseThrow()
                                .in(Unit.SQUARE_FOOT)),
                new Published(
                        "2,506 ft2 at 3 in/h",
                        78.2,
                        0.1,
                        "gpm",
                        "International Plumbing Code, 2012, Table 1106.3, with the factor 0.0104",
                        () -> gallons(2506, 3)),
                new Published(
                        "1,286 m2 at 25.4 mm/h",
                        9.1,
                        0.05,
                        "l/s",
                        "Texas A&M AgriLife B-6240, after IAPMO 2000",
                        () -> RoofRain.flow(new Area(1286), new Intensity(25.4 * Unit.MILLIMETRE_PER_HOUR.toSi()))
                                .value()
                                .orElseThrow()
                                .in(Unit.LITRE_PER_SECOND)));
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
    }

    private static double gallons(double squareFeet, double inchesPerHour) {
        return RoofRain.flow(squareFeet(squareFeet), inchesPerHour(inchesPerHour))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);
    }
}
