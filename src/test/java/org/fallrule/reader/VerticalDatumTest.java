package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerticalDatumTest {
    @ParameterizedTest
    @CsvSource({
        "NAVD88, NAVD 88, true",
        "NAVD88, North American Vertical Datum 1988, true",
        "navd88 (GEOID18), North_American_Vertical_Datum_1988, true",
        "NAVD_1988, NAVD of 1988, true",
        "NGVD29, National Geodetic Vertical Datum of 1929, true",
        "NGVD 29, NAVD 88, false",
        "EGM96 geoid, EGM1996, true",
        "EGM96, EGM2008, false",
        "NAVD88, assumed, false",
        "assumed, Assumed, true",
        "town datum, county datum, false",
    })
    void twoNamesOfOneDatumAreOneAndOtherNamesAreNot(String one, String other, boolean same) {
        assertThat(new VerticalDatum(one).isSameAs(new VerticalDatum(other))).isEqualTo(same);
        assertThat(new VerticalDatum(other).isSameAs(new VerticalDatum(one))).isEqualTo(same);
    }
}
