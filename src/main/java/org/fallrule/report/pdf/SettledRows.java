package org.fallrule.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.report.Fact;
import org.fallrule.report.FindingFacts;
import org.fallrule.report.Sentence;

/** Settled findings in rows: those that one line of a rule book settles in one way stand together, each with its value. */
final class SettledRows {
    static final List<String> COLUMNS = List.of("no.", "rule", "outcome", "of", "required", "basis", "set by");

    private SettledRows() {}

    /** The rows; {@code findings} are numbered from {@code first} on. */
    static List<List<String>> of(List<Finding> findings, int first) {
        Map<List<String>, List<Integer>> together = new LinkedHashMap<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            together.computeIfAbsent(
                            List.of(
                                    finding.rule(),
                                    finding.outcome().word(),
                                    value(finding, "required"),
                                    finding.setBy().fileAndLine()),
                            any -> new ArrayList<>())
                    .add(i);
        }
        return together.values().stream()
                .map(each -> row(findings, each, first))
                .toList();
    }

    private static List<String> row(List<Finding> findings, List<Integer> each, int first) {
        Finding one = findings.get(each.get(0));
        String numbers = each.size() == 1
                ? String.valueOf(first + each.get(0))
                : each.stream().map(i -> String.valueOf(first + i)).collect(Collectors.joining(", "));
        return List.of(
                numbers,
                one.title(),
                one.outcome().spoken() + ", " + one.weight().word(),
                each.stream().map(i -> says(findings.get(i))).distinct().collect(Collectors.joining("; ")),
                value(one, "required"),
                one.basis().spoken(),
                one.setBy().fileAndLine());
    }

    /** {@code pipe P-1: 1.36 %}; the whole sentence where nothing was measured. */
    private static String says(Finding finding) {
        Observation seen = finding.observation();
        return seen.measured()
                .filter(measured -> seen.subject().isPresent() && seen.told().isEmpty())
                .map(measured -> Sentence.about(seen) + ": " + Sentence.shown(measured))
                .orElseGet(() -> Sentence.of(finding));
    }

    private static String value(Finding finding, String name) {
        return FindingFacts.of(finding).stream()
                .filter(fact -> fact.name().equals(name))
                .map(Fact::value)
                .findFirst()
                .orElse("");
    }
}
