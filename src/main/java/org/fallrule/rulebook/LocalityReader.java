package org.fallrule.rulebook;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.finding.Basis;
import org.fallrule.locality.Climate;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.locality.Locality;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.locality.Runoff;
import org.fallrule.locality.Storm;
import org.fallrule.locality.StormReader;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Written;

/** Reads what a rule book says of its place, beside its rules. */
final class LocalityReader {
    private final List<Fault> faults;

    LocalityReader(List<Fault> faults) {
        this.faults = faults;
    }

    /** What the keys at the top of a book say of its place. */
    Locality read(Keys book) {
        UtilityTables utilities = new UtilityTables(faults);
        return new Locality(
                book.mapping("climate").map(this::climate).orElse(Climate.UNSAID),
                book.mapping("storm").map(this::storm).orElse(Storm.UNSAID),
                book.mapping("runoff")
                        .map(mapping -> new RunoffReader(faults).read(mapping))
                        .orElse(Runoff.UNSAID),
                book.mapping(UtilityTables.MARKS).map(utilities::accuracy).orElse(MarkAccuracy.UNSAID),
                book.mapping("expected_cover").map(utilities::cover).orElse(ExpectedCover.UNSAID),
                new LayingReader(faults).read(book.mapping("laying"), book.mapping("cost")));
    }

    /** The rain, which a book states with its basis. */
    private Storm storm(Node.Mapping mapping) {
        if (mapping.get("basis").isEmpty()) {
            faults.add(new Fault(mapping.place(), "the key basis is missing; give what the storm rests on"));
        }
        return new StormReader(faults, this::basis).read(mapping);
    }

    private Optional<String> basis(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return new BasisReader(faults).basis(mapping).map(Basis::spoken);
        }
        faults.add(new Fault(node.place(), "basis: found " + node.kind() + ", wanted keys with values"));
        return Optional.empty();
    }

    private Climate climate(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Boolean> freezing = keys.scalar("freezing").flatMap(this::flag);
        Optional<Written> frost =
                keys.scalar("frost_depth").flatMap(text -> new ValueReader(faults).written(text, Dimension.LENGTH));
        Optional<String> soil = keys.text("soil");
        keys.refuseOthers("climate");
        return new Climate(freezing, frost, soil);
    }

    private Optional<Boolean> flag(Node.Scalar scalar) {
        if (scalar.text().equals("true") || scalar.text().equals("false")) {
            return Optional.of(scalar.text().equals("true"));
        }
        faults.add(new Fault(scalar.place(), "found " + scalar.kind() + ", wanted true or false"));
        return Optional.empty();
    }
}
