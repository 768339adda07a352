package org.fallrule.report.text;

import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.finding.Outcome;
import org.fallrule.report.BillOfQuantities;
import org.fallrule.report.Cautions;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.StandingWords;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.rulebook.RuleBook;

/** The report as text, 80 columns wide. */
public final class TextReport {
    private final Report report;
    private final TextPage page;

    private TextReport(Report report, Ink ink) {
        this.report = report;
        this.page = new TextPage(ink);
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
        FindingsText findings = new FindingsText(report, page);
        findings.open();
        together();
        findings.rest();
        standing();
        takes();
        ConstructionText.write(report, page);
        problems();
        checklist();
        foot();
        return page.toString();
    }

    private void head() {
        page.paragraph("", report.site().name());
        page.paragraph(
                "",
                "county " + report.county() + "; " + report.site().crs()
                        + report.site()
                                .datum()
                                .map(datum -> "; heights " + datum)
                                .orElse(""));
        page.line("");
        page.paragraph(headline(), report.verdict());
        StringBuilder counts = new StringBuilder();
        for (Outcome outcome : Outcome.values()) {
            counts.append(counts.length() > 0 ? ", " : "")
                    .append(outcome.spoken())
                    .append(' ')
                    .append(report.review().count(outcome));
        }
        page.paragraph("", counts.toString());
    }

    private void together() {
        report.remedies().joint().ifPresent(joint -> {
            page.heading(Outcome.MEETS, "would pass together");
            page.paragraph("  ", RemedyWords.joint(joint));
            joint.changes().forEach(change -> page.paragraph("    ", change));
            page.paragraph("  ", "Then these meet: " + String.join(", ", RemedyWords.passed(joint)) + ".");
        });
    }

    private Outcome headline() {
        if (report.review().failsPlan()) {
            return Outcome.FAILS;
        }
        return report.review().leavesOpen() ? Outcome.CANNOT_TELL : Outcome.MEETS;
    }

    private void standing() {
        if (!report.outlook().standing().isEmpty()) {
            page.line("");
            report.outlook().standing().forEach(ground -> page.paragraph("", StandingWords.of(ground, report.site())));
        }
    }

    private void takes() {
        report.outlook().proposed().ifPresent(proposal -> {
            page.heading("what it takes to build");
            BillOfQuantities.of(proposal).forEach(fact -> page.paragraph("  ", fact.name() + ": " + fact.value()));
            page.paragraph("  ", BillOfQuantities.LEAD);
        });
    }

    private void problems() {
        List<Fault> problems = report.review().problems();
        if (!problems.isEmpty()) {
            page.heading(Outcome.BORDERLINE, "problems with the input", problems.size());
            problems.forEach(problem -> page.paragraph("  ", problem.toString()));
        }
    }

    private void checklist() {
        List<ChecklistEntry> entries = Checklist.of(report);
        if (!entries.isEmpty()) {
            page.heading("submittal checklist", entries.size());
            page.paragraph("  ", Checklist.summary(entries) + "; findings.json and the pages list them");
        }
    }

    private void foot() {
        page.heading("rule books");
        for (RuleBook.Source book : report.book().books()) {
            page.paragraph("  ", book.file() + "  " + book.title());
        }
        page.heading("cautions");
        Cautions.in(report.book().locality().climate()).forEach(caution -> page.paragraph("  ", caution));
    }
}
