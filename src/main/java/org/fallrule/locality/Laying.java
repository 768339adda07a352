package org.fallrule.locality;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.measure.Length;

/**
 * How a line is laid that the plan does not give yet, and what it is worth to spare. The measures are those of a firm or a
 * county; the weights compare one line with another and are no prices.
 *
 * @param material the pipe's material, as the plan's attribute has it
 * @param joint how pieces are joined
 * @param sizes the nominal diameters to choose from, the least first
 * @param measures lengths by their meaning
 * @param weights what is worth sparing, in cubic yards of trench
 */
public record Laying(
        Optional<String> material,
        Optional<String> joint,
        List<Length> sizes,
        Map<Measure, Length> measures,
        Map<Weighed, Double> weights) {

    public static final Laying UNSAID = new Laying(Optional.empty(), Optional.empty(), List.of(), Map.of(), Map.of());

    public Laying {
        sizes = sizes.stream().sorted().toList();
        measures = measures.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(measures));
        weights = weights.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(weights));
    }

    /** Lengths that the laying of a line hangs on. */
    public enum Measure {
        /** Of one piece of pipe. */
        PIECE,
        /** From the pipe's outside to the trench's wall, on either side. */
        TRENCH_BESIDE,
        /** Stone under the pipe. */
        BEDDING,
        /** What a trench had better keep from a building. */
        FROM_BUILDING,
        /** From one place where the line may turn to the next. */
        GRID,
        /** How far apart the outfalls of two proposals stand. */
        APART;

        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is worth sparing. */
    public enum Weighed {
        TRENCH_PER_CUBIC_YARD,
        PIPE_PER_FOOT,
        EACH_FITTING,
        HAND_DIG_PER_FOOT,
        EACH_CROSSING,
        ROOT_ZONE_PER_FOOT,
        PAVING_PER_FOOT,
        BESIDE_BUILDING_PER_FOOT;

        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** This with what a later book says laid over it, key by key. */
    public Laying overlaid(Laying over) {
        Map<Measure, Length> both = new EnumMap<>(Measure.class);
        both.putAll(measures);
        both.putAll(over.measures);
        Map<Weighed, Double> worth = new EnumMap<>(Weighed.class);
        worth.putAll(weights);
        worth.putAll(over.weights);
        return new Laying(
                over.material.or(() -> material),
                over.joint.or(() -> joint),
                over.sizes.isEmpty() ? sizes : over.sizes,
                both,
                worth);
    }

    /** What no book says, by its key; empty when a line can be laid by this. */
    public List<String> lacking() {
        return Stream.of(
                        Stream.of("laying.material").filter(key -> material.isEmpty()),
                        Stream.of("laying.sizes").filter(key -> sizes.isEmpty()),
                        Arrays.stream(Measure.values())
                                .filter(each -> !measures.containsKey(each))
                                .map(each -> "laying." + each.key()),
                        Arrays.stream(Weighed.values())
                                .filter(each -> !weights.containsKey(each))
                                .map(each -> "cost." + each.key()))
                .flatMap(each -> each)
                .toList();
    }

    /** A length in metres that some book says; see {@link #lacking}. */
    public double metres(Measure measure) {
        return measures.getOrDefault(measure, new Length(0)).metres();
    }

    /** A weight that some book says; see {@link #lacking}. */
    public double weight(Weighed weighed) {
        return weights.getOrDefault(weighed, 0.0);
    }
}
