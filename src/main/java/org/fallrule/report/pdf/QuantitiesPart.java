package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import org.fallrule.proposal.Proposal;
import org.fallrule.report.BillOfQuantities;
import org.fallrule.report.Report;

/** What a proposed line takes to build; left out where the report is of none. */
final class QuantitiesPart {
    private final Galley galley;
    private final Report report;

    QuantitiesPart(Galley galley, Report report) {
        this.galley = galley;
        this.report = report;
    }

    void write() throws IOException {
        if (report.outlook().proposed().isPresent()) {
            write(report.outlook().proposed().get());
        }
    }

    private void write(Proposal proposal) throws IOException {
        galley.heading(2, "What it takes to build", 120);
        List<List<String>> rows = BillOfQuantities.of(proposal).stream()
                .map(fact -> List.of(fact.name(), fact.value()))
                .toList();
        new DataTable(galley, List.of("item", "quantity"), rows).draw();
        galley.paragraph(BillOfQuantities.LEAD);
        galley.pages().skip(6);
    }
}
