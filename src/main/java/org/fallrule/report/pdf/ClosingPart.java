package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.report.Cautions;
import org.fallrule.report.Report;

/** What is wrong with the input, and what every report warns of. */
final class ClosingPart {
    private static final int MOST = 200;

    private final Galley galley;
    private final Report report;

    ClosingPart(Galley galley, Report report) {
        this.galley = galley;
        this.report = report;
    }

    void write() throws IOException {
        galley.heading(2, "Problems with the input", 40);
        List<Fault> problems = report.review().problems();
        if (problems.isEmpty()) {
            galley.paragraph("None.");
        } else {
            galley.list(problems.stream().limit(MOST).map(Fault::toString).toList());
        }
        if (problems.size() > MOST) {
            galley.paragraph("And " + (problems.size() - MOST) + " more, which findings.json lists.");
        }
        galley.heading(2, "Cautions", 60);
        galley.list(Cautions.in(report.book().locality().climate()));
    }
}
