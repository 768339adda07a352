package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** Lines of equal height on grounds of closed form. */
class ContourLinesTest {

    private static List<ContourLines.Contour> of(ToDoubleFunction<Coordinate> height, Envelope box, double interval) {
        return of(height, box, Integer.MAX_VALUE, interval);
    }

    private static List<ContourLines.Contour> of(
            ToDoubleFunction<Coordinate> height, Envelope box, int most, double... intervals) {
        GroundSurface surface = new GroundSurface() {
            @Override
            public Optional<Elevation> elevationAt(Coordinate place) {
                double metres = height.applyAsDouble(place);
                return Double.isNaN(metres) ? Optional.empty() : Optional.of(new Elevation(metres));
            }

            @Override
            public Optional<Grade> gradeAt(Coordinate place) {
                return Optional.empty();
            }

            @Override
            public Envelope extent() {
                return box;
            }

            @Override
            public List<Double> breaksAlong(LineString line) {
                return List.of();
            }
        };
        List<Length> lengths = Arrays.stream(intervals).mapToObj(Length::new).toList();
        return ContourLines.of(surface, box, new Length(0.5), lengths, most);
    }

    @Test
    void onAPlaneTheLinesAreStraightAndExact() {
        List<ContourLines.Contour> contours = of(place -> 100 + 0.1 * place.x, new Envelope(0, 20, 0, 10), 0.5);

        assertThat(contours).extracting(each -> each.level().metres()).contains(100.5, 101.0, 101.5);
        ContourLines.Contour middle = contours.stream()
                .filter(each -> each.level().metres() == 101)
                .findFirst()
                .orElseThrow();
        assertThat(middle.lines().getNumGeometries()).isEqualTo(1);
        assertThat(middle.lines().getLength()).isCloseTo(10, within(1e-6));
        assertThat(middle.lines().getCoordinates())
                .allSatisfy(place -> assertThat(place.x).isCloseTo(10, within(1e-6)));
    }

    @Test
    void onAConeTheyAreClosedRingsWithinTheBoundOfTheSamples() {
        // a chord of 0.5 m on a circle of 5 m stands 0.5^2 x 2 / (8 x 5) = 0.0125 m inside of it, in squares of 0.5 m
        List<ContourLines.Contour> contours =
                of(place -> 110 - Math.hypot(place.x, place.y), new Envelope(-8, 8, -8, 8), 1);

        ContourLines.Contour five = contours.stream()
                .filter(each -> each.level().metres() == 105)
                .findFirst()
                .orElseThrow();
        assertThat(five.lines().getNumGeometries()).isEqualTo(1);
        LineString ring = (LineString) five.lines().getGeometryN(0);
        assertThat(ring.isClosed()).isTrue();
        assertThat(ring.getCoordinates())
                .allSatisfy(place -> assertThat(Math.hypot(place.x, place.y)).isCloseTo(5, within(0.0125)));
    }

    /** From 100 m to 102 m, so that a line of every half metre between makes three, of every metre one. */
    @Test
    void theFirstIntervalThatComesToNoMoreLinesThanAskedCountsAndElseTheLast() {
        Envelope box = new Envelope(0.5, 19.5, 0, 10);
        ToDoubleFunction<Coordinate> plane = place -> 100 + 0.1 * place.x;

        assertThat(of(plane, box, 3, 0.5, 1)).hasSize(3);
        assertThat(of(plane, box, 2, 0.5, 1))
                .extracting(each -> each.level().metres())
                .containsExactly(101.0);
        assertThat(of(plane, box, 0, 0.5, 1)).hasSize(1);
    }

    @Test
    void linesRunToTheEdgeOfTheBox() {
        List<ContourLines.Contour> contours = of(place -> 101 + 0.8 * place.y, new Envelope(-3, 4, 0, 10), 5);

        assertThat(contours).extracting(each -> each.level().metres()).containsExactly(105.0);
        Envelope line = contours.get(0).lines().getEnvelopeInternal();
        assertThat(List.of(line.getMinX(), line.getMaxX())).containsExactly(-3.0, 4.0);
        assertThat(line.getMinY()).isCloseTo(5, within(1e-6));
    }

    @Test
    void levelGroundOnALineAndGroundThatIsNotKnownHaveNone() {
        assertThat(of(place -> 100, new Envelope(0, 5, 0, 5), 1)).isEmpty();
        assertThat(of(place -> Double.NaN, new Envelope(0, 5, 0, 5), 1)).isEmpty();
    }
}
