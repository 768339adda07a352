package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Elevation;
import org.junit.jupiter.api.Test;

/** Made by arithmetic for these tests, nothing published. */
class BellyTest {

    /** Stations and inverts in metres, by turns. */
    private static List<Belly> bellies(double... numbers) {
        List<Belly.Point> points = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            points.add(new Belly.Point(numbers[i], new Elevation(numbers[i + 1])));
        }
        return Belly.between(points);
    }

    private static void holds(Belly belly, double from, double to, double lowest, double depth) {
        assertThat(belly.reach().from()).isCloseTo(from, within(1e-9));
        assertThat(belly.reach().to()).isCloseTo(to, within(1e-9));
        assertThat(belly.lowest()).isEqualTo(lowest);
        assertThat(belly.depth().metres()).isCloseTo(depth, within(1e-9));
    }

    @Test
    void aPipeThatFallsAllTheWayOrLiesLevelHoldsNoWater() {
        assertThat(bellies(0, 10, 20, 9.8, 40, 9.7)).isEmpty();
        assertThat(bellies(0, 10, 20, 10, 40, 10)).isEmpty();
    }

    @Test
    void waterReachesUpFromTheSillAsFarAsThePipeLiesBelowIt() {
        List<Belly> bellies = bellies(0, 10, 10, 9.6, 20, 9.8, 40, 9.5);

        assertThat(bellies).hasSize(1);
        holds(bellies.get(0), 5, 20, 10, 0.2);
    }

    @Test
    void theLowestOfSeveralPlacesUnderOneSillIsTheDepth() {
        List<Belly> bellies = bellies(0, 10, 10, 9.7, 20, 9.75, 30, 9.6, 40, 9.9, 50, 9.5);

        assertThat(bellies).hasSize(1);
        holds(bellies.get(0), 10.0 / 3, 40, 30, 0.3);
    }

    @Test
    void whereTwoPlacesAreEquallyLowTheFirstIsNamed() {
        holds(bellies(0, 10, 10, 9.6, 20, 9.6, 30, 9.8).get(0), 5, 30, 10, 0.2);
    }

    @Test
    void aPipeLaidUphillStandsFullFromItsStart() {
        holds(bellies(5, 9.8, 25, 10).get(0), 5, 25, 5, 0.2);
    }

    @Test
    void eachSagHasItsOwnSill() {
        List<Belly> bellies = bellies(0, 10, 10, 9.6, 20, 9.8, 30, 9.3, 40, 9.4);

        assertThat(bellies).hasSize(2);
        holds(bellies.get(0), 5, 20, 10, 0.2);
        holds(bellies.get(1), 28, 40, 30, 0.1);
    }

    @Test
    void whatIsAMillimetreDeepIsNoBellyAndWhatIsDeeperIs() {
        assertThat(bellies(0, 10, 10, 9, 20, 9.0009)).isEmpty();
        assertThat(bellies(0, 10, 10, 9, 20, 9.0011)).hasSize(1);
    }
}
