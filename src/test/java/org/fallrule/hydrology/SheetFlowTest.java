package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.hydrology.Rains.percent;

import org.fallrule.hydrology.SheetFlow.Edition;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class SheetFlowTest implements MethodContract {

    @Override
    public Method method() {
        return SheetFlow.METHOD;
    }

    @Override
    public double ours(Given given) {
        return given.in(SheetFlow.time(
                given.ratio("n"), given.length("L"), given.length("P2"), given.slope("s"), Edition.TR_55_1986));
    }

    @Test
    void endsWhereTheTextSaysAndExactlyThereItStillHolds() {
        assertThat(time(100, Edition.NEH_630_2010).value()).isPresent();
        assertThat(time(100.1, Edition.NEH_630_2010).why())
                .isEqualTo("sheet flow ends after 100 ft, the path is 100.10 ft; take the rest as shallow concentrated"
                        + " flow");
        assertThat(time(300, Edition.TR_55_1986).value()).isPresent();
        assertThat(time(301, Edition.TR_55_1986).why()).startsWith("sheet flow ends after 300 ft");
    }

    @Test
    void smoothOrDryOrLevelHasNoAnswer() {
        Length path = Length.feet(50);
        Length rain = Length.inches(3.6);
        assertThat(SheetFlow.time(new Ratio(0), path, rain, percent(1), Edition.TR_55_1986)
                        .why())
                .contains("roughness");
        assertThat(SheetFlow.time(new Ratio(0.24), path, new Length(0), percent(1), Edition.TR_55_1986)
                        .why())
                .contains("depth of rain above zero");
        assertThat(SheetFlow.time(new Ratio(0.24), path, rain, percent(0), Edition.TR_55_1986)
                        .why())
                .contains("does not fall");
    }

    private static Answer<Time> time(double feet, Edition edition) {
        return SheetFlow.time(new Ratio(0.24), Length.feet(feet), Length.inches(3.6), percent(1), edition);
    }
}
