package org.fallrule.bookshelf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.reader.WrittenPlan;

/** Reads the examples that stand beside a rule book. */
final class ExampleReader {
    private final List<Fault> faults = new ArrayList<>();

    private ExampleReader() {}

    /**
     * The examples in a file.
     *
     * @throws UnusableInput with every fault of the file
     */
    static List<Example> read(Path file, String shownAs) {
        return new ExampleReader().examples(Yaml.read(file, shownAs));
    }

    private List<Example> examples(Node.Mapping document) {
        Keys keys = new Keys(document, faults);
        Unit unit = keys.required("unit", "the unit of the coordinates, ft or m")
                .flatMap(this::unit)
                .orElse(Unit.FOOT);
        Optional<String> county = keys.text("county");
        Optional<LocalDate> day = keys.scalar("day").flatMap(this::day);
        List<Node> shared = keys.list("features");
        List<Example> examples = new ArrayList<>();
        Optional<Node.Mapping> all = keys.mapping("examples");
        if (keys.node("examples").isEmpty()) {
            keys.fault(document.place(), "the key examples is missing; give examples by name");
        }
        all.ifPresent(named -> named.entries().forEach((name, node) -> {
            if (node instanceof Node.Mapping mapping) {
                examples.add(example(name, new Keys(mapping, faults), unit, shared, county, day));
            } else {
                keys.fault(node.place(), name + ": found " + node.kind() + ", wanted keys with values");
            }
        }));
        keys.refuseOthers("a file of examples");
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults.stream().distinct().toList());
        }
        return examples;
    }

    private Example example(
            String name, Keys keys, Unit unit, List<Node> shared, Optional<String> county, Optional<LocalDate> day) {
        var site = new WrittenPlan(unit, faults).site(name, keys, shared);
        Optional<String> own = keys.text("county");
        Optional<LocalDate> ownDay = keys.scalar("day").flatMap(this::day);
        List<Expectation> expected = new ArrayList<>();
        if (keys.node("expect").isEmpty()) {
            keys.fault(
                    keys.mapping().place(), "the key expect is missing; give rules with outcomes, such as id: fails");
        }
        keys.mapping("expect")
                .ifPresent(rules -> rules.entries().forEach((rule, node) -> expected.addAll(expectations(rule, node))));
        keys.refuseOthers("an example");
        return new Example(
                name, keys.mapping().placeOf("expect"), site, own.or(() -> county), ownDay.or(() -> day), expected);
    }

    private List<Expectation> expectations(String rule, Node node) {
        if (node instanceof Node.Sequence list) {
            return list.items().stream()
                    .flatMap(item -> expectations(rule, item).stream())
                    .toList();
        }
        if (node instanceof Node.Scalar word) {
            return outcome(word)
                    .map(found -> new Expectation(rule, found, Optional.empty(), Optional.empty(), word.place()))
                    .stream()
                    .toList();
        }
        Keys keys = new Keys((Node.Mapping) node, faults);
        Optional<Outcome> outcome =
                keys.required("outcome", "meets, fails or another outcome").flatMap(this::outcome);
        Optional<String> feature = keys.text("feature");
        Optional<String> measured = keys.text("measured");
        keys.refuseOthers("an expectation");
        return outcome.map(found -> new Expectation(rule, found, feature, measured, node.place())).stream()
                .toList();
    }

    private Optional<Outcome> outcome(Node.Scalar word) {
        List<String> known = Arrays.stream(Outcome.values()).map(Outcome::word).toList();
        if (!known.contains(word.text())) {
            faults.add(new Fault(
                    word.place(),
                    "found " + word.kind() + ", wanted an outcome" + Nearest.hint(word.text(), known) + " Known: "
                            + String.join(", ", known)));
        }
        return Arrays.stream(Outcome.values())
                .filter(each -> each.word().equals(word.text()))
                .findFirst();
    }

    private Optional<Unit> unit(Node.Scalar word) {
        Optional<Unit> unit = Unit.named(word.text(), Dimension.LENGTH);
        if (unit.isEmpty()) {
            faults.add(new Fault(
                    word.place(), "unknown unit " + word.text() + "; use " + Unit.symbolsOf(Dimension.LENGTH)));
        }
        return unit;
    }

    private Optional<LocalDate> day(Node.Scalar day) {
        try {
            return Optional.of(LocalDate.parse(day.text()));
        } catch (DateTimeParseException e) {
            faults.add(new Fault(day.place(), day.kind() + " is not a date; write it like 2026-06-01"));
            return Optional.empty();
        }
    }
}
