package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class EdgeTest {

    @Test
    void anEdgeIsTheSameWhicheverWayItIsGiven() {
        Coordinate west = new Coordinate(1, 9, 5);
        Coordinate east = new Coordinate(2, 3, 6);

        assertThat(new Edge(west, east)).isEqualTo(new Edge(east, west));
        assertThat(new Edge(east, west).a()).isSameAs(west);
        assertThat(new Edge(east, west)).isNotEqualTo(new Edge(east, new Coordinate(1, 8)));
    }

    @Test
    void itsMiddleLiesHalfwayAtTheHeightGiven() {
        Coordinate middle = new Edge(new Coordinate(1, 9), new Coordinate(2, 3)).middle(7);

        assertThat(middle).isEqualTo(new Coordinate(1.5, 6));
        assertThat(middle.getZ()).isEqualTo(7);
    }
}
