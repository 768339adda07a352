package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetUnitsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.125 | 1/4 in over 2 ft, 1/2 in over 4 ft",
                "0.25 | 1/2 in over 2 ft, 1 in over 4 ft",
                "0.0625 | 1/8 in over 2 ft, 1/4 in over 4 ft",
                "0.3 | 5/8 in over 2 ft, 1 3/16 in over 4 ft",
                "0.005 | under 1/16 in over 2 ft, under 1/16 in over 4 ft",
                "0 | 0 in over 2 ft, 0 in over 4 ft"
            })
    void aLevelShowsInchesPerFootTimesItsLength(double inchesPerFoot, String shown) {
        assertThat(SheetUnits.FEET.level(new Slope(inchesPerFoot / 12))).startsWith(shown + " of level");
    }

    @ParameterizedTest
    @CsvSource({"0.25, 1/4 in", "0.3, 5/16 in", "0.96875, 1 in", "1.96, 1 15/16 in", "2, 2 in", "0.5, 1/2 in"})
    void inchesAreGivenToTheNearestSixteenth(double inches, String shown) {
        assertThat(Sixteenths.of(Length.inches(inches))).isEqualTo(shown);
    }
}
