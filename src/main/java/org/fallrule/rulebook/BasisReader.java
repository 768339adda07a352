package org.fallrule.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;

/** Reads what a rule rests on; gathers every fault. */
final class BasisReader {
    private final List<Fault> faults;

    BasisReader(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * What stands under the key {@code basis}, which has to be there.
     *
     * @param place where it is missed
     * @param what what rests on it, such as {@code as_built}
     */
    Optional<Basis> required(Keys keys, Place place, String what) {
        if (keys.node("basis").isEmpty()) {
            faults.add(new Fault(place, what + " has no basis; give kind, document and section"));
        }
        return keys.mapping("basis").flatMap(this::basis);
    }

    Optional<Basis> basis(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Basis.Kind> kind = keys.required(
                        "kind", "statute, ordinance, model_code, standard, manual or practice")
                .flatMap(this::kind);
        Optional<String> document = keys.text("document");
        Optional<String> section = keys.text("section");
        Optional<String> known = keys.text("known");
        Optional<String> note = keys.text("note");
        if (kind.isPresent() && kind.get() != Basis.Kind.PRACTICE && document.isEmpty()) {
            keys.fault(mapping.place(), "a basis of kind " + kind.get().word() + " must name its document");
        }
        keys.refuseOthers("a basis");
        return kind.map(found -> new Basis(found, document, section, known, note, mapping.place()));
    }

    private Optional<Basis.Kind> kind(Node.Scalar word) {
        Optional<Basis.Kind> kind = Basis.Kind.named(word.text());
        if (kind.isEmpty()) {
            List<String> known =
                    Arrays.stream(Basis.Kind.values()).map(Basis.Kind::word).toList();
            faults.add(new Fault(
                    word.place(),
                    "unknown kind of basis " + word.text() + Nearest.hint(word.text(), known) + " Known: "
                            + String.join(", ", known)));
        }
        return kind;
    }
}
