package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.report.BillOfQuantities;
import org.fallrule.report.Cautions;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.CrossingWords;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.StandingWords;
import org.fallrule.report.StructureFacts;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.rulebook.RuleBook;

/** The report as text, 80 columns wide. */
public final class TextReport {
    private static final int WIDTH = 80;
    /** What a person has to look at, in this order. */
    private static final List<Outcome> OPEN =
            List.of(Outcome.FAILS, Outcome.BORDERLINE, Outcome.CANNOT_TELL, Outcome.WAIVED);

    private final Report report;
    private final Ink ink;
    private final StringBuilder text = new StringBuilder();

    private TextReport(Report report, Ink ink) {
        this.report = report;
        this.ink = ink;
    }

    /**
     * Writes the report.
     *
     * @param ink plain, or with a terminal's colours
     */
    public static String write(Report report, Ink ink) {
        return new TextReport(report, ink).written();
    }

    private String written() {
        head();
        for (Outcome outcome : OPEN) {
            List<Finding> findings = report.with(outcome);
            if (!findings.isEmpty()) {
                heading(outcome.spoken(), findings.size(), outcome);
                bySentence(findings).values().forEach(this::open);
            }
        }
        together();
        meets();
        notes();
        notApplicable();
        standing();
        takes();
        drain();
        crossings();
        problems();
        checklist();
        foot();
        return text.toString();
    }

    private void head() {
        paragraph("", report.site().name());
        paragraph(
                "",
                "county " + report.county() + "; " + report.site().crs()
                        + report.site()
                                .datum()
                                .map(datum -> "; heights " + datum)
                                .orElse(""));
        line("");
        Wrapped.lines(report.verdict(), WIDTH).forEach(each -> line(ink.of(headline(), each)));
        StringBuilder counts = new StringBuilder();
        for (Outcome outcome : Outcome.values()) {
            counts.append(counts.length() > 0 ? ", " : "")
                    .append(outcome.spoken())
                    .append(' ')
                    .append(report.review().count(outcome));
        }
        paragraph("", counts.toString());
    }

    private void together() {
        report.remedies().joint().ifPresent(joint -> {
            line("");
            line(ink.of(Outcome.MEETS, "WOULD PASS TOGETHER"));
            paragraph("  ", RemedyWords.joint(joint));
            joint.changes().forEach(change -> paragraph("    ", change));
            paragraph("  ", "Then these meet: " + String.join(", ", RemedyWords.passed(joint)) + ".");
        });
    }

    private Outcome headline() {
        if (report.review().failsPlan()) {
            return Outcome.FAILS;
        }
        return report.review().leavesOpen() ? Outcome.CANNOT_TELL : Outcome.MEETS;
    }

    /** Findings that say the same, such as that a layer is missing, together. */
    private static Map<String, List<Finding>> bySentence(List<Finding> findings) {
        return findings.stream().collect(Collectors.groupingBy(Sentence::of, LinkedHashMap::new, Collectors.toList()));
    }

    private void open(List<Finding> findings) {
        paragraph(
                "  ",
                findings.stream()
                        .map(finding -> finding.rule() + " (" + finding.weight().word() + ")")
                        .collect(Collectors.joining(", ")));
        Finding first = findings.get(0);
        paragraph("    ", Sentence.of(first));
        first.observation().missing().stream()
                .map(Missing::settledBy)
                .distinct()
                .forEach(settledBy -> paragraph("    ", "To settle it: " + settledBy + "."));
        findings.stream()
                .flatMap(finding -> RemedyWords.line(report, finding).stream())
                .distinct()
                .forEach(remedy -> paragraph("    ", remedy));
        for (Finding finding : findings) {
            paragraph(
                    "    ",
                    finding.basis().spoken() + "; set by " + finding.setBy().fileAndLine());
        }
    }

    private void standing() {
        if (!report.outlook().standing().isEmpty()) {
            line("");
            report.outlook().standing().forEach(ground -> paragraph("", StandingWords.of(ground, report.site())));
        }
    }

    private void takes() {
        report.outlook().proposed().ifPresent(proposal -> {
            line("");
            line("WHAT IT TAKES TO BUILD");
            BillOfQuantities.of(proposal).forEach(fact -> paragraph("  ", fact.name() + ": " + fact.value()));
            paragraph("  ", BillOfQuantities.LEAD);
        });
    }

