package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StationTest {
    private static String feet(double feet) {
        return new Station(feet * 0.3048).toString();
    }

    @Test
    void stationsAreWrittenInHundredsOfFeetAndTenths() {
        assertThat(feet(0)).isEqualTo("0+00.0");
        assertThat(feet(41.7)).isEqualTo("0+41.7");
        assertThat(feet(99.96)).isEqualTo("1+00.0");
        assertThat(feet(100)).isEqualTo("1+00.0");
        assertThat(feet(1234.56)).isEqualTo("12+34.6");
    }

    @Test
    void aHairBeforeTheStartIsTheStart() {
        assertThat(feet(-1e-9)).isEqualTo("0+00.0");
    }

    @Test
    void onAMetricPlanTheyAreWrittenInMetres() {
        assertThat(new Station(12.706, true)).hasToString("12.71 m");
        assertThat(new Station(-1e-9, true)).hasToString("0.00 m");
        assertThat(new Reach(0, 3.05).spoken(true)).isEqualTo("0.00 m to 3.05 m");
        assertThat(new Reach(0, 3.048).spoken(false)).isEqualTo("0+00.0 to 0+10.0");
    }
}
