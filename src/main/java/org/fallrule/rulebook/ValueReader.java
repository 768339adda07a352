package org.fallrule.rulebook;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.Condition;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Range;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Reads single values of a rule: quantities and conditions. Nothing where there was a fault, which is then gathered. */
final class ValueReader {
    private final List<Fault> faults;

    ValueReader(List<Fault> faults) {
        this.faults = faults;
    }

    Optional<Node.Scalar> scalar(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return Optional.of(scalar);
        }
        faults.add(new Fault(node.place(), "found " + node.kind() + ", wanted a single value"));
        return Optional.empty();
    }

    /** A quantity of zero or more. */
    Optional<Written> written(Node.Scalar text, Dimension dimension) {
        return written(text, dimension, Range.FROM_ZERO);
    }

    /** A quantity of which only some amounts make sense. */
    Optional<Written> written(Node.Scalar text, Dimension dimension, Range range) {
        try {
            Written written = Written.parse(text.text(), dimension);
            if (range.holds(written.quantity())) {
                return Optional.of(written);
            }
            faults.add(new Fault(text.place(), text.kind() + wrong(written, range) + "; give " + range.spoken()));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(text.place(), e.says()));
        }
        return Optional.empty();
    }

    private static String wrong(Written written, Range range) {
        if (written.quantity().si() < 0) {
            return " is negative";
        }
        return written.quantity().si() > range.greatest() ? " is too much" : " is too little";
    }

    Optional<Condition> condition(Node.Scalar text) {
        try {
            return Optional.of(Condition.parse(text.text(), text.place()));
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return Optional.empty();
        }
    }
}
