package org.fallrule.report.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.FindingChange;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Outcome;
import org.fallrule.rulebook.RuleBook;

/**
 * Everything that the report of a comparison states.
 *
 * @param comparison the two states
 * @param rules a sentence: whose rules each of them is held against
 */
public record ComparisonReport(Comparison comparison, String rules) {

    /** What a person has to look at, numbered from 1 in this order: for the worse, then better, then as it was but open. */
    public List<FindingChange> open() {
        return Stream.of(Change.NEW, Change.WORSE, Change.BETTER, Change.UNCHANGED)
                .flatMap(change -> comparison.with(change).stream())
                .filter(FindingChange::isOpen)
                .toList();
    }

    /** How many findings are settled in both states. */
    public long settled() {
        return comparison.with(Change.UNCHANGED).stream()
                .filter(change -> !change.isOpen())
                .count();
    }

    /** The open findings that have changed in one way. */
    public List<FindingChange> open(Change change) {
        return open().stream().filter(each -> each.change() == change).toList();
    }

    /** The values as built of one outcome. */
    public List<Finding> asBuilt(Outcome outcome) {
        return comparison.asBuilt().stream()
                .filter(finding -> finding.outcome() == outcome)
                .toList();
    }

    /** What was not measured of the work as built: {@code pipe P-2: invert up, slope}, a line for each thing. */
    public List<String> notMeasured() {
        Map<String, List<String>> byFeature = new LinkedHashMap<>();
        asBuilt(Outcome.CANNOT_TELL)
                .forEach(finding -> finding.observation()
                        .subject()
                        .ifPresent(feature -> byFeature
                                .computeIfAbsent(feature.spoken(), any -> new ArrayList<>())
                                .addAll(finding.observation().missing().stream()
                                        .map(Missing::what)
                                        .map(what -> what.replaceFirst("^the (.*) of .*$", "$1"))
                                        .toList())));
        return byFeature.entrySet().stream()
                .map(each -> each.getKey() + ": " + String.join(", ", each.getValue()))
                .toList();
    }

    /** What would settle what was not measured. */
    public List<String> toMeasure() {
        return asBuilt(Outcome.CANNOT_TELL).stream()
                .flatMap(finding -> finding.observation().missing().stream())
                .map(Missing::settledBy)
                .distinct()
                .toList();
    }

    /** What is wrong with the input of either state, and with comparing them. */
    public List<Fault> problems() {
        List<Fault> all = new ArrayList<>(comparison.problems());
        all.addAll(comparison.after().review().problems());
        comparison.before().review().problems().stream()
                .filter(problem -> !all.contains(problem))
                .map(problem -> new Fault(problem.where(), "before: " + problem.says()))
                .forEach(all::add);
        return List.copyOf(all);
    }

    /** The rule books of both states. */
    public List<RuleBook.Source> books() {
        return Stream.of(comparison.before(), comparison.after())
                .flatMap(each -> each.book().books().stream())
                .distinct()
                .toList();
    }
}
