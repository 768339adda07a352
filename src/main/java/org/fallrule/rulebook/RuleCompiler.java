package org.fallrule.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Check;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;

/** Makes a rule from its keys, under the parameters of its check; gathers every fault. */
final class RuleCompiler {
    private final Checks checks;
    private final List<Fault> faults;

    RuleCompiler(Checks checks, List<Fault> faults) {
        this.checks = checks;
        this.faults = faults;
    }

    /** The rule, or nothing when its keys had a fault. */
    Optional<Rule> compile(LayeredRule layered) {
        int before = faults.size();
        Keys keys = new Keys(layered.keys(), faults);
        Optional<Check> check = keys.required("check", "the name of a check").flatMap(this::check);
        Optional<Weight> weight =
                keys.required("weight", "must, should or note").flatMap(this::weight);
        String title = keys.required("title", "what the rule asks, in a few words")
                .map(Node.Scalar::text)
                .orElse(layered.id());
        Optional<Basis> basis = new BasisReader(faults).required(keys, layered.setBy(), "rule " + layered.id());
        keys.text("loosen_because");
        keys.node("drop");
        keys.node("effective");
        if (check.isEmpty()) {
            return Optional.empty();
        }
        Terms terms = new TermReader(keys, faults).terms(check.get());
        refuseIdle(layered, check.get(), keys);
        keys.refuseOthers("rule " + layered.id() + " (check " + check.get().name() + ")");
        return faults.size() > before || weight.isEmpty() || basis.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Rule(layered.id(), title, check.get(), weight.get(), terms, basis.get(), layered.setBy()));
    }

    /** A rule that asks nothing would look as if everything met it. */
    private void refuseIdle(LayeredRule rule, Check check, Keys keys) {
        List<Parameter<?>> limits = check.parameters().stream()
                .filter(each -> each.form() instanceof Parameter.Form.LimitOf && !each.asksLess())
                .toList();
        boolean asks = limits.isEmpty()
                || limits.stream()
                        .anyMatch(each ->
                                each.required() || keys.node(each.name()).isPresent());
        if (!asks) {
            String names =
                    String.join(" or ", limits.stream().map(each -> each.name()).toList());
            fault(rule.setBy(), "rule " + rule.id() + " asks nothing; give " + names);
        }
    }

    private Optional<Check> check(Node.Scalar name) {
        Optional<Check> check = checks.named(name.text());
        if (check.isEmpty()) {
            fault(
                    name.place(),
                    "unknown check " + name.text() + Nearest.hint(name.text(), checks.names()) + " Known: "
                            + String.join(", ", checks.names()));
        }
        return check;
    }

    private Optional<Weight> weight(Node.Scalar word) {
        Optional<Weight> weight = Arrays.stream(Weight.values())
                .filter(each -> each.word().equals(word.text()))
                .findFirst();
        if (weight.isEmpty()) {
            fault(word.place(), "unknown weight " + word.text() + "; use must, should or note");
        }
        return weight;
    }

    private void fault(Place where, String says) {
        faults.add(new Fault(where, says));
    }
}
