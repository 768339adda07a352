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
 * @param overland how the time over the ground is reckoned
 */
public record Storm(
        Optional<Stated<ReturnPeriod>> returnPeriod,
        Optional<Stated<Time>> shortestDuration,
        SortedMap<ReturnPeriod, Stated<Rainfall>> rainfall,
        Optional<OverlandTime> overland) {

    public static final Storm UNSAID = new Storm(Optional.empty(), Optional.empty(), new TreeMap<>());

    public Storm {
        rainfall = Collections.unmodifiableSortedMap(new TreeMap<>(rainfall));
    }

    /** A storm that says nothing of the time over the ground. */
    public Storm(
            Optional<Stated<ReturnPeriod>> returnPeriod,
            Optional<Stated<Time>> shortestDuration,
            SortedMap<ReturnPeriod, Stated<Rainfall>> rainfall) {
        this(returnPeriod, shortestDuration, rainfall, Optional.empty());
    }

    /**
     * This storm with what is said later laid over it, key by key. Rainfall counts as one key: tables of two places are not
     * mixed.
     */
    public Storm overlaid(Storm over) {
        return new Storm(
                over.returnPeriod.or(() -> returnPeriod),
                over.shortestDuration.or(() -> shortestDuration),
                over.rainfall.isEmpty() ? rainfall : over.rainfall,
                over.overland.or(() -> overland));
    }
}
