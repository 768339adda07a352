package org.fallrule.terrain.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fallrule.terrain.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * On a plane the way down lies in one of eight triangles, and the water is shared by the angle from the straight neighbour to
 * the diagonal one (D. G. Tarboton, Water Resources Research 33(2), 1997, equations 1 to 5 and the sharing below them).
 */
class FacetsTest {
    private static final int COLUMNS = 5;
    private static final int MIDDLE = 2 * COLUMNS + 2;

    private static Facets looked(Shape shape) {
        GroundGrid grid = FilledGroundTest.grid(shape, 1);
        Facets facets = new Facets(grid, new Flood(grid, node -> false));
        assertThat(facets.look(MIDDLE)).isTrue();
        return facets;
    }

    private static int beside(int east, int north) {
        return MIDDLE + north * COLUMNS + east;
    }

    @ParameterizedTest(name = "falling {0} degrees from east toward north")
    @CsvSource({
        "10, 1, 0, 1, 1", "30, 1, 0, 1, 1", "60, 0, 1, 1, 1", "80, 0, 1, 1, 1",
        "100, 0, 1, -1, 1", "130, 0, 1, -1, 1", "140, -1, 0, -1, 1", "170, -1, 0, -1, 1",
        "190, -1, 0, -1, -1", "220, -1, 0, -1, -1", "230, 0, -1, -1, -1", "260, 0, -1, -1, -1",
        "280, 0, -1, 1, -1", "310, 0, -1, 1, -1", "320, 1, 0, 1, -1", "350, 1, 0, 1, -1"
    })
    void theSteepestTriangleHoldsTheWayDown(
            double degrees, int straightEast, int straightNorth, int diagonalEast, int diagonalNorth) {
        double east = Math.cos(Math.toRadians(degrees));
        double north = Math.sin(Math.toRadians(degrees));
        Facets facets = looked(Shape.square(2, (x, y) -> 9 - 0.1 * (east * x + north * y)));

        assertThat(facets.straight()).isEqualTo(beside(straightEast, straightNorth));
        assertThat(facets.diagonal()).isEqualTo(beside(diagonalEast, diagonalNorth));
        double fromStraight = Math.abs(degrees % 90 > 45 ? 90 - degrees % 90 : degrees % 90);
        assertThat(facets.diagonalShare()).isCloseTo(fromStraight / 45, within(1e-9));
    }

    @ParameterizedTest(name = "falling {0} eastward, {1} northward")
    @CsvSource({"1, 0", "0, 1", "-1, 0", "0, -1"})
    void allGoesToTheStraightNeighbourThatTheWayLeadsTo(int east, int north) {
        Facets facets = looked(Shape.square(2, (x, y) -> 9 - 0.25 * (east * x + north * y)));

        assertThat(facets.straight()).isEqualTo(beside(east, north));
        assertThat(facets.diagonalShare()).isZero();
    }

    @ParameterizedTest(name = "falling {0} eastward, {1} northward")
    @CsvSource({"1, 1", "-1, 1", "-1, -1", "1, -1"})
    void allGoesToTheDiagonalNeighbourThatTheWayLeadsTo(int east, int north) {
        Facets facets = looked(Shape.square(2, (x, y) -> 9 - 0.25 * (east * x + north * y)));

        assertThat(facets.diagonal()).isEqualTo(beside(east, north));
        assertThat(facets.diagonalShare()).isEqualTo(1);
    }

    /** Two gullies leave the middle; the one along the diagonal falls by its drop over the longer way. */
    @ParameterizedTest(name = "a drop of {0} m along the diagonal, of 0.1 m westward")
    @CsvSource({"0.13, false", "0.15, true"})
    void theWayToADiagonalNeighbourIsLongerThanToAStraightOne(double drop, boolean takesTheDiagonal) {
        Facets facets = looked(
                Shape.square(2, (x, y) -> x > 0 && x == y ? 9 - drop * x : x < 0 && y == 0 ? 9 + 0.1 * x : 9.01));

        assertThat(facets.diagonal() == beside(1, 1)).isEqualTo(takesTheDiagonal);
        assertThat(facets.straight() == beside(-1, 0)).isNotEqualTo(takesTheDiagonal);
    }

    @Test
    void whereNoneFallsThereIsNoWay() {
        GroundGrid grid = FilledGroundTest.grid(Shape.square(2, (x, y) -> 9), 1);

        assertThat(new Facets(grid, new Flood(grid, node -> false)).look(MIDDLE))
                .isFalse();
    }
}
