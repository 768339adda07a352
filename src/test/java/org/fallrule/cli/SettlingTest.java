package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Iterator;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Coming to rest: looks are numbers here, and a pause is counted. */
class SettlingTest {
    private final AtomicInteger pauses = new AtomicInteger();

    private int settled(int first, int... looks) {
        Iterator<Integer> next = IntStream.of(looks).iterator();
        Supplier<Integer> look = next::next;
        return Settling.of(first, look, pauses::incrementAndGet);
    }

    @Test
    void whatStaysAsItIsHasSettledAtOnce() {
        assertThat(settled(1, 1)).isEqualTo(1);
        assertThat(pauses).hasValue(1);
    }

    @Test
    void severalQuickWritesAreOneChange() {
        assertThat(settled(1, 2, 3, 4, 4)).isEqualTo(4);
        assertThat(pauses).hasValue(4);
    }

    @Test
    void whatNeverRestsIsTakenAsItIsAtLast() {
        assertThat(settled(0, IntStream.rangeClosed(1, 1000).toArray())).isLessThan(100);
    }
}
