package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

class SurveyPointsTest {

    /** Around the places where one cell of the index ends and the next begins, and on both sides of the origin. */
    @ParameterizedTest(name = "around {0}")
    @ValueSource(doubles = {0, 0.016, -0.016, 0.008, 123.456, -50.0005})
    void pointsWithinAMillimetreAreOneWhereverTheyLie(double around) {
        for (double degrees = 0; degrees < 360; degrees += 15) {
            double east = Math.cos(Math.toRadians(degrees));
            double north = Math.sin(Math.toRadians(degrees));
            SurveyPoints points = new SurveyPoints();
            points.take(new Coordinate(around, around, 5));
            points.take(new Coordinate(around + 0.00099 * east, around + 0.00099 * north, 7));
            points.take(new Coordinate(around + 0.0021 * east, around + 0.0021 * north, 9));

            assertThat(points.places()).extracting(Coordinate::getZ).containsExactly(6.0, 9.0);
        }
    }

    @Test
    void theHeightIsTheMeanOfAllThatWereGiven() {
        SurveyPoints points = new SurveyPoints();
        Coordinate first = points.take(new Coordinate(1, 2, 10));
        points.take(new Coordinate(1, 2, 10.4));
        points.take(new Coordinate(1, 2, 10.3));

        assertThat(first.getZ()).isCloseTo(10.2333333333, within(1e-9));
        assertThat(points.disagreement(new Coordinate(1, 2))).isCloseTo(0.4, within(1e-9));
        assertThat(points.disagreement(new Coordinate(3, 2))).isZero();
    }

    @ParameterizedTest(name = "more than {0} m: {1}")
    @CsvSource({"0.3, true", "0.5, false", "0.6, false"})
    void heightsDisagreeThatDifferByMore(double metres, boolean anyDisagrees) {
        SurveyPoints points = new SurveyPoints();
        points.take(new Coordinate(1, 2, 10));
        points.take(new Coordinate(1, 2, 10.5));
        points.take(new Coordinate(30, 2, 14));

        assertThat(points.anyDisagreement(metres)).isEqualTo(anyDisagrees);
    }

    @Test
    void negativeZeroIsZero() {
        SurveyPoints points = new SurveyPoints();
        points.take(new Coordinate(-0.0, -0.0, 1));

        assertThat(points.places().get(0).hashCode()).isEqualTo(new Coordinate(0, 0).hashCode());
    }
}
