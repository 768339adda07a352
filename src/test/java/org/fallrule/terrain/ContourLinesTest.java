package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        return ContourLines.of(surface, box, new Length(0.5), List.of(new Length(interval)), Integer.MAX_VALUE);
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

    @Test
    void levelGroundOnALineAndGroundThatIsNotKnownHaveNone() {
        assertThat(of(place -> 100, new Envelope(0, 5, 0, 5), 1)).isEmpty();
        assertThat(of(place -> Double.NaN, new Envelope(0, 5, 0, 5), 1)).isEmpty();
    }
}
