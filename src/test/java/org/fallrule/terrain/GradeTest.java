package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradeTest {

    @ParameterizedTest(name = "rising {0} eastward and {1} northward, it falls toward {2} degrees")
    @CsvSource({"0, -1, 0", "-1, -1, 45", "-1, 0, 90", "-1, 1, 135", "0, 1, 180", "1, 1, 225", "1, 0, 270", "1, -1, 315"
    })
    void theBearingIsThatOfTheFallClockwiseFromNorth(double eastward, double northward, double bearing) {
        assertThat(Math.toDegrees(Grade.ofRise(eastward, northward).downhill().radians()))
                .isCloseTo(bearing, within(1e-9));
    }

    @Test
    void levelGroundHasTheBearingZero() {
        Grade level = Grade.ofRise(0, 0);

        assertThat(level.slope().ratio()).isZero();
        assertThat(level.downhill().radians()).isZero();
    }

    @Test
    void theSlopeIsThatOfTheSteepestWay() {
        assertThat(Grade.ofRise(0.03, -0.04).slope().ratio()).isCloseTo(0.05, within(1e-12));
    }
}
