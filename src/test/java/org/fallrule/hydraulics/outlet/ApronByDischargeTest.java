package org.fallrule.hydraulics.outlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;

import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The manual prints the formula and no example. */
class ApronByDischargeTest implements MethodContract {

    @Override
    public Method method() {
        return ApronByDischarge.METHOD;
    }

    @ParameterizedTest // made by arithmetic for this test, not published
    @CsvSource({"6, 0.6, 6.9", "4, 0.2, 4.4", "12, 3.0, 13.1"})
    void lengthByFlowAndPipe(double inches, double cfs, double feet) {
        assertThat(ApronByDischarge.length(Length.inches(inches), cfs(cfs))
                        .value()
                        .orElseThrow()
                        .in(Unit.FOOT))
                .isCloseTo(feet, within(0.05));
    }

    @Test
    void widthAndThicknessFollow() {
        assertThat(ApronByDischarge.widthAtPipe(Length.inches(6)).in(Unit.INCH)).isCloseTo(18, within(1e-9));
        assertThat(ApronByDischarge.thickness(Length.inches(3)).in(Unit.INCH)).isCloseTo(6, within(1e-9));
    }

    @Test
    void withoutFlowThereIsNone() {
        assertThat(ApronByDischarge.length(Length.inches(6), cfs(0)).why()).contains("no water");
    }
}
