package org.fallrule.reader;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;

/**
 * The features of a layer that do not lie where its coordinate system is meant for. As a rule that is wrong with the system, and so
 * with every feature: the first stands for all.
 */
final class OutsideSystem {
    private final List<Fault> found = new ArrayList<>();

    void add(UnusableInput refused) {
        found.addAll(refused.faults());
    }

    /** Adds one fault for all of them; none where all lie well. */
    void tell(List<Fault> faults) {
        if (found.size() == 1) {
            faults.add(found.get(0));
        } else if (!found.isEmpty()) {
            Fault first = found.get(0);
            faults.add(new Fault(
                    first.where(),
                    first.says() + " (the first of " + found.size() + " features of the layer that it is so with)"));
        }
    }
}
