package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.fallrule.finding.Finding;
import org.fallrule.report.Report;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.SvgWriter;

/** The findings: those that need a person each with its map and every fact, the settled ones in a table. */
final class FindingsPart {
    private final Galley galley;
    private final Report report;
    private final PlanDrawing plan;

    FindingsPart(Galley galley, Report report, PlanDrawing plan) {
        this.plan = plan;
        this.galley = galley;
        this.report = report;
    }

    void write() throws IOException {
        galley.heading(2, "Findings", 120);
        galley.paragraph(
                "Binding ones first, then advice; of each those that fail, are borderline, cannot be told. A number on the plan or in a long"
                        + " section is that of a finding. Signs and lines that the plan's legend and the key of the long"
                        + " sections explain are not explained again.");
        Set<Look> explained =
                plan.drawing(0, Double.POSITIVE_INFINITY).map(SvgWriter::legend).orElse(Set.of());
        List<Finding> findings = report.byNeed();
        int settled = 0;
        for (int i = 0; i < findings.size(); i++) {
            if (findings.get(i).outcome().isOpen()) {
                new FindingCard(galley, report, explained, i + 1, findings.get(i)).write();
                settled = i + 1;
            }
        }
        if (settled == 0) {
            galley.paragraph("None fails, none is borderline, none cannot be told.");
        }
        settled(findings, settled);
    }

    private void settled(List<Finding> findings, int from) throws IOException {
        galley.heading(2, "Settled findings", 120);
        galley.paragraph(
                "Findings that meet their rule, that the plan has nothing for, or that have been waived. The page and the table that come"
                        + " with this report tell each by itself.");
        List<List<String>> rows = SettledRows.of(findings.subList(from, findings.size()), from + 1);
        if (rows.isEmpty()) {
            galley.paragraph("None.");
        } else {
            new DataTable(galley, SettledRows.COLUMNS, rows).draw();
        }
    }
}
