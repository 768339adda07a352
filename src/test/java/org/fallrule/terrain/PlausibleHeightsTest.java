package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class PlausibleHeightsTest {

    private static PlausibleHeights of(double... metres) {
        PlausibleHeights heights = new PlausibleHeights();
        DoubleStream.of(metres).forEach(heights::take);
        return heights;
    }

    /** The shore of the Dead Sea lies at about -430 m, Everest at 8,849 m (both from memory). */
    @Test
    void everyHeightOfDryGroundOnEarthIsOneAndWhatIsBeyondIsNone() {
        PlausibleHeights heights = of(186, 187);

        assertThat(heights.holds(-430)).isTrue();
        assertThat(heights.holds(8849)).isTrue();
        assertThat(heights.holds(-450)).isTrue();
        assertThat(heights.holds(8900)).isTrue();
        assertThat(heights.holds(-451)).isFalse();
        assertThat(heights.holds(8901)).isFalse();
        assertThat(heights.holds(-9999)).isFalse();
        assertThat(heights.holds(-9999 * 0.3048)).isFalse();
    }

    @Test
    void aZeroFartherFromTheOthersThanTheyReachIsNone() {
        assertThat(of(20, 29).holds(0)).isFalse();
        assertThat(of(20, 40).holds(0)).isTrue();
        assertThat(of(20, 41).holds(0)).isTrue();
        assertThat(of(-29, -20).holds(0)).isFalse();
        assertThat(of(-40, -20).holds(0)).isTrue();
        assertThat(of(-2, 7).holds(0)).isTrue();
    }

    @Test
    void nearlyLevelGroundWithinThreeMetresOfTheSeaMayHaveATrueZero() {
        assertThat(of(3, 3.1).holds(0)).isTrue();
        assertThat(of(3.2, 3.3).holds(0)).isFalse();
        assertThat(of(-3.3, -3.2).holds(0)).isFalse();
    }

    @Test
    void whereAllIsZeroOrNoHeightZeroIsOne() {
        assertThat(of().holds(0)).isTrue();
        assertThat(of(0, 0, -9999).holds(0)).isTrue();
    }

    @Test
    void numbersThatStandForNoHeightDoNotWidenTheReach() {
        assertThat(of(20, 29, -9999).holds(0)).isFalse();
        assertThat(of(20, 29, 0).holds(0)).isFalse();
    }
}
