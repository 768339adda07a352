package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Range;
import org.fallrule.measure.Written;

/** Reads how lines are laid that a plan does not give yet ({@code laying}), and what is worth sparing ({@code cost}). */
final class LayingReader {
    private final List<Fault> faults;
    private final ValueReader values;

    LayingReader(List<Fault> faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    Laying read(Optional<Node.Mapping> laying, Optional<Node.Mapping> cost) {
        Laying of = laying.map(this::laying).orElse(Laying.UNSAID);
        return new Laying(
                of.material(),
                of.joint(),
                of.sizes(),
                of.measures(),
                cost.map(this::weights).orElse(Map.of()));
    }

    private Laying laying(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        List<Length> sizes = new ArrayList<>();
        keys.scalars("sizes").forEach(text -> length(text, Range.ABOVE_ZERO).ifPresent(sizes::add));
        Map<Laying.Measure, Length> measures = new EnumMap<>(Laying.Measure.class);
        for (Laying.Measure measure : Laying.Measure.values()) {
            keys.scalar(measure.key())
                    .flatMap(text -> length(text, range(measure)))
                    .ifPresent(length -> measures.put(measure, length));
        }
        Optional<String> material = keys.text("material");
        Optional<String> joint = keys.text("joint");
        new BasisReader(faults).required(keys, mapping.place(), "laying");
        keys.refuseOthers("laying");
        return new Laying(material, joint, sizes, measures, Map.of());
    }

    private Map<Laying.Weighed, Double> weights(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Map<Laying.Weighed, Double> weights = new EnumMap<>(Laying.Weighed.class);
        for (Laying.Weighed weighed : Laying.Weighed.values()) {
            keys.scalar(weighed.key())
                    .flatMap(text -> values.written(text, Dimension.RATIO))
                    .ifPresent(
                            written -> weights.put(weighed, written.quantity().si()));
        }
        new BasisReader(faults).required(keys, mapping.place(), "cost");
        keys.refuseOthers("cost");
        return weights;
    }

    /** A line is put together of so many pieces, and looked for in so many places, as these lengths are short. */
    private static Range range(Laying.Measure measure) {
        boolean counts = measure == Laying.Measure.GRID || measure == Laying.Measure.PIECE;
        return counts ? Range.from("1 in", Dimension.LENGTH) : Range.ABOVE_ZERO;
    }

    private Optional<Length> length(Node.Scalar text, Range range) {
        return values.written(text, Dimension.LENGTH, range)
                .map(Written::quantity)
                .map(quantity -> new Length(quantity.si()));
    }
}
