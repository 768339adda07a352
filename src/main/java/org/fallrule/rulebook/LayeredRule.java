package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/**
 * A rule while books are laid over each other: its keys, each value with the place that set it.
 *
 * @param id its id
 * @param keys its keys
 * @param setBy where its id stands in the last book that speaks of it
 */
record LayeredRule(String id, Node.Mapping keys, Place setBy) {
    /** Keys that say something about a rule and ask nothing of a plan. */
    private static final Set<String> ABOUT =
            Set.of("title", "weight", "basis", "loosen_because", "drop", "reason", "effective");

    /** Whether a book says of a rule that it is dropped. A reason must be given. */
    static boolean isDropped(String id, Node.Mapping rule, List<Fault> faults) {
        Keys keys = new Keys(rule, faults);
        if (keys.node("drop").isEmpty()) {
            return false;
        }
        Optional<Node.Scalar> drop = keys.scalar("drop");
        if (drop.filter(each -> each.text().equals("true")).isEmpty()) {
            drop.ifPresent(each -> keys.fault(
                    each.place(), "drop: found " + each.kind() + ", wanted true; to keep the rule leave the key out"));
            return false;
        }
        keys.required("reason", "why the rule " + id + " is dropped");
        keys.text("loosen_because");
        keys.node("effective");
        keys.refuseOthers("a dropped rule");
        return true;
    }

    /** Whether a book says why it loosens a rule; a key with nothing after it is no reason. */
    static boolean saysWhyLoosened(Node.Mapping rule) {
        return new Keys(rule, new ArrayList<>()).node("loosen_because").isPresent();
    }

    /** This rule with single keys of a later book laid over it. What it asks may change only together with its basis. */
    LayeredRule overlaid(Node.Mapping over, Place place, List<Fault> faults) {
        boolean asksOtherwise = over.entries().keySet().stream().anyMatch(key -> !ABOUT.contains(key));
        if (asksOtherwise && over.get("basis").isEmpty()) {
            faults.add(new Fault(
                    place,
                    "rule " + id + " is changed here but keeps the basis of " + setBy.fileAndLine()
                            + "; give the basis of the change"));
        }
        return new LayeredRule(id, keys.overlaid(over), place);
    }
}
