package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.fallrule.document.Fault;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class GroundBuilderTest {

    @Test
    void nothingSurveyedIsNoGround() {
        assertThat(new Survey().built().ground()).isEmpty();
        assertThat(new Survey()
                        .spot(0, 0, 5)
                        .spot(1, 1, 5)
                        .spot(2, 2, 5)
                        .built()
                        .ground())
                .isEmpty();
    }

    @Test
    void anExactZeroOrMinus9999AmongOthersIsReportedAndLeftOut() {
        Survey survey = new Survey().grid(10, 5, (x, y) -> 200).spot(1, 1, 0).spot(2, -1, -9999 * 0.3048);

        GroundBuilder.Result built = survey.built();

        assertThat(Survey.height(built.ground().orElseThrow(), 1, 1)).isEqualTo(200);
        assertThat(built.problems())
                .extracting(Fault::toString)
                .containsExactly(
                        "spot.shp: feature 26: has the elevation 0 m (0 ft), which seems to stand for none, and is left"
                                + " out of the ground; give its elevation or remove it",
                        "spot.shp: feature 27: has the elevation -3047.70 m (-9999 ft), which seems to stand for none, and"
                                + " is left out of the ground; give its elevation or remove it");
    }

    @Test
    void aZeroBesideTheSeaIsAHeight() {
        Survey survey = new Survey().grid(10, 5, (x, y) -> 1.2 + 0.1 * x).spot(-11, 0, 0);

        assertThat(survey.built().problems()).isEmpty();
        assertThat(Survey.height(survey.ground(), -11, 0)).isEqualTo(0);
    }

    @Test
    void aContourWithoutElevationIsReportedAndLeftOut() {
        Survey survey = new Survey()
                .grid(10, 5, (x, y) -> 200)
                .contour(Double.NaN, new Coordinate(-8, 1), new Coordinate(8, 1));

        assertThat(survey.built().problems())
                .extracting(Fault::toString)
                .containsExactly("contour.shp: feature 1: has no elevation and is left out of the ground; give it one");
    }

    @Test
    void ofTwoHeightsAtOnePlaceTheMeanIsTakenAndBothAreReported() {
        Survey survey = new Survey().grid(10, 5, (x, y) -> 200).spot(0.0004, 0, 201);

        GroundBuilder.Result built = survey.built();

        assertThat(Survey.height(built.ground().orElseThrow(), 0, 0)).isCloseTo(200.5, within(1e-3));
        assertThat(built.problems())
                .hasSize(2)
                .extracting(Fault::says)
                .allMatch(
                        says -> says.startsWith("heights at its place differ by 1 m (3.28 ft); their mean was taken"));
    }

    @Test
    void aBreaklineIsKeptAsAnEdge() {
        // A curb of 0.15 m along x = 0; without the line, triangles run across it from the spots beside its middle.
        Survey survey = new Survey()
                .spot(-1, 0, 10)
                .spot(1, 0, 10.15)
                .spot(-10, -10, 10)
                .spot(-10, 10, 10)
                .spot(10, -10, 10.15)
                .spot(10, 10, 10.15)
                .breakline(new Coordinate(-0.1, -12, 10), new Coordinate(-0.1, 12, 10))
                .breakline(new Coordinate(0, -12, 10.15), new Coordinate(0, 12, 10.15));
        GroundSurface ground = survey.ground();

        for (double y = -11.9; y < 12; y += 1.7) {
            assertThat(Survey.height(ground, -0.1, y)).isCloseTo(10, within(1e-9));
            assertThat(Survey.height(ground, 0, y)).isCloseTo(10.15, within(1e-9));
            assertThat(Survey.height(ground, -0.05, y)).isCloseTo(10.075, within(1e-9));
        }
    }

    @Test
    void crossingLinesMeetAtTheMeanOfTheirHeights() {
        Survey survey = new Survey()
                .spot(-10, -10, 5)
                .spot(10, -10, 5)
                .spot(10, 10, 5)
                .spot(-10, 10, 5)
                .breakline(new Coordinate(-9, 0, 4), new Coordinate(9, 0, 6))
                .breakline(new Coordinate(0, -9, 7), new Coordinate(0, 9, 7));

        assertThat(Survey.height(survey.ground(), 0, 0)).isCloseTo(6, within(1e-9));
        assertThat(Survey.height(survey.ground(), 4.5, 0)).isCloseTo(6, within(1e-9));
    }

    /** Nine in ten links are no longer than the diagonal of 2 m cells, 2.83 m, four times that is 37 ft; the hole is 44 m
     * square, 20,839 sq ft, less what the triangles in its corners bridge. */
    @Test
    void aHoleInTheSurveyIsNotBridged() {
        Survey survey = new Survey();
        for (double x = -40; x <= 40; x += 2) {
            for (double y = -40; y <= 40; y += 2) {
                if (Math.max(Math.abs(x), Math.abs(y)) > 20) {
                    survey.spot(x, y, 100 + 0.01 * x);
                }
            }
        }
        GroundBuilder.Result built = survey.built();
        GroundSurface ground = built.ground().orElseThrow();

        assertThat(ground.elevationAt(new Coordinate(0, 0))).isEmpty();
        assertThat(ground.elevationAt(new Coordinate(15, 3))).isEmpty();
        assertThat(Survey.height(ground, 30, 30)).isCloseTo(100.3, within(1e-9));
        assertThat(built.problems())
                .extracting(Fault::says)
                .singleElement()
                .asString()
                .matches(
                        "(19|20)\\d{3} sq ft \\(1[89]\\d{2} m2\\) between points more than 37 ft \\(11 m\\) apart are taken as not surveyed.*");
    }

    @Test
    void aGapLikeTheOthersIsBridged() {
        Survey survey = new Survey();
        survey.grid(20, 5, (x, y) -> 100);
        survey.spots.removeIf(spot -> spot.geometry().getCoordinate().distance(new Coordinate(0, 0)) < 1);

        assertThat(Survey.height(survey.ground(), 0, 0)).isEqualTo(100);
        assertThat(survey.built().problems()).isEmpty();
    }

    @Test
    void aDenseBreaklineInASparseSurveyLeavesTheRestAsItIs() {
        Survey survey = new Survey().grid(40, 10, (x, y) -> 100);
        Coordinate[] curb = IntStream.rangeClosed(-160, 160)
                .mapToObj(i -> new Coordinate(i / 4.0, 3.3, 100))
                .toArray(Coordinate[]::new);
        survey.breakline(curb);

        assertThat(survey.built().problems()).isEmpty();
        assertThat(Survey.height(survey.ground(), 25, 25)).isEqualTo(100);
        assertThat(Survey.height(survey.ground(), -35, -35)).isEqualTo(100);
    }

    @Test
    void aDenseLineInASparseSurveyLeavesTheRestAsItIs() {
        Survey survey = new Survey().grid(40, 10, (x, y) -> 100);
        for (double x = -40; x <= 40; x += 0.5) {
            survey.spot(x, -38.2, 100);
        }

        assertThat(survey.ground().elevationAt(new Coordinate(5, 25))).isPresent();
        assertThat(survey.built().problems()).isEmpty();
    }

    @Test
    void proposedGroundLiesOverExistingGroundWhereItIs() {
        GroundSurface existing = new Survey().grid(20, 5, (x, y) -> 100).ground();
        GroundSurface proposed =
                new Survey().grid(5, 5, (x, y) -> 101 + 0.01 * x).ground();
        PatchedGround both = new PatchedGround(proposed, existing);

        assertThat(Survey.height(both, 2, 1)).isCloseTo(101.02, within(1e-9));
        assertThat(Survey.height(both, 7, 1)).isEqualTo(100);
        assertThat(both.elevationAt(new Coordinate(21, 0))).isEmpty();
        assertThat(both.gradeAt(new Coordinate(2, 1)).orElseThrow().slope().ratio())
                .isCloseTo(0.01, within(1e-9));
        assertThat(both.extent().equals(existing.extent())).isTrue();

        Lattice lattice = new Lattice(-20, -20, 2.5, 17, 17);
        double[] metres = new double[lattice.size()];
        Arrays.fill(metres, Double.NaN);
        both.addHeights(lattice, metres);
        for (int node = 0; node < lattice.size(); node++) {
            Coordinate place = lattice.place(node);
            assertThat(metres[node]).isCloseTo(Survey.height(both, place.x, place.y), within(1e-9));
        }
    }

    @Test
    void theBreaksOfBothSurfacesCount() {
        GroundSurface existing = new Survey().grid(20, 20, (x, y) -> 100).ground();
        GroundSurface proposed = new Survey().grid(5, 5, (x, y) -> 101).ground();
        LineString eastward = new GeometryFactory()
                .createLineString(new Coordinate[] {new Coordinate(-19, 0), new Coordinate(19, 0)});

        assertThat(new PatchedGround(proposed, existing).breaksAlong(eastward))
                .containsAll(existing.breaksAlong(eastward))
                .containsAll(proposed.breaksAlong(eastward));
    }

    private static Survey triangle(double a, double b, double c) {
        return new Survey()
                .grid(20, 5, (x, y) -> 100)
                .polygon(
                        new Coordinate(0, 0, a),
                        new Coordinate(8, 0, b),
                        new Coordinate(0, 8, c),
                        new Coordinate(0, 0, a));
    }

    @Test
    void aTriangleIsAPieceOfGroundAsItIsDrawnAndLiesOverTheRest() {
        GroundSurface ground = triangle(103, 101, 102).ground();

        assertThat(Survey.height(ground, 2, 2)).isCloseTo(103 - 0.25 * 2 - 0.125 * 2, within(1e-9));
        assertThat(Survey.height(ground, 4, 4)).isCloseTo(101.5, within(1e-9));
        assertThat(Survey.height(ground, 4.1, 4.1)).isEqualTo(100);
        assertThat(Survey.height(ground, -0.1, 2)).isEqualTo(100);
    }

    @Test
    void trianglesAloneAreGround() {
        Survey alone = new Survey()
                .polygon(
                        new Coordinate(0, 0, 5),
                        new Coordinate(8, 0, 5),
                        new Coordinate(0, 8, 6),
                        new Coordinate(0, 0, 5));

        assertThat(Survey.height(alone.ground(), 0, 4)).isCloseTo(5.5, within(1e-9));
        assertThat(alone.ground().elevationAt(new Coordinate(8, 8))).isEmpty();
    }

    @Test
    void aTriangleWithoutHeightsIsReportedAndLeftOut() {
        Survey survey = triangle(103, Double.NaN, 102);

        assertThat(Survey.height(survey.ground(), 2, 2)).isEqualTo(100);
        assertThat(survey.built().problems())
                .extracting(Fault::says)
                .containsExactly("has no elevation and is left out of the ground; give it one");
    }

    @Test
    void ofAPolygonWithMoreCornersThePointsCount() {
        Survey square = new Survey()
                .polygon(
                        new Coordinate(0, 0, 5),
                        new Coordinate(8, 0, 5),
                        new Coordinate(8, 8, 6),
                        new Coordinate(0, 8, 6),
                        new Coordinate(0, 0, 5));

        assertThat(Survey.height(square.ground(), 4, 4)).isCloseTo(5.5, within(1e-9));
    }

    @Test
    void moreLinesThanCanBeKeptAreReported() {
        Survey survey = new Survey();
        for (int i = 0; i < 8200; i++) {
            double x = i % 100;
            double y = Math.floorDiv(i, 100);
            survey.breakline(new Coordinate(x, y, 5), new Coordinate(x + 0.4, y + 0.3, 5));
        }
        GroundBuilder.Result built = survey.built();

        assertThat(built.ground()).isPresent();
        assertThat(built.problems())
                .extracting(Fault::says)
                .singleElement()
                .asString()
                .contains("of the 10 shortest only the points were used");
    }
}
