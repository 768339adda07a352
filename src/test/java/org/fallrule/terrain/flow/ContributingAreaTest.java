package org.fallrule.terrain.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.terrain.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

class ContributingAreaTest {
    private static final Length ONE_CELL = new Length(0);

    private static FilledGround ground(Shape shape, double spacing) {
        return FilledGround.of(FilledGroundTest.grid(shape, spacing));
    }

    private static double area(ContributingArea found) {
        return found.area().squareMetres();
    }

    /**
     * A plane that falls along the grid: the strip of cells above, 1 m wide and from y = 0 to the rim at 20, its own cell
     * counted.
     */
    @Test
    void onAPlaneACellGetsTheStripAboveIt() {
        FilledGround ground = ground(Shape.square(20, (x, y) -> 0.02 * y), 1);

        ContributingArea found = ContributingArea.of(ground, new Coordinate(3, 0), ONE_CELL);
        assertThat(area(found)).isCloseTo(20, within(1e-9));
        assertThat(found.isCut()).isTrue();
    }

    /**
     * A plane falling any way: a circle of radius R gets the strip 2 R wide up to the rim. Bound: half a cell on both sides
     * and at the end; beside that, water that is shared out spreads sideways by about the root of length times cell, the
     * same amount in as out.
     */
    @ParameterizedTest(name = "falling {0} degrees from north")
    @ValueSource(doubles = {0, 15, 30, 45, 75, 90, 160})
    void onAPlaneACircleGetsTheStripAboveIt(double degrees) {
        double dx = Math.sin(Math.toRadians(degrees));
        double dy = Math.cos(Math.toRadians(degrees));
        // A disc of ground of 40 m, so that the strip is as long whichever way it falls.
        FilledGround ground = ground(
                Shape.square(41, (x, y) -> Math.hypot(x, y) > 40 ? Double.NaN : 50 - 0.02 * (dx * x + dy * y)), 0.5);
        double radius = 8;

        double found = area(ContributingArea.of(ground, new Coordinate(0, 0), new Length(radius)));

        // Half the circle lies above its middle and is in the strip; the other half drains to it as well.
        double strip = 2 * (radius * Math.sqrt(1600 - 64) / 2 + 800 * Math.asin(radius / 40)) + Math.PI * 64 / 2;
        assertThat(found).isCloseTo(strip, within(0.5 * (2 * 40 + 2 * radius)));
    }

    /**
     * z = 0.1 |x| + 0.02 y drains to x = 0, slantwise: what lies above y0 + 0.2 |x|. Bound: a cell's width along the
     * slanting edges and the rim.
     */
    @Test
    void aValleyGathersBothItsSides() {
        double half = 30;
        FilledGround ground = ground(Shape.square(half, (x, y) -> 0.1 * Math.abs(x) + 0.02 * y), 0.5);

        double found = area(ContributingArea.of(ground, new Coordinate(0, -10), ONE_CELL));

        double geometry = 2 * half * (half + 10) - 0.2 * half * half;
        assertThat(found).isCloseTo(geometry, within(0.5 * (2 * half * Math.hypot(1, 0.2) + 2 * half + 2 * 40)));
    }

    @Test
    void inletsInOneValleyDoNotCountEachOthersArea() {
        FilledGround ground = ground(Shape.square(30, (x, y) -> 0.1 * Math.abs(x) + 0.02 * y), 0.5);
        Coordinate upper = new Coordinate(0, 5);
        Coordinate lower = new Coordinate(0, -10);

        List<ContributingArea> both = ContributingArea.of(ground, List.of(lower, upper), ONE_CELL);
        double alone = area(ContributingArea.of(ground, lower, ONE_CELL));

        assertThat(area(both.get(0)) + area(both.get(1))).isCloseTo(alone, within(1e-6));
        assertThat(area(both.get(1))).isCloseTo(area(ContributingArea.of(ground, upper, ONE_CELL)), within(1e-6));
    }

    @Test
    void anInletAtTheBottomOfABowlDrainsAllOfIt() {
        FilledGround ground = ground(Shape.square(20, (x, y) -> 0.01 * (x * x + y * y)), 1);

        assertThat(area(ContributingArea.of(ground, new Coordinate(0.2, -0.3), ONE_CELL)))
                .isCloseTo(39 * 39, within(1e-6));
    }

