package org.fallrule.rulebook;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;
import org.fallrule.rulebook.AsBuiltTolerances.Measure;
import org.fallrule.rulebook.AsBuiltTolerances.Tolerance;

/** Reads how far the work as built may lie from its design; gathers every fault. */
final class AsBuiltReader {
    static final String KEY = "as_built";

    private final List<Fault> faults;
    private final ValueReader values;

    AsBuiltReader(List<Fault> faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    AsBuiltTolerances read(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Basis> basis =
                new BasisReader(faults).required(keys, keys.mapping().place(), KEY);
        Weight weight = keys.scalar("weight").flatMap(this::weight).orElse(Weight.SHOULD);
        Map<Measure, Tolerance> tolerances = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            keys.scalar(measure.word())
                    .flatMap(text -> values.written(text, measure.dimension()))
                    .flatMap(within ->
                            basis.map(rests -> new Tolerance(within, weight, rests, mapping.placeOf(measure.word()))))
                    .ifPresent(tolerance -> tolerances.put(measure, tolerance));
        }
        keys.refuseOthers(KEY);
        return new AsBuiltTolerances(tolerances);
    }

    /** A tolerance is asked or advised; to note a difference is no tolerance. */
    private Optional<Weight> weight(Node.Scalar text) {
        for (Weight weight : List.of(Weight.MUST, Weight.SHOULD)) {
            if (weight.word().equals(text.text().toLowerCase(Locale.ROOT))) {
                return Optional.of(weight);
            }
        }
        faults.add(new Fault(text.place(), "weight: found " + text.kind() + ", wanted must or should"));
        return Optional.empty();
    }
}
