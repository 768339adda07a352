package org.fallrule.terrain.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.terrain.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class DownhillPathTest {

    private static DownhillPath path(Shape shape, double spacing, double x, double y) {
        return DownhillPath.from(new Coordinate(x, y), FilledGround.of(FilledGroundTest.grid(shape, spacing)))
                .orElseThrow();
    }

    private static Coordinate end(DownhillPath path) {
        return path.line().getCoordinateN(path.line().getNumPoints() - 1);
    }

    /** Exact on a plane, whichever way it falls: there is no liking for the grid's eight directions. */
    @ParameterizedTest(name = "falling {0} degrees from east")
    @ValueSource(doubles = {0, 10, 22.5, 30, 45, 63, 137, 200, 291})
    void onAPlaneItGoesStraightDown(double degrees) {
        double dx = Math.cos(Math.toRadians(degrees));
        double dy = Math.sin(Math.toRadians(degrees));
        DownhillPath path = path(Shape.square(20, (x, y) -> 50 - 0.02 * (dx * x + dy * y)), 1, 0.3, -0.4);

        for (Coordinate place : path.line().getCoordinates()) {
            assertThat(Distance.pointToLinePerpendicular(
                            place, new Coordinate(0.3, -0.4), new Coordinate(0.3 + dx, -0.4 + dy)))
                    .isCloseTo(0, within(1e-6));
        }
        assertThat(path.end()).isEqualTo(DownhillPath.End.EDGE);
        assertThat(path.line().getLength()).isGreaterThan(17);
    }

    /**
     * On a cone the way is the radius. Central differences over a cell turn from it by about (h / r)^2 / 24: within 0.1 m
     * over 40 m.
     */
    @Test
    void onAConeItRunsAlongTheRadius() {
        DownhillPath path = path(Shape.square(50, (x, y) -> 100 - 0.1 * Math.hypot(x, y)), 1, 4, 1.7);

        Coordinate end = end(path);
        assertThat(Math.atan2(end.y, end.x)).isCloseTo(Math.atan2(1.7, 4), within(0.01));
    }

    @Test
    void inAValleyItStaysAtTheBottom() {
        DownhillPath path = path(Shape.square(30, (x, y) -> 0.1 * Math.abs(x) + 0.02 * y), 1, 0.2, 25);

        for (Coordinate place : path.line().getCoordinates()) {
            assertThat(place.x).isCloseTo(0, within(1.0));
        }
        assertThat(end(path).y).isLessThan(-28);
    }

    @Test
    void throughAPondItGoesOutByTheSpill() {
        Shape pit = Shape.square(30, (x, y) -> 0.05 * x - 2 * Math.exp(-(x * x + y * y) / 30));
        FilledGround filled = FilledGround.of(FilledGroundTest.grid(pit, 1));
        Pond pond = filled.pondAt(new Coordinate(0, 0)).orElseThrow();
        DownhillPath path = DownhillPath.from(new Coordinate(20, 0.7), filled).orElseThrow();

        assertThat(path.line().distance(new GeometryFactory().createPoint(pond.spill())))
                .isCloseTo(0, within(1e-6));
        assertThat(path.end()).isEqualTo(DownhillPath.End.EDGE);
        assertThat(end(path).x).isLessThan(-28);
    }

    @Test
    void itEndsWhereTheGroundIsNotKnown() {
        Shape shape = Shape.square(20, (x, y) -> x < -5 && Math.abs(y) < 8 && x > -15 ? Double.NaN : 0.1 * x);

        assertThat(path(shape, 1, 10, 0).end()).isEqualTo(DownhillPath.End.HOLE);
        assertThat(DownhillPath.from(new Coordinate(-10, 0), FilledGround.of(FilledGroundTest.grid(shape, 1))))
                .isEmpty();
    }

    @Test
    void onLevelGroundItStillLeaves() {
        assertThat(path(Shape.square(10, (x, y) -> 5), 1, 0.3, 0.2).end()).isEqualTo(DownhillPath.End.EDGE);
    }

    /** A difference is taken half a cell to either side, so the last place is the first that has no whole cell to the edge. */
    @ParameterizedTest(name = "falling {0} eastward, {1} northward")
    @CsvSource({"1, 0", "-1, 0", "0, 1", "0, -1"})
    void itGoesOnAsFarAsItsFallCanBeTold(int east, int north) {
        DownhillPath path = path(Shape.square(20, (x, y) -> 64 - 0.25 * (east * x + north * y)), 1, 0, 0);

        assertThat(end(path)).isEqualTo(new Coordinate(19.5 * east, 19.5 * north));
        assertThat(path.line().getLength()).isEqualTo(19.5);
        assertThat(end(path(Shape.square(20, (x, y) -> 64 - 0.25 * (east * x + north * y)), 0.5, 0, 0)))
                .isEqualTo(new Coordinate(19.75 * east, 19.75 * north));
    }

    @Test
    void itStartsAndEndsWhereItIsOnTheEdge() {
        DownhillPath path = path(Shape.square(20, (x, y) -> 64 - 0.25 * x), 1, 19.75, 3);

        assertThat(path.line().getNumPoints()).isEqualTo(2);
        assertThat(path.line().getLength()).isZero();
        assertThat(path.end()).isEqualTo(DownhillPath.End.EDGE);
    }

    /** From between nodes to the first of the lowest corners of its cell, and from there from node to node. */
    @Test
    void onLevelGroundItKeepsToTheNodes() {
        Coordinate[] way =
                path(Shape.square(10, (x, y) -> 5), 1, 3.3, -2.6).line().getCoordinates();

        assertThat(way[1]).isEqualTo(new Coordinate(3, -3));
        for (int i = 2; i < way.length; i++) {
            assertThat(Math.max(Math.abs(way[i].x - way[i - 1].x), Math.abs(way[i].y - way[i - 1].y)))
                    .isEqualTo(1);
        }
    }

    /** A gully a cell wide between walls: of the four corners around a place only the one in the gully lies low. */
    @ParameterizedTest(name = "from {0}, {1}")
    @CsvSource({"0.4, 0.4", "-0.4, 0.4", "0.4, 0.7", "-0.4, 0.7"})
    void fromAPlaceBesideAGullyItComesIntoIt(double x, double y) {
        DownhillPath path = path(Shape.square(10, (a, b) -> (a == 0 ? 0 : 3) + 0.001 * b), 1, x, y);

        assertThat(end(path).x).isCloseTo(0, within(0.5));
        assertThat(end(path).y).isLessThan(-8);
        assertThat(path.line().getLength()).isLessThan(13);
    }

    @Property(tries = 60)
    void itNeverClimbs(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -14, max = 14) double x,
            @ForAll @DoubleRange(min = -14, max = 14) double y) {
        FilledGround filled = FilledGround.of(FilledGroundTest.grid(FilledGroundTest.hills(seed), 1));
        Coordinate[] way = DownhillPath.from(new Coordinate(x, y), filled)
                .orElseThrow()
                .line()
                .getCoordinates();

        for (int i = 1; i < way.length; i++) {
            assertThat(way[i].getZ()).isLessThanOrEqualTo(way[i - 1].getZ());
            assertThat(way[i].getZ())
                    .isCloseTo(filled.levelAt(way[i]).orElseThrow().metres(), within(1e-6));
        }
    }
}
