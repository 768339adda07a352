package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inInchesPerHour;
import static org.fallrule.hydrology.Rains.minutes;
import static org.fallrule.hydrology.Rains.stated;

import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Storm;
import org.junit.jupiter.api.Test;

class DesignStormTest {

    @Test
    void withoutAStormTheAnswerNamesWhatIsMissing() {
        assertThat(DesignStorm.of(Storm.UNSAID).why())
                .isEqualTo("no return period is stated; give storm: return_period in the rule book or in site.yaml");
    }

    @Test
    void aReturnPeriodWithoutRainNamesWhatIsMissing() {
        Storm storm = new Storm(Optional.of(stated(Rains.TEN_YEARS)), Optional.empty(), new TreeMap<>());
        assertThat(DesignStorm.of(storm).why())
                .isEqualTo("no rain of 10 yr is stated; give storm: intensity in the rule book or in site.yaml");
    }

    @Test
    void theRainOfAnotherReturnPeriodIsNotTakenInstead() {
        Storm storm = Rains.stormOf(Rains.NORTH_CAROLINA_10_YR, 5);
        assertThat(DesignStorm.of(storm, new ReturnPeriod(25)).why())
                .contains("no rain of 25 yr is stated, only of 10 yr");
    }

    @Test
    void theShortestDurationIsTheFloorAndNoMore() {
        DesignStorm storm = Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5);
        assertThat(storm.duration(minutes(2.2))).isEqualTo(minutes(5));
        assertThat(storm.duration(minutes(5))).isEqualTo(minutes(5));
        assertThat(storm.duration(minutes(8))).isEqualTo(minutes(8));
        assertThat(inInchesPerHour(storm.intensity(minutes(5)))).isCloseTo(7.14, within(1e-9));
    }
}
