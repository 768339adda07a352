package org.fallrule.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fallrule.report.Computation;
import org.fallrule.report.Report;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.water.Computations;

/** The report as a set of sheets to hand in. The same report with the same settings gives the same bytes. */
public final class ReportPdf {
    private ReportPdf() {}

    /** The report with the computations of its water. */
    public static byte[] write(Report report, PrintSettings settings) {
        return write(report, Computations.of(report.analysis()), settings);
    }

    /** The report with computations; their part is left out where there are none. */
    public static byte[] write(Report report, List<Computation> computations, PrintSettings settings) {
        String title = "Drainage plan review: " + Galley.shown(report.site().name());
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new DocumentFacts(document).write(title, settings.reviewed());
            Galley galley = new Galley(document, settings.paper());
            new CoverPart(galley, report, settings).write();
            PlanDrawing plan = new PlanDrawing(report);
            new PlanSheets(galley, report, plan, settings).write();
            galley.pages().nextUnlessFresh();
            new SectionSheets(galley, report).write();
            galley.pages().nextUnlessFresh();
            new QuantitiesPart(galley, report).write();
            new FindingsPart(galley, report, plan).write();
            new TablesPart(galley, report).write();
            new ComputationsPart(galley, computations).write();
            new ChecklistPart(galley, report).write();
            new ClosingPart(galley, report).write();
            galley.close(title + ", county " + report.county() + ", " + settings.reviewed());
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
