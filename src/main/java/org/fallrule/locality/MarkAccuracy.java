package org.fallrule.locality;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Written;

/**
 * How well a utility's place is taken as known by its quality level after ASCE 38-22. The standard itself gives no figure for
 * the levels B, C and D.
 *
 * @param byQuality what is known at each level, {@code A} to {@code D}; empty where no book says anything
 */
public record MarkAccuracy(Map<String, Known> byQuality) {

    public static final MarkAccuracy UNSAID = new MarkAccuracy(Map.of());

    /** The level of a mark of which the plan gives none: paint on the grass. */
    private static final String LEAST = "D";

    public MarkAccuracy {
        byQuality = Collections.unmodifiableMap(new LinkedHashMap<>(byQuality));
    }

    /**
     * What is known at one level.
     *
     * @param horizontal half-width of the interval in plan that the true position lies in; empty where no figure is given
     * @param vertical the same for heights; empty where a depth is not to be relied on at all
     * @param basis what the figures rest on, in a few words
     * @param statedAt the line of the rule book that says so
     */
    public record Known(Optional<Written> horizontal, Optional<Written> vertical, String basis, Place statedAt) {}

    /** What is known at a level; a mark without one counts as D. Empty where no book says anything of it. */
    public Optional<Known> of(Optional<String> quality) {
        return Optional.ofNullable(byQuality.get(level(quality)));
    }

    /** The level that a mark counts as. */
    public static String level(Optional<String> quality) {
        return quality.orElse(LEAST);
    }

    /** This table with a later book's laid over it, level by level. */
    public MarkAccuracy overlaid(MarkAccuracy over) {
        Map<String, Known> both = new LinkedHashMap<>(byQuality);
        both.putAll(over.byQuality);
        return new MarkAccuracy(both);
    }
}
