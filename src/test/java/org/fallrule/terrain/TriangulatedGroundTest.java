package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.measure.Elevation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** All in metres. */
class TriangulatedGroundTest {
    private static Coordinate spot(double x, double y, double z) {
        return new Coordinate(x, y, z);
    }

    private static GroundSurface ground(Coordinate... spots) {
        return TriangulatedGround.of(List.of(spots)).orElseThrow();
    }

    /** Spots every {@code step} metres over a square of 40 m, each moved at random by less than a third of a step. */
    private static GroundSurface surveyed(DoubleBinaryOperator height, double step, long seed) {
        Random random = new Random(seed);
        List<Coordinate> spots = new ArrayList<>();
        for (double x = -20; x <= 20; x += step) {
            for (double y = -20; y <= 20; y += step) {
                double atX = x + step * (random.nextDouble() - 0.5) / 2;
                double atY = y + step * (random.nextDouble() - 0.5) / 2;
                spots.add(spot(atX, atY, height.applyAsDouble(atX, atY)));
            }
        }
        return TriangulatedGround.of(spots).orElseThrow();
    }

    private static double at(GroundSurface ground, double x, double y) {
        return ground.elevationAt(new Coordinate(x, y)).map(Elevation::metres).orElse(Double.NaN);
    }

    private static LineString line(double... ordinates) {
        Coordinate[] places = new Coordinate[ordinates.length / 2];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(ordinates[2 * i], ordinates[2 * i + 1]);
        }
        return new GeometryFactory().createLineString(places);
    }

    @Test
    void onALevelPlaneEveryPlaceHasItsHeight() {
        GroundSurface ground = ground(spot(0, 0, 7), spot(30, 0, 7), spot(30, 30, 7), spot(0, 30, 7), spot(11, 17, 7));

        assertThat(at(ground, 3, 4)).isCloseTo(7, within(1e-12));
        assertThat(at(ground, 29.9, 29.9)).isCloseTo(7, within(1e-12));
    }

    @Property(tries = 200)
    void onATiltedPlaneEveryPlaceHasThePlanesHeight(
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double east,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double north,
            @ForAll @DoubleRange(min = -17, max = 17) double x,
            @ForAll @DoubleRange(min = -17, max = 17) double y,
            @ForAll long seed) {
        GroundSurface ground = surveyed((a, b) -> 200 + east * a + north * b, 5, seed);

        assertThat(at(ground, x, y)).isCloseTo(200 + east * x + north * y, within(1e-9));
    }

    /** Spots on whole and half metres, so that many nodes lie on spots and on edges; the lattice reaches beyond the ground. */
    @Property(tries = 20)
    void theHeightsOfAnyLatticeAreThoseOfItsPlaces(@ForAll long seed, @ForAll boolean isEven) {
        assertThatALatticeHasTheHeightsOfItsPlaces(seed, isEven);
    }

    @ParameterizedTest(name = "survey {0}")
    @CsvSource({"1, true", "2, false", "3, false"})
    void theHeightsOfALatticeAreThoseOfItsPlaces(long seed, boolean isEven) {
        assertThatALatticeHasTheHeightsOfItsPlaces(seed, isEven);
    }

    @ParameterizedTest(name = "rising {0} eastward, {1} northward")
    @CsvSource({"0.1, 0", "0, 0.1", "-0.03, 0.04", "0.2, -0.05"})
    void theGradeOnATiltedPlaneIsThePlanes(double east, double north) {
        GroundSurface ground = surveyed((x, y) -> 200 + east * x + north * y, 5, 4);

        for (double x = -17; x < 17; x += 3.7) {
            Grade grade = ground.gradeAt(new Coordinate(x, 0.6 * x + 1)).orElseThrow();
            assertThat(grade.slope().ratio()).isCloseTo(Math.hypot(east, north), within(1e-9));
            assertThat(grade.downhill().radians())
                    .isCloseTo(Grade.ofRise(east, north).downhill().radians(), within(1e-9));
        }
    }

    private static void assertThatALatticeHasTheHeightsOfItsPlaces(long seed, boolean isEven) {
        Random random = new Random(seed);
        GroundSurface ground =
                isEven ? even((x, y) -> random.nextDouble()) : surveyed((x, y) -> random.nextDouble(), 4, seed);
        Lattice lattice = new Lattice(-22, -22, 0.5, 88, 89);
        double[] metres = new double[lattice.size()];
        Arrays.fill(metres, Double.NaN);
        ground.addHeights(lattice, metres);

        for (int node = 0; node < lattice.size(); node++) {
            Coordinate place = lattice.place(node);
            assertThat(metres[node]).isEqualTo(Double.valueOf(at(ground, place.x, place.y)));
        }
    }

    private static GroundSurface even(DoubleBinaryOperator height) {
        List<Coordinate> spots = new ArrayList<>();
        for (double x = -20; x <= 20; x += 2) {
            for (double y = -20; y <= 20; y += 2.5) {
                spots.add(spot(x, y, height.applyAsDouble(x, y)));
            }
        }
        return TriangulatedGround.of(spots).orElseThrow();
    }

    /**
     * A cone's surface lies below or on a chord by no more than its slope times half the chord: facets have edges of less than
     * 2.5 steps, and a place lies within one edge of a corner.
     */
    @Property(tries = 100)
    void onAConeNoPlaceIsFartherOffThanSlopeTimesSpacing(
            @ForAll @DoubleRange(min = -15, max = 15) double x,
            @ForAll @DoubleRange(min = -15, max = 15) double y,
            @ForAll long seed) {
        double slope = 0.3;
        double step = 2;
        GroundSurface ground = surveyed((a, b) -> 100 - slope * Math.hypot(a, b), step, seed);

        double cone = 100 - slope * Math.hypot(x, y);
        assertThat(at(ground, x, y)).isBetween(cone - slope * 2.5 * step, cone + 1e-9);
    }

    /**
     * On z = x y / 50 the second derivative in any direction is at most 1/50; linear interpolation on a triangle whose
     * circumscribed circle has radius R is off by no more than R^2 / 2 times that (S. Waldron, "The error in linear
     * interpolation at the vertices of a simplex", 1998; from memory). Delaunay circles are empty of spots, so R &lt; 1.1 steps.
     */
    @Property(tries = 100)
    void onASaddleTheErrorIsWithinTheBoundOfLinearInterpolation(
            @ForAll @DoubleRange(min = -15, max = 15) double x,
            @ForAll @DoubleRange(min = -15, max = 15) double y,
            @ForAll long seed) {
        double step = 2;
        GroundSurface ground = surveyed((a, b) -> a * b / 50, step, seed);

        assertThat(at(ground, x, y)).isCloseTo(x * y / 50, within(Math.pow(1.1 * step, 2) / 2 / 50));
    }

    @Test
    void outsideOfTheSpotsThereIsNoAnswer() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 3));

        assertThat(ground.elevationAt(new Coordinate(5, 5.01))).isEmpty();
        assertThat(ground.elevationAt(new Coordinate(-1, 2))).isEmpty();
        assertThat(ground.elevationAt(new Coordinate(1e6, 1e6))).isEmpty();
    }

    @Test
    void onTheEdgeAndAtASpotThereIsAnAnswer() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 3));

        assertThat(at(ground, 5, 5)).isCloseTo(2.5, within(1e-9));
        assertThat(at(ground, 10, 0)).isCloseTo(2, within(1e-9));
        assertThat(at(ground, 4, 0)).isCloseTo(1.4, within(1e-9));
    }

    @Test
    void spotsOnOneLineAreNoSurface() {
        assertThat(TriangulatedGround.of(List.of(spot(0, 0, 1), spot(1, 2, 2), spot(2, 4, 3), spot(3, 6, 9))))
                .isEmpty();
    }

    @Test
    void spotsOnOneLineButForRoundingAreNoSurface() {
        assertThat(TriangulatedGround.of(List.of(spot(0, 0, 1), spot(10, 1e-9, 5), spot(20, 0, 2), spot(30, -1e-9, 7))))
                .isEmpty();
    }

    @Test
    void fewerThanThreeSpotsAreNoSurface() {
        assertThat(TriangulatedGround.of(List.of())).isEmpty();
        assertThat(TriangulatedGround.of(List.of(spot(0, 0, 1), spot(5, 5, 1)))).isEmpty();
    }

    @Test
    void threeSpotsAtOnePlaceAreNoSurface() {
        assertThat(TriangulatedGround.of(List.of(spot(3, 3, 1), spot(3, 3, 2), spot(3, 3, 3))))
                .isEmpty();
    }

    @Test
    void spotsAtOnePlaceCountWithTheMeanOfTheirHeightsInAnyOrder() {
        List<Coordinate> spots = new ArrayList<>(List.of(
                spot(0, 0, 100),
                spot(10, 0, 100),
                spot(10, 10, 100),
                spot(0, 10, 100),
                spot(5, 5, 102.2),
                spot(5, 5, 101.4)));

        GroundSurface one = TriangulatedGround.of(spots).orElseThrow();
        Collections.reverse(spots);
        GroundSurface other = TriangulatedGround.of(spots).orElseThrow();

        assertThat(at(one, 5, 5)).isCloseTo(101.8, within(1e-9));
        assertThat(at(other, 5, 5)).isCloseTo(101.8, within(1e-9));
    }

    @Test
    void heightsKeepMoreDigitsThanSinglePrecision() {
        GroundSurface ground = ground(spot(0, 0, 1234.56789), spot(10, 0, 1234.56789), spot(0, 10, 1234.56789));

        assertThat(at(ground, 2, 2)).isCloseTo(1234.56789, within(1e-9));
    }

    /** Turning a row of spots leaves some of them outside of the line of the others by a rounding error. */
    @Property(tries = 100)
    void alongAStraightRowOfSpotsOnTheEdgeTheHeightsAreThoseOfTheRow(
            @ForAll @DoubleRange(min = 0, max = 6.3) double turn,
            @ForAll @DoubleRange(min = 0, max = 40) double along) {
        List<Coordinate> spots = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
            for (int j = 0; j <= 4; j++) {
                Coordinate place = turned(5.0 * i, 5.0 * j, turn);
                spots.add(spot(place.x, place.y, i % 2 == 0 ? 100 : 103));
            }
        }
        GroundSurface ground = TriangulatedGround.of(spots).orElseThrow();
        Coordinate place = turned(along, 0, turn);

        double share = along / 5 - Math.floor(along / 5);
        double row = Math.floor(along / 5) % 2 == 0 ? 100 + 3 * share : 103 - 3 * share;
        assertThat(at(ground, place.x, place.y)).isCloseTo(row, within(1e-6));
    }

    private static Coordinate turned(double x, double y, double turn) {
        return new Coordinate(x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn));
    }

    @Test
    void fiftyThousandSpotsAtRandomMakeASurface() {
        Random random = new Random(8);
        List<Coordinate> spots = new ArrayList<>();
        for (int i = 0; i < 50_000; i++) {
            double x = 200 * random.nextDouble();
            double y = 200 * random.nextDouble();
            spots.add(spot(x, y, 100 + 0.03 * x - 0.01 * y));
        }
        GroundSurface ground = TriangulatedGround.of(spots).orElseThrow();

        assertThat(at(ground, 77, 123)).isCloseTo(100 + 2.31 - 1.23, within(1e-9));
        assertThat(ground.breaksAlong(line(10, 10, 190, 180))).hasSizeGreaterThan(200);
    }

    @Test
    void theBreaksAlongALineAreItsVerticesAndTheEdgesThatItCrosses() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 3), spot(10, 10.5, 9));

        // the edge from (10, 0) to (0, 10) is crossed at (4, 6), and the surface left at (0, 6)
        assertThat(ground.breaksAlong(line(-2, 6, 1, 6, 9, 6))).containsExactly(0.0, 2.0, 3.0, 6.0, 11.0);
    }

    @Test
    void alongAnEdgeTheSpotsAreTheBreaks() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(20, 0, 0), spot(0, 10, 3), spot(20, 10, 9));

        assertThat(ground.breaksAlong(line(2, 0, 18, 0))).containsExactly(0.0, 8.0, 16.0);
    }

    @Test
    void aLineThatComesBackHasItsBreaksOnBothWays() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 3), spot(10, 10.5, 9));

        assertThat(ground.breaksAlong(line(1, 6, 9, 6, 1, 6))).containsExactly(0.0, 3.0, 8.0, 13.0, 16.0);
    }

    @Test
    void outsideOfTheSurfaceOnlyTheVerticesAreBreaks() {
        GroundSurface ground = ground(spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 3));

        assertThat(ground.breaksAlong(line(20, 20, 30, 20))).containsExactly(0.0, 10.0);
    }

    @Property(tries = 200)
    void betweenTwoNeighbouringBreaksTheGroundIsStraight(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -17, max = 17) double x,
            @ForAll @DoubleRange(min = -17, max = 17) double y,
            @ForAll @DoubleRange(min = -17, max = 17) double bend) {
        GroundSurface ground = surveyed((a, b) -> 100 + a * a / 50 + b * b / 80, 3, seed);
        LineString line = line(x, y, bend, -bend, y, x);
        var along = new org.locationtech.jts.linearref.LengthIndexedLine(line);
        List<Double> breaks = ground.breaksAlong(line);

        assertThat(breaks).startsWith(0.0).endsWith(line.getLength());
        for (int i = 1; i < breaks.size(); i++) {
            double from = breaks.get(i - 1);
            double to = breaks.get(i);
            double third = height(ground, along.extractPoint(from + (to - from) / 3));
            double straight =
                    height(ground, along.extractPoint(from)) * 2 / 3 + height(ground, along.extractPoint(to)) / 3;
            assertThat(third).isCloseTo(straight, within(1e-6));
        }
    }

    private static double height(GroundSurface ground, Coordinate place) {
        return ground.elevationAt(place).orElseThrow().metres();
    }
}
