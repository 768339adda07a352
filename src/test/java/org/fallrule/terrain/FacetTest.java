package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** A triangle of 3, 4 and 5 m, given both ways round. */
class FacetTest {
    private static final Coordinate CORNER = new Coordinate(10, 20, 5);
    private static final Coordinate EAST = new Coordinate(13, 20, 5.3);
    private static final Coordinate NORTH = new Coordinate(10, 24, 5.8);
    private static final Facet LEFT = new Facet(CORNER, EAST, NORTH);
    private static final Facet RIGHT = new Facet(CORNER, NORTH, EAST);

    @Test
    void itsLeastWidthIsTheHeightOverItsLongestEdge() {
        assertThat(LEFT.width()).isCloseTo(2.4, within(1e-12));
        assertThat(RIGHT.width()).isCloseTo(2.4, within(1e-12));
        assertThat(new Facet(CORNER, CORNER, CORNER).width()).isZero();
    }

    @Test
    void beyondIsTheDistanceFromTheEdgeThatAPlaceIsFarthestBeyond() {
        for (Facet facet : new Facet[] {LEFT, RIGHT}) {
            assertThat(facet.beyond(new Coordinate(11, 18.5))).isCloseTo(1.5, within(1e-12));
            assertThat(facet.beyond(new Coordinate(9.25, 22))).isCloseTo(0.75, within(1e-12));
            assertThat(facet.beyond(new Coordinate(11, 21))).isCloseTo(-1, within(1e-12));
        }
    }

    @Test
    void itRisesAsItsCornersDo() {
        assertThat(LEFT.heightAt(new Coordinate(11, 21))).isCloseTo(5 + 0.1 + 0.2, within(1e-12));
        assertThat(RIGHT.grade().slope().ratio()).isCloseTo(Math.hypot(0.1, 0.2), within(1e-12));
    }
}
