package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Condition;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.measure.Limit;

/** Reads a limit of a rule: a quantity, or a list of quantities each with a condition; gathers every fault. */
final class LimitReader {
    private final List<Fault> faults;
    private final ValueReader values;

    LimitReader(List<Fault> faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    Optional<Limits> limits(Parameter.Form.LimitOf form, Node node, String name) {
        List<Limits.Case> cases = new ArrayList<>();
        if (node instanceof Node.Sequence list) {
            if (list.items().isEmpty()) {
                faults.add(new Fault(node.place(), name + ": found an empty list, wanted a limit with its unit"));
            }
            list.items().forEach(item -> conditional(form, item).ifPresent(each -> add(each, cases)));
        } else {
            values.scalar(node)
                    .flatMap(text -> limit(form, text))
                    .ifPresent(limit -> cases.add(new Limits.Case(Condition.ALWAYS, Optional.of(limit), node.place())));
        }
        return cases.isEmpty() ? Optional.empty() : Optional.of(new Limits(cases));
    }

    private void add(Limits.Case each, List<Limits.Case> cases) {
        cases.stream()
                .filter(earlier -> earlier.when().isAlways())
                .findFirst()
                .ifPresent(earlier -> faults.add(new Fault(
                        each.setBy(),
                        "this can never apply, because line " + earlier.setBy().line()
                                + " before it has no condition; put the one without a condition last")));
        cases.add(each);
    }

    private Optional<Limits.Case> conditional(Parameter.Form.LimitOf form, Node item) {
        if (!(item instanceof Node.Mapping mapping)) {
            faults.add(new Fault(item.place(), "found " + item.kind() + ", wanted {when: condition, is: limit}"));
            return Optional.empty();
        }
        Keys keys = new Keys(mapping, faults);
        boolean conditioned = keys.node("when").isPresent();
        Optional<Condition> when = keys.scalar("when").flatMap(values::condition);
        Optional<Node.Scalar> is = keys.required("is", "the limit with its unit, or none");
        boolean none = is.filter(limit -> limit.text().equals("none")).isPresent();
        Optional<Limit> limit = none ? Optional.empty() : is.flatMap(written -> limit(form, written));
        keys.refuseOthers("a limit");
        boolean unread = conditioned && when.isEmpty();
        return unread || (limit.isEmpty() && !none)
                ? Optional.empty()
                : Optional.of(new Limits.Case(when.orElse(Condition.ALWAYS), limit, mapping.place()));
    }

    private Optional<Limit> limit(Parameter.Form.LimitOf form, Node.Scalar text) {
        return values.written(text, form.dimension(), form.range()).map(written -> new Limit(form.bound(), written));
    }
}
