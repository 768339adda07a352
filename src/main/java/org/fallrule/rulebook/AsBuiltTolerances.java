package org.fallrule.rulebook;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Written;

/**
 * How far the work as built may lie from its design.
 *
 * @param byMeasure the tolerance of each measure; what no book speaks of is not in here
 */
public record AsBuiltTolerances(Map<Measure, Tolerance> byMeasure) {

    /** No book says anything. */
    public static final AsBuiltTolerances UNSAID = new AsBuiltTolerances(Map.of());

    public AsBuiltTolerances {
        byMeasure = byMeasure.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(byMeasure));
    }

    /** What is measured of the work as built. */
    public enum Measure {
        INVERT(Dimension.LENGTH, "Inverts as built stand where they were designed"),
        RIM(Dimension.LENGTH, "Rims as built stand where they were designed"),
        SLOPE(Dimension.SLOPE, "Pipes as built have the slope that was designed"),
        POSITION(Dimension.LENGTH, "Pipes and structures as built lie where they were designed");

        private final Dimension dimension;
        private final String title;

        Measure(Dimension dimension, String title) {
            this.dimension = dimension;
            this.title = title;
        }

        /** What the difference from the design measures. */
        public Dimension dimension() {
            return dimension;
        }

        /** What the tolerance asks, in a few words. */
        public String title() {
            return title;
        }

        /** The key in a rule book: {@code invert}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The name under which findings are listed: {@code as-built-invert}. */
        public String rule() {
            return "as-built-" + word();
        }

        static List<String> words() {
            return Arrays.stream(values()).map(Measure::word).toList();
        }
    }

    /**
     * A tolerance, either way from the design.
     *
     * @param within the greatest difference
     * @param weight what hangs on it
     * @param basis what it rests on
     * @param setBy the line that set it
     */
    public record Tolerance(Written within, Weight weight, Basis basis, Place setBy) {

        public Limit limit() {
            return new Limit(Bound.AT_MOST, within);
        }

        /** Whether this asks at least as much as another. */
        boolean atLeastAsTightAs(Tolerance other) {
            return weight.compareTo(other.weight) <= 0 && limit().atLeastAsTightAs(other.limit());
        }
    }

    public Optional<Tolerance> of(Measure measure) {
        return Optional.ofNullable(byMeasure.get(measure));
    }

    /** These tolerances with a later book's laid over them, measure by measure. */
    public AsBuiltTolerances overlaid(AsBuiltTolerances over) {
        Map<Measure, Tolerance> both = new EnumMap<>(Measure.class);
        both.putAll(byMeasure);
        both.putAll(over.byMeasure);
        return new AsBuiltTolerances(both);
    }

    /** Of each measure the tighter tolerance of two counties whose rules both apply; of two as tight the one that weighs more. */
    public AsBuiltTolerances tighter(AsBuiltTolerances other) {
        Map<Measure, Tolerance> both = new EnumMap<>(Measure.class);
        both.putAll(byMeasure);
        other.byMeasure.forEach((measure, theirs) -> both.merge(measure, theirs, AsBuiltTolerances::tighter));
        return new AsBuiltTolerances(both);
    }

    private static Tolerance tighter(Tolerance one, Tolerance other) {
        boolean keeps = one.atLeastAsTightAs(other) || !other.limit().atLeastAsTightAs(one.limit());
        return keeps ? one : other;
    }
}
