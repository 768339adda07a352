package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fallrule.hydrology.CodeTable.Edition;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeaderCapacityTest implements MethodContract {

    @Override
    public Method method() {
        return LeaderCapacity.METHOD;
    }

    @Override
    public double ours(Given given) {
        Answer<Flow> flow = LeaderCapacity.flow(given.length("d"), given.ratio("r"));
        return given.what().equals("flow")
                ? given.in(flow)
                : given.in(flow.then(known -> RoofRain.served(known, Rains.inchesPerHour(1))));
    }

    /** The 2018 International Plumbing Code rests on the bores of Schedule 40 pipe, a third full; 2 and 5 in do not fit. */
    @ParameterizedTest
    @CsvSource({"3, 3.068", "4, 4.026", "6, 6.065", "8, 7.981", "10, 10.020", "12, 11.938"})
    void theTableOfTheInternationalPlumbingCodeIsWithinTwoPercent(double nominal, double bore) {
        double printed = CodeTable.of(Edition.IPC_2018)
                .leader(Length.inches(nominal))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);
        assertThat(printed / gallons(bore, 1.0 / 3)).isCloseTo(1, within(0.02));
    }

    @Test
    void outsideOfWhatItWasMeasuredForThereIsNoAnswer() {
        assertThat(LeaderCapacity.flow(Length.inches(3), new Ratio(0.5)).why()).contains("1/4 to 1/3");
        assertThat(LeaderCapacity.flow(Length.inches(3), new Ratio(0.2)).why()).contains("1/4 to 1/3");
        assertThat(LeaderCapacity.flow(Length.inches(3), new Ratio(0.25)).value())
                .isPresent();
        assertThat(LeaderCapacity.flow(new Length(0), new Ratio(0.3)).why()).contains("no diameter");
    }

    private static double gallons(double inches, double filled) {
        return LeaderCapacity.flow(Length.inches(inches), new Ratio(filled))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);
    }
}
