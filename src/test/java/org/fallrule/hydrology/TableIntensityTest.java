package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inInchesPerHour;
import static org.fallrule.hydrology.Rains.minutes;
import static org.fallrule.hydrology.Rains.table;

import java.util.List;
import org.fallrule.locality.IntensityTable;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableIntensityTest implements MethodContract {
    @Override
    public Method method() {
        return TableIntensity.METHOD;
    }

    @Override
    public double ours(Given given) {
        IntensityTable neighbours = new IntensityTable(List.of(
                new IntensityTable.Row(given.time("shorter"), given.intensity("printed there")),
                new IntensityTable.Row(given.time("longer"), given.intensity("printed here"))));
        return given.in(TableIntensity.of(neighbours, given.time("duration")));
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
