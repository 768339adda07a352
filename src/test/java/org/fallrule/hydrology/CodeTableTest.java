package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.percent;

import org.fallrule.hydrology.CodeTable.Edition;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CodeTableTest implements MethodContract {

    @Override
    public Method method() {
        return CodeTable.METHOD;
    }

    @Override
    public double ours(Given given) {
        Answer<Flow> flow =
                CodeTable.of(Edition.valueOf(given.text("edition"))).drain(given.length("size"), given.slope("slope"));
        return given.what().equals("flow")
                ? given.in(flow)
                : given.in(flow.then(known -> RoofRain.served(known, inchesPerHour(1))));
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
        assertThat(table.drain(Length.inches(4), percent(100.0 / 192)).why())
                .contains("lists no drain as flat as 0.52 %");
        assertThat(table.drain(Length.inches(7), percent(2)).why())
                .contains("lists no size of 7 in; it lists 3, 4, 5, 6, 8, 10, 12, 15 in");
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

    private static double gallons(Answer<Flow> flow) {
        return flow.value().orElseThrow().in(Unit.GALLON_PER_MINUTE);
    }
}
