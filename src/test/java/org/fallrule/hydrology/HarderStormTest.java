package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.Storm;
import org.junit.jupiter.api.Test;

class HarderStormTest {
    private static final Storm SOFT = Rains.stormOf(Rains.table(5, 6.0, 10, 5.0, 60, 2.0), 5);
    private static final Storm HARD = Rains.stormOf(Rains.table(5, 7.0, 15, 4.9, 60, 2.0), 5);

    @Test
    void theOneThatRainsHarderAtEveryDurationIsTheHarderWhicheverComesFirst() {
        assertThat(HarderStorm.of(SOFT, HARD)).contains(HARD);
        assertThat(HarderStorm.of(HARD, SOFT)).contains(HARD);
    }

    @Test
    void theSameRainFromAnotherBookIsNoHarder() {
        Storm same = Rains.stormOf(Rains.table(5, 6.0, 10, 5.0, 60, 2.0), 5);
        assertThat(HarderStorm.of(SOFT, same)).contains(SOFT);
    }

    @Test
    void aShorterShortestDurationIsHarderWithTheSameRain() {
        IntensityTable rain = Rains.table(5, 6.0, 10, 5.0, 60, 2.0);
        Storm fromTen = Rains.stormOf(rain, 10);
        Storm fromFive = Rains.stormOf(rain, 5);
        assertThat(HarderStorm.of(fromTen, fromFive)).contains(fromFive);
    }

    @Test
    void whereEachIsHarderForATimeNeitherIs() {
        Storm flashy = Rains.stormOf(Rains.table(5, 9.0, 60, 1.5), 5);
        assertThat(HarderStorm.of(SOFT, flashy)).isEmpty();
    }

    @Test
    void whereNoDurationIsCoveredByBothNeitherIs() {
        Storm longRain = Rains.stormOf(Rains.table(120, 1.0, 1440, 0.2), 5);
        assertThat(HarderStorm.of(SOFT, longRain)).isEmpty();
    }

    @Test
    void theOnlyDurationThatBothCoverDecides() {
        Storm upToTen = Rains.stormOf(Rains.table(5, 6.0, 10, 5.0), 5);
        Storm fromTen = Rains.stormOf(Rains.table(10, 5.5, 60, 2.0), 5);
        assertThat(HarderStorm.of(upToTen, fromTen)).contains(fromTen);
    }

    @Test
    void aStormThatIsTheHarderUpToTheLongestDurationButNotThereIsNot() {
        Storm endsFlat = Rains.stormOf(Rains.table(5, 6.0, 55, 1.8, 60, 1.7), 5);
        Storm endsSteep = Rains.stormOf(Rains.table(5, 7.0, 55, 2.0, 60, 1.6), 5);
        assertThat(HarderStorm.of(endsFlat, endsSteep)).isEmpty();
    }

    @Test
    void aPlaceThatStatesNoDesignStormAsksNothing() {
        Storm withoutRain = new Storm(Optional.of(Rains.stated(Rains.TEN_YEARS)), Optional.empty(), new TreeMap<>());
        assertThat(HarderStorm.of(SOFT, withoutRain)).contains(SOFT);
        assertThat(HarderStorm.of(Storm.UNSAID, SOFT)).contains(SOFT);
        assertThat(HarderStorm.of(Storm.UNSAID, withoutRain)).contains(Storm.UNSAID);
    }
}
