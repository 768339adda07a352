package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.finding.Outcome;
import org.fallrule.proposal.StandingGround;
import org.fallrule.report.Fact;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.SiteFacts;
import org.fallrule.report.StandingWords;

/** The first page: whose plan it is, how it stands, what it rests on, and room for whoever answers for it. */
final class CoverPart {
    private static final double VERDICT = 13;
    private static final double BLOCK = 150;
    private static final List<String> SIGNED =
            List.of("Prepared by", "Licence or registration", "Signature", "Date", "Seal");

    private final Galley galley;
    private final Report report;
    private final PrintSettings settings;

    CoverPart(Galley galley, Report report, PrintSettings settings) {
        this.galley = galley;
        this.report = report;
        this.settings = settings;
    }

    void write() throws IOException {
        galley.paragraph("Drainage plan held against the rules");
        galley.heading(1, report.site().name(), 0);
        galley.pages().skip(6);
        galley.pages().rule(0, galley.pages().width(), 0, 2, 0);
        galley.pages().skip(6);
        galley.strong(report.verdict(), VERDICT);
        galley.pages().skip(6);
        counts();
        galley.facts(facts());
        for (StandingGround ground : report.outlook().standing()) {
            galley.paragraph(StandingWords.of(ground, report.site()));
        }
        galley.heading(2, "Rule books", 60);
        books();
        signature();
    }

    private void counts() throws IOException {
        List<String> outcomes =
                Arrays.stream(Outcome.values()).map(Outcome::spoken).toList();
        List<String> numbers = Arrays.stream(Outcome.values())
                .map(outcome -> String.valueOf(report.review().count(outcome)))
                .toList();
        new DataTable(galley, outcomes, List.of(numbers)).draw();
        galley.paragraph("Findings by outcome. Not checked is never counted as a pass.");
        galley.pages().skip(6);
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>(SiteFacts.of(report));
        RemedyWords.jointFact(report).ifPresent(facts::add);
        report.site().house().ifPresent(house -> facts.add(2, new Fact("house rules", house)));
        facts.add(new Fact("reviewed", settings.reviewed().toString()));
        return facts;
    }

    private void books() throws IOException {
        List<List<String>> rows = report.book().books().stream()
                .map(book -> List.of(book.title(), book.file(), book.sha256()))
                .toList();
        new DataTable(galley, List.of("title", "file", "SHA-256"), rows).draw();
        galley.paragraph("The lowest first; a later book changes single values of those before it.");
    }

    /** Room that is never filled in: only a person can answer for a plan. */
    private void signature() throws IOException {
        PdfPages pages = galley.pages();
        galley.heading(2, "Preparer", BLOCK);
        galley.paragraph("Left empty for the person who answers for this plan.");
        PDStructureElement list = galley.under("P");
        double width = pages.width();
        double cell = 34;
        for (int i = 0; i < SIGNED.size(); i++) {
            boolean seal = i == SIGNED.size() - 1;
            double x = seal ? width * 0.7 : 0;
            double top = seal ? 0 : i * (cell - 6);
            pages.box(x, top, seal ? width * 0.3 : width * 0.7, seal ? 4 * (cell - 6) : cell - 6);
            pages.text(list, galley.regular(), 8.5, x + 4, top + 10, SIGNED.get(i));
        }
        pages.skip(4 * (cell - 6) + 6);
    }
}
