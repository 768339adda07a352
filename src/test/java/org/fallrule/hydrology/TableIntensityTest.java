package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inInchesPerHour;
import static org.fallrule.hydrology.Rains.minutes;
import static org.fallrule.hydrology.Rains.table;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.locality.IntensityTable;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableIntensityTest implements MethodContract {
    private static final String ATLAS =
            "NOAA Atlas 14 Vol. 2 v3, annual series, a point in North Carolina, in workshop slides on erosion design";

    /** Return period, then the intensities printed for 5, 10, 15, 30 and 60 min, in/h. */
    private static final double[][] COLUMNS = {
        {2, 5.18, 4.15, 3.48, 2.40, 1.51},
        {5, 6.34, 5.08, 4.28, 3.04, 1.95},
        {10, 7.14, 5.71, 4.81, 3.49, 2.27},
        {25, 7.92, 6.31, 5.33, 3.95, 2.63},
        {50, 8.46, 6.73, 5.68, 4.28, 2.90},
        {100, 8.94, 7.10, 5.98, 4.58, 3.16}
    };

    @Override
    public Method method() {
        return TableIntensity.METHOD;
    }

    /** Each printed row is left out in turn and found again from its neighbours. */
    @Override
    public List<Published> published() {
        List<Published> all = new ArrayList<>();
        for (double[] column : COLUMNS) {
            String years = (int) column[0] + " yr, ";
            all.add(new Published(
                    years + "10 min from the rows of 5 and 15 min",
                    column[2],
                    column[2] * 0.03,
                    "in/h",
                    ATLAS,
                    () -> at(table(5, column[1], 15, column[3]), 10)));
            all.add(new Published(
                    years + "15 min from the rows of 10 and 30 min",
                    column[3],
                    column[3] * 0.026,
                    "in/h",
                    ATLAS,
                    () -> at(table(10, column[2], 30, column[4]), 15)));
            all.add(new Published(
                    years + "30 min from the rows of 15 and 60 min",
                    column[4],
                    column[4] * 0.054,
                    "in/h",
                    ATLAS,
                    () -> at(table(15, column[3], 60, column[5]), 30)));
        }
        return all;
    }

    @Test
    void aRowOfTheTableComesBackAsItIs() {
        assertThat(List.of(5, 10, 15, 30, 60).stream().map(each -> at(Rains.NORTH_CAROLINA_10_YR, each)))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1)
                .containsExactly(7.14, 5.71, 4.81, 3.49, 2.27);
    }

    /** Constructed: arithmetic of the formula on the 10 year column. */
    @ParameterizedTest
    @CsvSource({"7, 6.406", "12, 5.286", "20, 4.210", "45, 2.714"})
    void betweenTwoRowsTheLineIsStraightOnLogarithmicAxes(double minutes, double inchesPerHour) {
        assertThat(at(Rains.NORTH_CAROLINA_10_YR, minutes)).isCloseTo(inchesPerHour, within(0.0006));
    }

    @Test
    void outsideTheTableThereIsNoAnswerAndTheAnswerSaysWhereItBegins() {
        assertThat(TableIntensity.of(Rains.NORTH_CAROLINA_10_YR, minutes(3)).why())
                .isEqualTo("outside the table: 3 min, the table begins at 5 min");
        assertThat(TableIntensity.of(Rains.NORTH_CAROLINA_10_YR, minutes(61)).why())
                .isEqualTo("outside the table: 61 min, the table ends at 60 min");
    }

    @Test
    void aDurationThatIsTheFirstButForRoundingIsInside() {
        assertThat(at(Rains.NORTH_CAROLINA_10_YR, 5 - 1e-9)).isCloseTo(7.14, within(1e-9));
        assertThat(at(Rains.NORTH_CAROLINA_10_YR, 60 + 1e-9)).isCloseTo(2.27, within(1e-9));
    }

    @Test
    void aTableOfOneRowKnowsThatDurationOnly() {
        assertThat(at(table(5, 7), 5)).isCloseTo(7, within(1e-12));
        assertThat(TableIntensity.of(table(5, 7), minutes(6)).why()).contains("ends at 5 min");
    }

    private static double at(IntensityTable table, double minutes) {
        return inInchesPerHour(TableIntensity.of(table, minutes(minutes)));
    }
}
