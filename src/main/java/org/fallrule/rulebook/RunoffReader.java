package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Ecql;
import org.fallrule.filter.Filter;
import org.fallrule.finding.Basis;
import org.fallrule.locality.Runoff;
import org.fallrule.locality.RunoffCoefficient;
import org.fallrule.locality.Setting;
import org.fallrule.locality.Stated;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Ratio;

/**
 * Reads runoff coefficients by surface: one number, or cases such as {@code {when: "soil = 'clay'", is: 0.35}}, the first that
 * holds counting. Gathers every fault.
 */
final class RunoffReader {
    private static final Pattern WORD = Pattern.compile("[a-z]+(_[a-z]+)*");

    private final List<Fault> faults;
    private final ValueReader values;

    RunoffReader(List<Fault> faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    /** What the key {@code runoff} holds. Its basis holds for every surface in it. */
    Runoff read(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<String> basis = new BasisReader(faults)
                .required(keys, mapping.place(), "runoff")
                .map(Basis::spoken);
        SortedMap<String, RunoffCoefficient> surfaces = new TreeMap<>();
        mapping.entries().forEach((name, node) -> {
            if (name.equals("basis")) {
                return;
            }
            if (WORD.matcher(name).matches()) {
                cases(name, node, basis).ifPresent(cases -> surfaces.put(name, new RunoffCoefficient(cases)));
            } else {
                faults.add(new Fault(
                        mapping.placeOf(name),
                        "runoff: a surface is named in small letters, such as roof or bare_soil"));
            }
        });
        return new Runoff(surfaces);
    }

    private Optional<List<RunoffCoefficient.Case>> cases(String surface, Node node, Optional<String> basis) {
        int before = faults.size();
        List<RunoffCoefficient.Case> cases = new ArrayList<>();
        if (node instanceof Node.Sequence list && !list.items().isEmpty()) {
            for (Node item : list.items()) {
                refuseUnreachable(cases, item);
                conditional(item, basis).ifPresent(cases::add);
            }
        } else if (node instanceof Node.Scalar number) {
            coefficient(number, "", new Filter.Always(), basis).ifPresent(cases::add);
        } else {
            faults.add(new Fault(
                    node.place(),
                    surface + ": found " + node.kind() + ", wanted a coefficient or cases with conditions"));
        }
        return faults.size() > before ? Optional.empty() : Optional.of(cases);
    }

    private void refuseUnreachable(List<RunoffCoefficient.Case> cases, Node item) {
        if (!cases.isEmpty() && cases.get(cases.size() - 1).when().isEmpty()) {
            faults.add(new Fault(
                    item.place(),
                    "this can never apply, because the case before it has no condition; put that one last"));
        }
    }

    private Optional<RunoffCoefficient.Case> conditional(Node item, Optional<String> basis) {
        if (!(item instanceof Node.Mapping mapping)) {
            faults.add(new Fault(item.place(), "found " + item.kind() + ", wanted {when: condition, is: coefficient}"));
            return Optional.empty();
        }
        Keys keys = new Keys(mapping, faults);
        Optional<Node.Scalar> when = keys.scalar("when");
        Optional<Node.Scalar> is = keys.required("is", "the coefficient, from 0 to 1");
        keys.refuseOthers("a runoff coefficient");
        Optional<Filter> holds = when.map(this::condition).orElse(Optional.of(new Filter.Always()));
        return holds.flatMap(filter -> is.flatMap(
                number -> coefficient(number, when.map(Node.Scalar::text).orElse(""), filter, basis)));
    }

    private Optional<RunoffCoefficient.Case> coefficient(
            Node.Scalar number, String when, Filter holds, Optional<String> basis) {
        return values.written(number, Dimension.RATIO)
                .filter(written -> isAtMostOne(written.quantity().si(), number))
                .map(written -> new RunoffCoefficient.Case(
                        when, holds, new Stated<>((Ratio) written.quantity(), number.place(), basis)));
    }

    private boolean isAtMostOne(double coefficient, Node.Scalar number) {
        if (coefficient > 1) {
            faults.add(new Fault(
                    number.place(), number.kind() + " is above 1; no more runs off than it rains, give 0 to 1"));
        }
        return coefficient <= 1;
    }

    private Optional<Filter> condition(Node.Scalar text) {
        try {
            Filter filter = Ecql.parse(text.text(), text.place());
            List<String> unknown = filter.names().stream()
                    .filter(name -> !Setting.NAMES.contains(name))
                    .sorted()
                    .toList();
            unknown.forEach(name -> faults.add(new Fault(
                    text.place(),
                    "unknown name " + name + " in the condition " + text.text() + Nearest.hint(name, Setting.NAMES)
                            + " Known: " + String.join(", ", Setting.NAMES))));
            return unknown.isEmpty() ? Optional.of(filter) : Optional.empty();
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return Optional.empty();
        }
    }
}
