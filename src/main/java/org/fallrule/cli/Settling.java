package org.fallrule.cli;

import java.util.function.Supplier;

/** Waits until something has come to rest: programs write a layer as several files, one after the other. */
final class Settling {
    /** Looks after which a thing that never rests is taken as it is. */
    private static final int MOST_LOOKS = 40;

    private Settling() {}

    /**
     * Looks again and again until two looks in a row see the same.
     *
     * @param first what was seen first
     * @param look looks again
     * @param pause waits between looks
     */
    static <T> T of(T first, Supplier<T> look, Runnable pause) {
        T seen = first;
        for (int looks = 0; looks < MOST_LOOKS; looks++) {
            pause.run();
            T next = look.get();
            if (next.equals(seen)) {
                return next;
            }
            seen = next;
        }
        return seen;
    }
}
