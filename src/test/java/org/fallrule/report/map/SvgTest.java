package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SvgTest {

    @Test
    void aNumberHasOneDigitAfterThePointOrNone() {
        assertThat(Svg.number(12)).isEqualTo("12");
        assertThat(Svg.number(-3.14)).isEqualTo("-3.1");
        assertThat(Svg.number(0.05)).isEqualTo("0.1");
        assertThat(Svg.number(-0.04)).isEqualTo("0");
        assertThat(Svg.number(-0.0)).isEqualTo("0");
    }

    /** The platform's decimal numbers as a second way; halves of a tenth are rounded away from nothing. */
    @Property
    void anyNumberIsRoundedAsItIsWritten(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertThat(Svg.number(value)).isEqualTo(decimal(value));
    }

    @Property
    void halvesOfATenthAreRoundedAwayFromNothing(@ForAll @IntRange(min = -200_000, max = 200_000) int hundredths) {
        assertThat(Svg.number(hundredths / 100.0)).isEqualTo(decimal(hundredths / 100.0));
    }

    private static String decimal(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
