package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;

/** The findings of a report by outcome. */
final class FindingsText {
    /** What a person has to look at, in this order. */
    private static final List<Outcome> OPEN =
            List.of(Outcome.FAILS, Outcome.BORDERLINE, Outcome.CANNOT_TELL, Outcome.WAIVED);

    private final Report report;
    private final TextPage page;

    FindingsText(Report report, TextPage page) {
        this.report = report;
        this.page = page;
    }

    /** What a person has to look at, each with its basis and what would settle or mend it. */
    void open() {
        for (Outcome outcome : OPEN) {
            List<Finding> findings = report.with(outcome);
            if (!findings.isEmpty()) {
                page.heading(outcome, outcome.spoken(), findings.size());
                bySentence(findings).values().forEach(this::entry);
            }
        }
    }

    /** What is met, what is told to whoever builds it, and what does not apply. */
    void rest() {
        meets();
        notes();
        notApplicable();
    }

    /** Findings that say the same, such as that a layer is missing, together. */
    private static Map<String, List<Finding>> bySentence(List<Finding> findings) {
        return findings.stream().collect(Collectors.groupingBy(Sentence::of, LinkedHashMap::new, Collectors.toList()));
    }

    private void entry(List<Finding> findings) {
        page.paragraph(
                "  ",
                findings.stream()
                        .map(finding -> finding.rule() + " (" + finding.weight().word() + ")")
                        .collect(Collectors.joining(", ")));
        Finding first = findings.get(0);
        page.paragraph("    ", Sentence.of(first));
        first.observation().missing().stream()
                .map(Missing::settledBy)
                .distinct()
                .forEach(settledBy -> page.paragraph("    ", "To settle it: " + settledBy + "."));
        remedies(findings);
        for (Finding finding : findings) {
            page.paragraph(
                    "    ",
                    finding.basis().spoken() + "; set by " + finding.setBy().fileAndLine());
        }
    }

    /** Where rules have each another remedy, each is told for its rule. */
    private void remedies(List<Finding> findings) {
        Map<String, List<String>> rulesOf = new LinkedHashMap<>();
        findings.forEach(finding -> RemedyWords.line(report, finding)
                .ifPresent(remedy -> rulesOf.computeIfAbsent(remedy, any -> new ArrayList<>())
                        .add(finding.rule())));
        rulesOf.forEach((remedy, rules) ->
                page.paragraph("    ", rulesOf.size() == 1 ? remedy : String.join(", ", rules) + ": " + remedy));
    }

    private void meets() {
        List<Finding> met = report.with(Outcome.MEETS).stream()
                .filter(finding -> finding.weight() != Weight.NOTE)
                .toList();
        if (met.isEmpty()) {
            return;
        }
        page.heading(Outcome.MEETS, Outcome.MEETS.spoken(), met.size());
        Map<String, Integer> byRule = new TreeMap<>();
        met.forEach(finding -> byRule.merge(finding.rule(), 1, Integer::sum));
        byRule.forEach((rule, count) -> page.paragraph("  ", rule + (count > 1 ? " (" + count + ")" : "")));
    }

    private void notes() {
        List<Finding> notes = report.with(Outcome.MEETS).stream()
                .filter(finding -> finding.weight() == Weight.NOTE)
                .toList();
        if (!notes.isEmpty()) {
            page.heading(Outcome.MEETS, "notes for whoever builds it", notes.size());
            notes.forEach(finding -> page.paragraph("  ", Sentence.of(finding)));
        }
    }

    private void notApplicable() {
        List<Finding> findings = report.with(Outcome.NOT_APPLICABLE);
        if (!findings.isEmpty()) {
            page.heading(Outcome.NOT_APPLICABLE, Outcome.NOT_APPLICABLE.spoken(), findings.size());
            findings.forEach(finding -> page.paragraph(
                    "  ",
                    finding.rule() + ": "
                            + String.join("; ", finding.observation().notes())));
        }
    }
}
