package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Check;
import org.fallrule.check.Condition;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Reads what a rule tells its check, under the check's parameters; gathers every fault. */
final class TermReader {
    private final Keys keys;
    private final List<Fault> faults;

    TermReader(Keys keys, List<Fault> faults) {
        this.keys = keys;
        this.faults = faults;
    }

    /** A value for each parameter of the check that the rule gives. */
    Terms terms(Check check) {
        Terms terms = Terms.none();
        for (Parameter<?> parameter : check.parameters()) {
            terms = withTerm(terms, parameter);
        }
        return terms;
    }

    private <T> Terms withTerm(Terms terms, Parameter<T> parameter) {
        Optional<Node> node = keys.node(parameter.name());
        if (node.isEmpty()) {
            if (parameter.required()) {
                fault(
                        keys.mapping().place(),
                        "the key " + parameter.name() + " is missing; give " + parameter.meaning());
            }
            parameter.conditionKey().ifPresent(keys::node);
            return terms;
        }
        return value(parameter.form(), node.get(), parameter.name())
                .map(value -> terms.with(parameter, parameter.type().cast(value)))
                .orElse(terms);
    }

    private Optional<?> value(Parameter.Form form, Node node, String name) {
        if (form instanceof Parameter.Form.Features features) {
            return selection(features, node, name);
        }
        if (form instanceof Parameter.Form.LimitOf limit) {
            return limits(limit, node);
        }
        Parameter.Form.QuantityOf quantity = (Parameter.Form.QuantityOf) form;
        return scalar(node).flatMap(scalar -> quantity(scalar, quantity));
    }

    private Optional<Quantity> quantity(Node.Scalar scalar, Parameter.Form.QuantityOf form) {
        Optional<Written> written = written(scalar, form.dimension());
        if (written.isPresent() && written.get().quantity().si() < 0) {
            fault(scalar.place(), scalar.kind() + " is negative; give zero or more");
            return Optional.empty();
        }
        return written.map(Written::quantity);
    }

    private Optional<Selection> selection(Parameter.Form.Features form, Node node, String name) {
        Optional<Condition> where = keys.scalar(name + "_where")
                .map(text -> condition(text).orElse(Condition.ALWAYS))
                .or(() -> Optional.of(Condition.ALWAYS));
        Optional<Node.Scalar> word = scalar(node);
        Optional<Role> role = word.flatMap(found -> Role.named(found.text())).filter(form.roles()::contains);
        if (word.isPresent() && role.isEmpty()) {
            List<String> known = form.roles().stream().map(Role::word).toList();
            fault(
                    word.get().place(),
                    name + ": " + word.get().text() + " is not a role that can stand here"
                            + Nearest.hint(word.get().text(), known) + " Known: " + String.join(", ", known));
        }
        role.ifPresent(found -> where.ifPresent(condition -> refuseForeignNames(found, condition, node.place())));
        return role.flatMap(found -> where.map(condition -> new Selection(found, condition)));
    }

    private void refuseForeignNames(Role role, Condition condition, Place place) {
        condition.names().forEach((name, known) -> {
            if (!Attribute.of(role).contains(known.attribute())) {
                fault(
                        place,
                        "the condition " + condition.text() + ": a " + role.spoken() + " has no " + name + "; it has "
                                + Attribute.of(role));
            }
        });
    }

    private Optional<Limits> limits(Parameter.Form.LimitOf form, Node node) {
        List<Limits.Case> cases = new ArrayList<>();
        if (node instanceof Node.Sequence list) {
            list.items().forEach(item -> conditional(form, item).ifPresent(cases::add));
        } else {
            scalar(node)
                    .flatMap(text -> limit(form, text))
                    .ifPresent(limit -> cases.add(new Limits.Case(Condition.ALWAYS, Optional.of(limit), node.place())));
        }
        return cases.isEmpty() ? Optional.empty() : Optional.of(new Limits(cases));
    }

    private Optional<Limits.Case> conditional(Parameter.Form.LimitOf form, Node item) {
        if (!(item instanceof Node.Mapping mapping)) {
            fault(item.place(), "found " + item.kind() + ", wanted {when: condition, is: limit}");
            return Optional.empty();
        }
        Keys keys = new Keys(mapping, faults);
        Optional<Condition> when =
                keys.scalar("when").map(text -> condition(text).orElse(Condition.ALWAYS));
        Optional<Node.Scalar> is = keys.required("is", "the limit with its unit, or none");
        boolean none = is.filter(text -> text.text().equals("none")).isPresent();
        Optional<Limit> limit = none ? Optional.empty() : is.flatMap(text -> limit(form, text));
        keys.refuseOthers("a limit");
        return limit.isPresent() || none
                ? Optional.of(new Limits.Case(when.orElse(Condition.ALWAYS), limit, mapping.place()))
                : Optional.empty();
    }

    private Optional<Limit> limit(Parameter.Form.LimitOf form, Node.Scalar text) {
        Optional<Written> written = written(text, form.dimension());
        if (written.isPresent() && written.get().quantity().si() < 0) {
            fault(text.place(), "the limit " + text.text() + " is negative; give zero or more");
            return Optional.empty();
        }
        return written.map(value -> new Limit(form.bound(), value));
    }

    private Optional<Written> written(Node.Scalar text, Dimension dimension) {
        try {
            return Optional.of(Written.parse(text.text(), dimension));
        } catch (UnreadableQuantity e) {
            fault(text.place(), e.says());
            return Optional.empty();
        }
    }

    private Optional<Condition> condition(Node.Scalar text) {
        try {
            return Optional.of(Condition.parse(text.text(), text.place()));
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return Optional.empty();
        }
    }

    private Optional<Node.Scalar> scalar(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return Optional.of(scalar);
        }
        fault(node.place(), "found " + node.kind() + ", wanted a single value");
        return Optional.empty();
    }

    private void fault(Place where, String says) {
        faults.add(new Fault(where, says));
    }
}