    @Test
    void anInletBesideTheBottomOfABowlGetsWhatRisesToIt() {
        FilledGround ground = ground(Shape.square(20, (x, y) -> 0.01 * (x * x + y * y)), 1);

        assertThat(area(ContributingArea.of(ground, new Coordinate(3, 0), ONE_CELL)))
                .isCloseTo(39 * 39, within(1e-6));
    }

    /** On a cone a place gets the sector up to the top, which is not cut by the rim. */
    @Test
    void onAConeNothingComesFromBeyondTheGrid() {
        FilledGround ground = ground(Shape.square(30, (x, y) -> 10 - 0.1 * Math.hypot(x, y)), 1);

        ContributingArea found = ContributingArea.of(ground, new Coordinate(15, 0), new Length(3));
        assertThat(found.isCut()).isFalse();
        // A sector of half angle asin(3 / 15), up to the circle's two tangent points, and the circle's far side.
        double geometry = 3 * Math.sqrt(225 - 9) + 9 * (Math.PI / 2 + Math.asin(0.2));
        assertThat(area(found)).isCloseTo(geometry, within(0.5 * (2 * 15 + 2 * Math.PI * 3)));
    }

    /** On a plane of 2 % from the rim at y = 20 down to y = 0; along the diagonal from the corner at (20, 20). */
    @Test
    void theFarthestWaterIsThatOfTheLongestWayFromNodeToNode() {
        FilledGround south = ground(Shape.square(20, (x, y) -> 0.02 * y), 1);
        FilledGround southWest = ground(Shape.square(20, (x, y) -> 0.02 * (x + y)), 1);

        ContributingArea.FlowWay straight =
                ContributingArea.of(south, new Coordinate(3, 0), ONE_CELL).farthest();
        ContributingArea.FlowWay slanting =
                ContributingArea.of(southWest, new Coordinate(0, 0), ONE_CELL).farthest();

        assertThat(straight.length().metres()).isCloseTo(20, within(1e-9));
        assertThat(straight.fall().metres()).isCloseTo(0.4, within(1e-9));
        assertThat(slanting.length().metres()).isCloseTo(20 * Math.sqrt(2), within(1e-9));
        assertThat(slanting.fall().metres()).isCloseTo(0.8, within(1e-9));
    }

    @Test
    void waterThatComesFromNowhereHasNoWay() {
        FilledGround cone = ground(Shape.square(20, (x, y) -> 10 - 0.1 * Math.hypot(x, y)), 1);
        ContributingArea.FlowWay top =
                ContributingArea.of(cone, new Coordinate(0, 0), ONE_CELL).farthest();

        assertThat(top.length().metres()).isZero();
        assertThat(top.fall().metres()).isZero();
    }

    /** The strip of cells above the place, 1 m wide: roof beyond y = 15, lawn below it, and a pool that keeps its rain. */
    @Test
    void theAreaIsToldByWhatLiesThere() {
        FilledGround grid = ground(Shape.square(20, (x, y) -> 0.02 * y), 1);
        ContributingArea found = ContributingArea.of(
                        grid,
                        List.of(new Coordinate(3, 0)),
                        ONE_CELL,
                        place -> place.y > 15.5
                                ? Optional.of("roof")
                                : place.y > 11.5 ? Optional.empty() : Optional.of("lawn"))
                .get(0);

        assertThat(found.byLabel().entrySet())
                .extracting(
                        each -> each.getKey() + " " + Math.round(each.getValue().squareMetres()))
                .containsExactlyInAnyOrder("roof 4", "lawn 12");
        assertThat(area(found)).isCloseTo(16, within(1e-9));
    }

    @Test
    void ofTwoPlacesWithinReachTheNearerTakesTheWater() {
        FilledGround grid = ground(Shape.square(20, (x, y) -> 0.02 * y), 1);
        List<ContributingArea> both =
                ContributingArea.of(grid, List.of(new Coordinate(-2, 0), new Coordinate(2.5, 0)), new Length(4));

        // Columns from -6 to 0 are nearer to the first, from 1 to 6 to the second, each from the rim down through its
        // circle.
        assertThat(area(both.get(0))).isCloseTo(7 * 20 + 18, within(1e-9));
        assertThat(area(both.get(1))).isCloseTo(6 * 20 + 16, within(1e-9));
    }

    @Test
    void nothingDrainsToAPlaceWithoutGround() {
        FilledGround ground = ground(Shape.square(20, (x, y) -> 0.02 * y), 1);

        assertThat(area(ContributingArea.of(ground, new Coordinate(300, 0), new Length(2))))
                .isZero();
    }
}
