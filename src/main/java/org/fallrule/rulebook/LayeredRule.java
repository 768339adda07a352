package org.fallrule.rulebook;

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
    private static final Set<String> ABOUT = Set.of("title", "weight", "basis", "loosen_because", "drop", "reason");

    /** Whether the rule leaves the book here; a reason must be given. */
    static boolean isDropped(String id, Node.Mapping rule, List<Fault> faults) {
        Keys keys = new Keys(rule, faults);
        if (!keys.text("drop").equals(Optional.of("true"))) {
            return false;
        }
        keys.required("reason", "why the rule " + id + " is dropped");
        keys.text("loosen_because");
        keys.refuseOthers("a dropped rule");
        return true;
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
