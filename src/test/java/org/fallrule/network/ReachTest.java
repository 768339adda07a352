package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReachTest {

    @Test
    void reachesThatTouchOrOverlapAreOne() {
        assertThat(Reach.joined(List.of(new Reach(1, 3), new Reach(2, 5), new Reach(5, 6), new Reach(6.0009, 7))))
                .containsExactly(new Reach(1, 7));
    }

    @Test
    void aReachInsideAnotherDoesNotShortenIt() {
        assertThat(Reach.joined(List.of(new Reach(1, 9), new Reach(2, 3)))).containsExactly(new Reach(1, 9));
    }

    @Test
    void reachesApartStayApart() {
        assertThat(Reach.joined(List.of(new Reach(1, 3), new Reach(3.0011, 5))))
                .containsExactly(new Reach(1, 3), new Reach(3.0011, 5));
        assertThat(Reach.joined(List.of())).isEmpty();
    }

    @Test
    void aReachIsWrittenAsItsStations() {
        Reach reach = new Reach(41.7 * 0.3048, 60 * 0.3048);
        assertThat(reach.spoken(false)).isEqualTo("0+41.7 to 0+60.0");
        assertThat(reach.spoken(true)).isEqualTo("12.71 m to 18.29 m");
        assertThat(new Reach(1.5, 4).length().metres()).isCloseTo(2.5, within(1e-12));
    }
}
