package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.percent;
import static org.fallrule.hydrology.Rains.squareFeet;

import java.util.List;
import org.fallrule.hydrology.CodeTable.Edition;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CodeTableTest implements MethodContract {

    @Override
    public Method method() {
        return CodeTable.METHOD;
    }

    @Override
    public List<Published> published() {
        return List.of(
                new Published(
                        "4 in at 1/8 in/ft, table of 2018",
                        115,
                        0.5,
                        "gpm",
                        "a page about the International Plumbing Code, independent of the reprint of its table",
                        () -> drain(Edition.IPC_2018, 4, "1/8 in/ft")),
                new Published(
                        "6 in at 1/8 in/ft, the flow of 21,400 ft2 at 1 in/h",
                        222.3,
                        0.5,
                        "gpm",
                        "Uniform Plumbing Code, appendix D, example D3",
                        () -> drain(Edition.UPC, 6, "1/8 in/ft")),
                new Published(
                        "4 in at 1/8 in/ft, older table",
                        78.2,
                        0.5,
                        "gpm",
                        "International Plumbing Code, 2012, Table 1106.3",
                        () -> drain(Edition.UPC, 4, "1/8 in/ft")));
    }

    /** The roof in square feet that each cell serves at 1 in/h, Uniform Plumbing Code Table 1103.2 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "3, 3288, 4640, 6576",
        "4, 7520, 10600, 15040",
        "5, 13360, 18880, 26720",
        "6, 21400, 30200, 42800",
        "8, 46000, 65200, 92000",
        "10, 82800, 116800, 165600",
        "12, 133200, 188000, 266400",
        "15, 238000, 336000, 476000"
    })
    void flowsAndRoofsOfTheTableAgree(double inches, double atEighth, double atQuarter, double atHalf) {
        assertThat(drain(Edition.UPC, inches, "1/8 in/ft")).isCloseTo(roof(atEighth), within(0.6));
        assertThat(drain(Edition.UPC, inches, "1/4 in/ft")).isCloseTo(roof(atQuarter), within(0.6));
        assertThat(drain(Edition.UPC, inches, "1/2 in/ft")).isCloseTo(roof(atHalf), within(0.6));
    }

    @Test
    void theRowOfTwoAndFiveInchesIsUsedAsPrinted() {
        // The 5 in row does not follow the formula of its neighbours: Manning with n 0.010 gives 211 gpm.
        assertThat(drain(Edition.IPC_2018, 5, "1/8 in/ft")).isEqualTo(165, within(1e-9));
        assertThat(drain(Edition.IPC_2018, 2, "1/8 in/ft")).isEqualTo(22, within(1e-9));
    }

    @Test
    void betweenTwoSlopesTheFlatterColumnCounts() {
        assertThat(drain(Edition.IPC_2018, 4, "2 %")).isEqualTo(115, within(1e-9));
        assertThat(drain(Edition.IPC_2018, 4, "1/4 in/ft")).isEqualTo(163, within(1e-9));
        assertThat(drain(Edition.IPC_2018, 4, "20 %")).isEqualTo(231, within(1e-9));
    }

    @Test
    void flatterThanTheTableAndSizesThatItDoesNotListHaveNoAnswer() {
        CodeTable table = CodeTable.of(Edition.UPC);
        assertThat(table.drain(Length.inches(4), percent(0.5)).why()).contains("lists no drain as flat as 0.5 %");
        assertThat(table.drain(Length.inches(7), percent(2)).why())
                .contains("lists no size of 7.0 in; it lists 3, 4, 5, 6, 8, 10, 12, 15 in");
        assertThat(table.leader(Length.inches(4)).why()).contains("lists no leaders");
        assertThat(CodeTable.of(Edition.NSPC_2006)
                        .drain(Length.inches(4), percent(2))
                        .value())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Edition.class)
    void everyTableNamesItsDocumentAndHowItIsKnown(Edition edition) {
        assertThat(CodeTable.of(edition).source())
                .contains("Code")
                .contains("Table")
                .contains("(");
    }

    private static double drain(Edition edition, double inches, String slope) {
        Slope steep = (Slope) Written.parse(slope, Dimension.SLOPE).quantity();
        return gallons(CodeTable.of(edition).drain(Length.inches(inches), steep));
    }

    private static double roof(double squareFeet) {
        return gallons(RoofRain.flow(squareFeet(squareFeet), inchesPerHour(1)));
    }

    private static double gallons(Answer<Flow> flow) {
        return flow.value().orElseThrow().in(Unit.GALLON_PER_MINUTE);
    }
}