    private void meets() {
        List<Finding> met = report.with(Outcome.MEETS).stream()
                .filter(finding -> finding.weight() != Weight.NOTE)
                .toList();
        if (met.isEmpty()) {
            return;
        }
        heading(Outcome.MEETS.spoken(), met.size(), Outcome.MEETS);
        Map<String, Integer> byRule = new TreeMap<>();
        met.forEach(finding -> byRule.merge(finding.rule(), 1, Integer::sum));
        byRule.forEach((rule, count) -> paragraph("  ", rule + (count > 1 ? " (" + count + ")" : "")));
    }

    private void notes() {
        List<Finding> notes = report.with(Outcome.MEETS).stream()
                .filter(finding -> finding.weight() == Weight.NOTE)
                .toList();
        if (!notes.isEmpty()) {
            heading("notes for whoever builds it", notes.size(), Outcome.MEETS);
            notes.forEach(finding -> paragraph("  ", Sentence.of(finding)));
        }
    }

    private void notApplicable() {
        List<Finding> findings = report.with(Outcome.NOT_APPLICABLE);
        if (!findings.isEmpty()) {
            heading(Outcome.NOT_APPLICABLE.spoken(), findings.size(), Outcome.NOT_APPLICABLE);
            findings.forEach(finding -> paragraph(
                    "  ",
                    finding.rule() + ": "
                            + String.join("; ", finding.observation().notes())));
        }
    }

    private void drain() {
        List<String> pipes = DrainText.lines(report.analysis());
        if (!pipes.isEmpty()) {
            line("");
            line("THE DRAIN ALONG THE FLOW");
            pipes.forEach(this::line);
        }
        List<String> structures = StructureFacts.all(report.analysis()).stream()
                .flatMap(facts -> structure(facts).stream())
                .toList();
        if (!structures.isEmpty()) {
            line("");
            line("WHAT DRAINS WHERE, AND DROPS FROM PIPE TO PIPE");
            structures.forEach(each -> paragraph("  ", each));
        }
        if (!pipes.isEmpty()) {
            line("");
            line("THE WATER");
            WaterText.lines(report.analysis()).forEach(this::line);
        }
    }

    private static Optional<String> structure(StructureFacts facts) {
        List<String> told = new ArrayList<>();
        facts.drainsGround().ifPresent(area -> told.add("drains ground of " + area));
        facts.drainsRoof().ifPresent(area -> told.add("drains roof of " + area));
        facts.drops().forEach(drop -> told.add("drop " + StructureFacts.spoken(drop)));
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(facts.what() + " " + facts.feature().id() + ": " + String.join("; ", told));
    }

    /** Where utilities cross the drain, for whoever digs. */
    private void crossings() {
        List<CrossingWords> rows =
                CrossedUtility.of(report).stream().map(CrossingWords::of).toList();
        if (!rows.isEmpty()) {
            line("");
            line("CROSSINGS");
        }
        for (CrossingWords row : rows) {
            paragraph(
                    "  ",
                    row.pipe() + " at " + row.station() + ": " + row.utility() + ", size " + row.size() + ", quality "
                            + row.quality());
            paragraph(
                    "    ",
                    "depth " + row.depth() + "; gap " + row.gap() + "; " + row.angle() + "; " + row.stands() + "; call "
                            + row.call());
        }
    }

    private void problems() {
        List<Fault> problems = report.review().problems();
        if (!problems.isEmpty()) {
            heading("problems with the input", problems.size(), Outcome.BORDERLINE);
            problems.forEach(problem -> paragraph("  ", problem.toString()));
        }
    }

    private void checklist() {
        List<ChecklistEntry> entries = Checklist.of(report);
        if (!entries.isEmpty()) {
            line("");
            line("SUBMITTAL CHECKLIST (" + entries.size() + ")");
            paragraph("  ", Checklist.summary(entries) + "; findings.json and the pages list them");
        }
    }

    private void foot() {
        line("");
        line("RULE BOOKS");
        for (RuleBook.Source book : report.book().books()) {
            paragraph("  ", book.file() + "  " + book.title());
        }
        line("");
        line("CAUTIONS");
        Cautions.in(report.book().locality().climate()).forEach(caution -> paragraph("  ", caution));
    }

    private void heading(String title, int count, Outcome outcome) {
        line("");
        line(ink.of(outcome, title.toUpperCase(java.util.Locale.ROOT) + " (" + count + ")"));
    }

    private void paragraph(String indent, String words) {
        Wrapped.lines(words, WIDTH - indent.length()).forEach(each -> line(indent + each));
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
