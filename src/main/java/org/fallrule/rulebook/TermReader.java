package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.check.AttributeList;
import org.fallrule.check.Check;
import org.fallrule.check.Condition;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Reads what a rule tells its check, under the check's parameters; gathers every fault. */
final class TermReader {
    private final Keys keys;
    private final List<Fault> faults;

    private final ValueReader values;

    TermReader(Keys keys, List<Fault> faults) {
        this.keys = keys;
        this.faults = faults;
        this.values = new ValueReader(faults);
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
            return new LimitReader(faults).limits(limit, node, name);
        }
        if (form instanceof Parameter.Form.ConditionOn on) {
            return condition(on, node);
        }
        if (form instanceof Parameter.Form.AttributesOf of) {
            return attributes(of, node, name);
        }
        if (form instanceof Parameter.Form.OneOf oneOf) {
            return word(oneOf, node, name);
        }
        Parameter.Form.QuantityOf quantity = (Parameter.Form.QuantityOf) form;
        return values.scalar(node)
                .flatMap(scalar -> values.written(scalar, quantity.dimension(), quantity.range()))
                .map(Written::quantity);
    }

    private Optional<String> word(Parameter.Form.OneOf form, Node node, String name) {
        Optional<Node.Scalar> word = values.scalar(node);
        Optional<String> known = word.map(Node.Scalar::text).filter(form.words()::contains);
        if (word.isPresent() && known.isEmpty()) {
            fault(
                    word.get().place(),
                    name + ": " + word.get().text() + " cannot stand here"
                            + Nearest.hint(word.get().text(), form.words()) + " Known: "
                            + String.join(", ", form.words()));
        }
        return known;
    }

    private Optional<Selection> selection(Parameter.Form.Features form, Node node, String name) {
        Optional<Condition> where = keys.scalar(name + "_where")
                .map(text -> values.condition(text).orElse(Condition.ALWAYS))
                .or(() -> Optional.of(Condition.ALWAYS));
        Optional<Node.Scalar> word = values.scalar(node);
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
        refuseForeignNames(role, condition, place, Attribute.of(role));
    }

    private void refuseForeignNames(Role role, Condition condition, Place place, List<Attribute<?>> its) {
        new TreeMap<>(condition.names()).forEach((name, known) -> {
            if (!its.contains(known.attribute())) {
                fault(
                        place,
                        "the condition " + condition.text() + ": a " + role.spoken() + " has no " + name + "; it has "
                                + its);
            }
        });
    }

    private Optional<Condition> condition(Parameter.Form.ConditionOn form, Node node) {
        Optional<Condition> condition = values.scalar(node).flatMap(values::condition);
        roleUnder(form.selection())
                .ifPresent(role -> condition.ifPresent(found -> {
                    List<Attribute<?>> its = new ArrayList<>(Attribute.of(role));
                    Optional.<Attribute<?>>ofNullable(form.workedOut().get(role))
                            .ifPresent(its::add);
                    refuseForeignNames(role, found, node.place(), its);
                }));
        return condition;
    }

    private Optional<AttributeList> attributes(Parameter.Form.AttributesOf form, Node node, String name) {
        List<Node> items = node instanceof Node.Sequence list ? list.items() : List.of(node);
        if (items.isEmpty()) {
            fault(node.place(), name + ": found an empty list, wanted the names of attributes");
        }
        List<Attribute<?>> found = new ArrayList<>();
        for (Node item : items) {
            values.scalar(item).flatMap(word -> attribute(form, word, name)).ifPresent(found::add);
        }
        return found.size() < items.size() || found.isEmpty()
                ? Optional.empty()
                : Optional.of(new AttributeList(found));
    }

    private Optional<Attribute<?>> attribute(Parameter.Form.AttributesOf form, Node.Scalar word, String name) {
        List<Attribute<?>> its = roleUnder(form.selection()).map(Attribute::of).orElseGet(Attribute::all);
        Optional<Attribute<?>> found = its.stream()
                .<Attribute<?>>map(each -> each)
                .filter(each -> each.name().equals(word.text()))
                .findFirst();
        if (found.isEmpty()) {
            List<String> known = its.stream().map(Attribute::name).toList();
            fault(
                    word.place(),
                    name + ": " + word.text() + " is not an attribute that can stand here"
                            + Nearest.hint(word.text(), known) + " Known: " + String.join(", ", known));
        }
        return found;
    }

    /** The role that the rule gives under a key; nothing when that has a fault of its own. */
    private Optional<Role> roleUnder(String key) {
        return keys.node(key)
                .filter(Node.Scalar.class::isInstance)
                .flatMap(node -> Role.named(((Node.Scalar) node).text()));
    }

    private void fault(Place where, String says) {
        faults.add(new Fault(where, says));
    }
}
