package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.gpmOfRain;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerticalLeaderTest implements MethodContract {
    private static final String NSPC = "National Standard Plumbing Code 2006 table 13.6.1, read";

    @Override
    public Method method() {
        return VerticalLeader.METHOD;
    }

    @Override
    public List<Published> published() {
        List<Published> all = new ArrayList<>();
        double[][] rows = {{2, 23}, {3, 67}, {4, 144}, {5, 261}, {6, 424}, {8, 913}, {10, 1655}, {12, 2692}, {15, 4880}
        };
        for (double[] row : rows) {
            all.add(new Published(
                    "leader of " + (int) row[0] + " in, 7/24 full", row[1], 0.55, "gpm", NSPC, () -> gpm(row[0])));
        }
        return all;
    }

    private static double gpm(double inches) {
        return VerticalLeader.capacity(Length.inches(inches), 7.0 / 24).in(Unit.GALLON_PER_MINUTE);
    }

    /** Square feet of roof at 1 in/h: NSPC 2006 table 13.6.1, and IAPMO 2000 table 10.2 in Texas AgriLife B-6240 (both read). */
    @ParameterizedTest
    @CsvSource({
        "2, 2180, 2176",
        "3, 6426, 6440",
        "4, 13840, 13840",
        "5, 25094, 25120",
        "6, 40805, 40800",
        "8, 87878, 88000",
        "10, 159334, 159334",
        "12, 259095, 259095",
        "15, 469771, 469771"
    })
    void drainsTheRoofThatTwoCodesPrint(double inches, double nspc, double iapmo) {
        assertThat(gpmOfRain(nspc, 1)).isCloseTo(gpm(inches), within(0.003 * gpm(inches)));
        assertThat(gpmOfRain(iapmo, 1)).isCloseTo(gpm(inches), within(0.004 * gpm(inches)));
    }

    @Test
    void moreThanAThirdFullIsRefused() {
        VerticalLeader.capacity(Length.inches(4), 1.0 / 3);
        assertThatThrownBy(() -> VerticalLeader.capacity(Length.inches(4), 0.34))
                .hasMessageContaining("1/3");
        assertThatThrownBy(() -> VerticalLeader.capacity(Length.inches(4), 0)).hasMessageContaining("above 0");
    }
}
