package org.fallrule.report.comparison;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** The report of a comparison as text, 80 columns wide. */
public final class ComparisonText {
    private static final int WIDTH = 80;

    private final ComparisonReport report;
    private final Comparison comparison;
    private final StringBuilder text = new StringBuilder();

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
        paragraph("", report.rules());
        line("");
        paragraph("", comparison.verdict());
        changes(Change.NEW);
        changes(Change.WORSE);
        changes(Change.BETTER);
        changes(Change.GONE);
        unchanged();
        asBuilt();
        data();
        problems();
        foot();
        return text.toString();
    }

    private void state(String which, Site site) {
        paragraph("", which + ": " + site.name() + " (" + site.id() + ")");
    }

    private void changes(Change change) {
        List<FindingChange> changed = comparison.with(change);
        if (changed.isEmpty()) {
            return;
        }
        heading(change.word(), changed.size());
        changed.forEach(each -> {
            paragraph("  ", rule(each.shown()) + ": " + each.why());
            told("before: ", each.before());
            told(change == Change.NEW ? "" : "now: ", each.after());
        });
    }

    private void told(String when, Optional<Finding> finding) {
        finding.ifPresent(each -> paragraph("    ", when + Sentence.of(each)));
    }

    private static String rule(Finding finding) {
        return finding.rule() + " (" + finding.weight().word() + ")";
    }

    private void unchanged() {
        if (!comparison.after().isPlan()) {
            return;
        }
        List<FindingChange> open = report.open(Change.UNCHANGED);
        heading("as it was, and open", open.size());
        Map<String, List<FindingChange>> bySentence = open.stream()
                .collect(Collectors.groupingBy(
                        each -> Sentence.of(each.shown()), LinkedHashMap::new, Collectors.toList()));
        bySentence.forEach((says, same) -> {
            paragraph("  ", same.stream().map(each -> rule(each.shown())).collect(Collectors.joining(", ")));
            paragraph("    ", says);
        });
        paragraph("  ", report.settled() + " more are settled, as they were.");
    }

    private void asBuilt() {
        if (!comparison.after().isAsBuilt()) {
            return;
        }
        line("");
        line("AS BUILT AGAINST THE DESIGN");
        for (Outcome outcome : List.of(Outcome.FAILS, Outcome.BORDERLINE)) {
            report.asBuilt(outcome).forEach(finding -> {
                paragraph("  ", rule(finding) + " " + outcome.spoken());
                paragraph("    ", Sentence.of(finding));
            });
        }
        if (!report.notMeasured().isEmpty()) {
            paragraph("  ", "not measured, so it cannot be told:");
            report.notMeasured().forEach(each -> paragraph("    ", each));
            report.toMeasure().forEach(each -> paragraph("    ", "To settle it: " + each + "."));
        }
        paragraph("  ", report.asBuilt(Outcome.MEETS).size() + " values lie within their tolerance.");
        comparison.asBuilt().stream()
                .map(finding -> finding.observation().measured().isPresent()
                        ? finding.basis().spoken() + "; set by "
                                + finding.setBy().file()
                        : "")
                .filter(basis -> !basis.isEmpty())
                .distinct()
                .forEach(basis -> paragraph("    ", basis));
    }

    private void data() {
        List<ChangeWords.Line> lines = ChangeWords.lines(comparison.data());
        if (lines.isEmpty()) {
            return;
        }
        heading("changed data", comparison.data().size());
        Optional<DataChange.Kind> under = Optional.empty();
        for (ChangeWords.Line each : lines) {
            if (!under.equals(Optional.of(each.kind()))) {
                under = Optional.of(each.kind());
                paragraph("  ", each.kind().spoken() + ":");
            }
            paragraph("    ", each.says());
        }
    }

    private void problems() {
        List<Fault> problems = report.problems();
        if (!problems.isEmpty()) {
            heading("problems with the input", problems.size());
            problems.forEach(problem -> paragraph("  ", problem.toString()));
        }
    }

    private void foot() {
        line("");
        line("RULE BOOKS");
        for (RuleBook.Source book : report.books()) {
            paragraph("  ", book.file() + "  " + book.title());
        }
        line("");
        line("CAUTIONS");
        Cautions.in(comparison.after().book().locality().climate()).forEach(caution -> paragraph("  ", caution));
    }

    private void heading(String title, int count) {
        line("");
        line(title.toUpperCase(Locale.ROOT) + " (" + count + ")");
    }

    private void paragraph(String indent, String words) {
        Wrapped.lines(words, WIDTH - indent.length()).forEach(each -> line(indent + each));
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
