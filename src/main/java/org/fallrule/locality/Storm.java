package org.fallrule.locality;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fallrule.measure.Time;

/**
 * The rain that a place designs for.
 *
 * @param returnPeriod how rare a storm a drain must carry
 * @param shortestDuration the shortest duration that counts, however fast the water comes
 * @param rainfall how hard it rains, by return period
 */
public record Storm(
        Optional<Stated<ReturnPeriod>> returnPeriod,
        Optional<Stated<Time>> shortestDuration,
        SortedMap<ReturnPeriod, Stated<Rainfall>> rainfall) {

    public static final Storm UNSAID = new Storm(Optional.empty(), Optional.empty(), new TreeMap<>());

    public Storm {
        rainfall = Collections.unmodifiableSortedMap(new TreeMap<>(rainfall));
    }

    /**
     * This storm with what is said later laid over it, key by key. Rainfall counts as one key: tables of two places are not
     * mixed.
     */
    public Storm overlaid(Storm over) {
        return new Storm(
                over.returnPeriod.or(() -> returnPeriod),
                over.shortestDuration.or(() -> shortestDuration),
                over.rainfall.isEmpty() ? rainfall : over.rainfall);
    }
}
