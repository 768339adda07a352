package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

class RasterGroundTest {

    private static LineString line(double... xy) {
        Coordinate[] places = new Coordinate[xy.length / 2];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        return new GeometryFactory().createLineString(places);
    }

    @ParameterizedTest(name = "raster turned by {0} radians")
    @ValueSource(doubles = {0, 0.02, 0.5, 2.5})
    void aPlaneIsExactAndFallsTheWayItFalls(double turn) {
        Shape plane = Shape.square(60, (x, y) -> 100 + 0.03 * x - 0.04 * y);
        RasterGround ground = new RasterGround(plane.raster(2, turn));

        Coordinate place = new Coordinate(3.3, -7.7);
        assertThat(ground.elevationAt(place).orElseThrow().metres()).isCloseTo(plane.at(3.3, -7.7), within(1e-9));
        Grade grade = ground.gradeAt(place).orElseThrow();
        assertThat(grade.slope().ratio()).isCloseTo(0.05, within(1e-9));
        // Rising east and falling north, it falls to the north-west: atan2(-0.03, 0.04) clockwise from north.
        assertThat(Math.toDegrees(grade.downhill().radians()))
                .isCloseTo(360 - Math.toDegrees(Math.atan2(3, 4)), within(1e-6));
    }

    /**
     * Central differences over a paraboloid are exact: of x^2, ((x + h)^2 - (x - h)^2) / 2h = 2x; bilinear sampling adds a
     * like amount on both sides.
     */
    @Test
    void aBowlFallsToItsMiddle() {
        RasterGround ground = new RasterGround(
                Shape.square(60, (x, y) -> 0.005 * (x * x + y * y)).raster(1, 0));

        Grade grade = ground.gradeAt(new Coordinate(20, 0)).orElseThrow();
        assertThat(grade.slope().ratio()).isCloseTo(0.2, within(1e-9));
        assertThat(Math.toDegrees(grade.downhill().radians())).isCloseTo(270, within(1e-6));
        assertThat(ground.gradeAt(new Coordinate(0, 0)).orElseThrow().slope().ratio())
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void beyondTheRasterThereIsNoGroundAndNoGrade() {
        RasterGround ground = new RasterGround(Shape.square(10, (x, y) -> 5).raster(1, 0));

        assertThat(ground.elevationAt(new Coordinate(11, 0))).isEmpty();
        assertThat(ground.gradeAt(new Coordinate(11, 0))).isEmpty();
        assertThat(ground.gradeAt(new Coordinate(9.9, 0))).isPresent();
    }

    @Test
    void breaksAreBendsCrossingsAndTheMiddlesBetween() {
        RasterGround ground = new RasterGround(Shape.square(10, (x, y) -> 5).raster(2, 0));

        assertThat(ground.breaksAlong(line(0.5, 0.5, 4.5, 0.5))).containsExactly(0.0, 0.75, 1.5, 2.5, 3.5, 3.75, 4.0);
    }

    /** The bound in the class's own words: a sixteenth of the twist. Of x * y / 50 sampled at h, the twist is h^2 / 50. */
    @ParameterizedTest(name = "raster turned by {0} radians")
    @ValueSource(doubles = {0, 0.3, 0.7853981633974483, 2})
    void betweenBreaksASaddleIsNearlyStraight(double turn) {
        double spacing = 3;
        RasterGround ground =
                new RasterGround(Shape.square(80, (x, y) -> x * y / 50).raster(spacing, turn));
        LineString line = line(-20, -13, 11, 17, 30, -20);
        LengthIndexedLine stations = new LengthIndexedLine(line);
        List<Double> breaks = ground.breaksAlong(line);
        double twist = spacing * spacing / 50;

        for (int i = 0; i + 1 < breaks.size(); i++) {
            double from = breaks.get(i);
            double to = breaks.get(i + 1);
            double middle = height(ground, stations, (from + to) / 2);
            double chord = (height(ground, stations, from) + height(ground, stations, to)) / 2;
            assertThat(middle).isCloseTo(chord, within(twist / 16 + 1e-9));
        }
    }

    private static double height(RasterGround ground, LengthIndexedLine stations, double at) {
        return ground.elevationAt(stations.extractPoint(at)).orElseThrow().metres();
    }
}
