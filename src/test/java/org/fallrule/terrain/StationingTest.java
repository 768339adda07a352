package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class StationingTest {
    /** 10 m east, then 5 m north. */
    private static final Stationing BENT =
            new Stationing(new GeometryFactory().createLineString(places(0, 0, 10, 0, 10, 5)));

    private static Coordinate[] places(double... numbers) {
        Coordinate[] places = new Coordinate[numbers.length / 2];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(numbers[2 * i], numbers[2 * i + 1]);
        }
        return places;
    }

    @Test
    void verticesHaveTheirDistanceFromTheStart() {
        assertThat(BENT.ofVertices()).containsExactly(0.0, 10.0, 15.0);
    }

    @Test
    void eachMeetingWithAnotherLineHasAStation() {
        assertThat(BENT.where(places(4, -1, 4, 1, 12, 3))).containsExactlyInAnyOrder(4.0, 12.5);
        assertThat(BENT.where(places(4, 1, 4, 9))).isEmpty();
    }

    @Test
    void ofASharedStretchBothEndsAreThere() {
        assertThat(BENT.where(places(3, 0, 7, 0))).containsExactlyInAnyOrder(3.0, 7.0);
    }
}
