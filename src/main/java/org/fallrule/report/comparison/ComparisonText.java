package org.fallrule.report.comparison;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.DataChange;
import org.fallrule.comparison.FindingChange;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Cautions;
import org.fallrule.report.Sentence;
import org.fallrule.report.text.TextPage;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** The report of a comparison as text, 80 columns wide. */
public final class ComparisonText {
    private final ComparisonReport report;
    private final Comparison comparison;
    private final TextPage page = new TextPage();

    private ComparisonText(ComparisonReport report) {
        this.report = report;
        this.comparison = report.comparison();
    }

    public static String write(ComparisonReport report) {
        return new ComparisonText(report).written();
    }

    private String written() {
        state("before", comparison.before().site());
        state("after", comparison.after().site());
        page.paragraph("", report.rules());
        page.line("");
        page.paragraph("", comparison.verdict());
        changes(Change.NEW);
        changes(Change.WORSE);
        changes(Change.BETTER);
        changes(Change.GONE);
        unchanged();
        asBuilt();
        data();
        problems();
        foot();
        return page.toString();
    }

    private void state(String which, Site site) {
        page.paragraph("", which + ": " + site.name() + " (" + site.id() + ")");
    }

    private void changes(Change change) {
        List<FindingChange> changed = comparison.with(change);
        if (changed.isEmpty()) {
            return;
        }
        page.heading(change.word(), changed.size());
        changed.forEach(each -> {
            page.paragraph("  ", rule(each.shown()) + ": " + each.why());
            told("before: ", each.before());
            told(change == Change.NEW ? "" : "now: ", each.after());
        });
    }

    private void told(String when, Optional<Finding> finding) {
        finding.ifPresent(each -> page.paragraph("    ", when + Sentence.of(each)));
    }

    private static String rule(Finding finding) {
        return finding.rule() + " (" + finding.weight().word() + ")";
    }

    private void unchanged() {
        if (!comparison.after().isPlan()) {
            return;
        }
        List<FindingChange> open = report.open(Change.UNCHANGED);
        page.heading("as it was, and open", open.size());
        Map<String, List<FindingChange>> bySentence = open.stream()
                .collect(Collectors.groupingBy(
                        each -> Sentence.of(each.shown()), LinkedHashMap::new, Collectors.toList()));
        bySentence.forEach((says, same) -> {
            page.paragraph("  ", same.stream().map(each -> rule(each.shown())).collect(Collectors.joining(", ")));
            page.paragraph("    ", says);
        });
        page.paragraph("  ", report.settled() + " more are settled, as they were.");
    }

    private void asBuilt() {
        if (!comparison.after().isAsBuilt()) {
            return;
        }
        page.heading("as built against the design");
        for (Outcome outcome : List.of(Outcome.FAILS, Outcome.BORDERLINE)) {
            report.asBuilt(outcome).forEach(finding -> {
                page.paragraph("  ", rule(finding) + " " + outcome.spoken());
                page.paragraph("    ", Sentence.of(finding));
            });
        }
        if (!report.notMeasured().isEmpty()) {
            page.paragraph("  ", "not measured, so it cannot be told:");
            report.notMeasured().forEach(each -> page.paragraph("    ", each));
            report.toMeasure().forEach(each -> page.paragraph("    ", "To settle it: " + each + "."));
        }
        page.paragraph("  ", report.asBuilt(Outcome.MEETS).size() + " values lie within their tolerance.");
        comparison.asBuilt().stream()
                .map(finding -> finding.observation().measured().isPresent()
                        ? finding.basis().spoken() + "; set by "
                                + finding.setBy().file()
                        : "")
                .filter(basis -> !basis.isEmpty())
                .distinct()
                .forEach(basis -> page.paragraph("    ", basis));
    }

    private void data() {
        List<ChangeWords.Line> lines = ChangeWords.lines(comparison.data());
        if (lines.isEmpty()) {
            return;
        }
        page.heading("changed data", comparison.data().size());
        Optional<DataChange.Kind> under = Optional.empty();
        for (ChangeWords.Line each : lines) {
            if (!under.equals(Optional.of(each.kind()))) {
                under = Optional.of(each.kind());
                page.paragraph("  ", each.kind().spoken() + ":");
            }
            page.paragraph("    ", each.says());
        }
    }

    private void problems() {
        List<Fault> problems = report.problems();
        if (!problems.isEmpty()) {
            page.heading("problems with the input", problems.size());
            problems.forEach(problem -> page.paragraph("  ", problem.toString()));
        }
    }

    private void foot() {
        page.heading("rule books");
        for (RuleBook.Source book : report.books()) {
            page.paragraph("  ", book.file() + "  " + book.title());
        }
        page.heading("cautions");
        Cautions.in(comparison.after().book().locality().climate()).forEach(caution -> page.paragraph("  ", caution));
    }
}
