package org.fallrule.locality;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Length;

/**
 * How deep utilities of each kind usually lie: what to expect of one whose depth is not known. Expected is not measured.
 *
 * @param byKind the bands of each kind; empty where no book says anything
 */
public record ExpectedCover(Map<String, Kind> byKind) {

    public static final ExpectedCover UNSAID = new ExpectedCover(Map.of());

    public ExpectedCover {
        byKind = Collections.unmodifiableMap(new LinkedHashMap<>(byKind));
    }

    /**
     * Ground to the top of the utility.
     *
     * @param from the least cover to expect
     * @param to the greatest
     */
    public record Band(Length from, Length to) {}

    /**
     * What is expected of one kind.
     *
     * @param usual its band
     * @param under its bands under some surfaces, {@code drive}, {@code street}, {@code walk}
     * @param basis what they rest on, in a few words
     * @param statedAt the line of the rule book that says so
     */
    public record Kind(Band usual, Map<String, Band> under, String basis, Place statedAt) {
        public Kind {
            under = Map.copyOf(under);
        }

        /** The band under a surface. */
        public Band under(Optional<String> surface) {
            return surface.flatMap(word -> Optional.ofNullable(under.get(word))).orElse(usual);
        }
    }

    public Optional<Kind> of(Optional<String> kind) {
        return kind.flatMap(word -> Optional.ofNullable(byKind.get(word)));
    }

    /** This table with a later book's laid over it, kind by kind. */
    public ExpectedCover overlaid(ExpectedCover over) {
        Map<String, Kind> both = new LinkedHashMap<>(byKind);
        both.putAll(over.byKind);
        return new ExpectedCover(both);
    }
}
