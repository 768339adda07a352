package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.report.Fact;
import org.fallrule.report.FindingFacts;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.Furniture;
import org.fallrule.report.map.MapPainter;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.ScaleBar;
import org.fallrule.report.map.SnippetDrawing;
import org.fallrule.report.map.Viewport;

/** One finding with every fact, and its map beside them. */
final class FindingCard {
    private static final double MAP_PX = 340;
    private static final double SCALE = 0.62;
    private static final double GAP = 14;
    private static final double HEADING = 34;
    private static final int TITLE = 140;

    private final Galley galley;
    private final Report report;
    private final String title;
    private final List<Fact> facts;
    private final Optional<Drawing> map;

    FindingCard(Galley galley, Report report, int number, Finding finding) {
        this.galley = galley;
        this.report = report;
        this.title = number + "  " + finding.outcome().spoken() + ", "
                + finding.weight().word() + ": " + PlainText.clipped(finding.title(), TITLE);
        this.facts = facts(report, finding);
        this.map = SnippetDrawing.of(report, finding);
    }

    private static List<Fact> facts(Report report, Finding finding) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("finding", Sentence.of(finding)));
        for (Missing missing : finding.observation().missing()) {
            facts.add(new Fact("missing", missing.what()));
            facts.add(new Fact("to settle it", missing.settledBy()));
        }
        RemedyWords.of(report, finding).ifPresent(facts::add);
        facts.addAll(FindingFacts.of(finding));
        facts.add(new Fact("rule", finding.rule()));
        return facts;
    }

    void write() throws IOException {
        PdfPages pages = galley.pages();
        double most = pages.height() - HEADING;
        double width = pages.width() - (map.isPresent() ? MAP_PX * SCALE + GAP : 0);
        double words = facts.stream()
                        .mapToInt(fact -> galley.factLines(fact, width).size())
                        .sum()
                * Galley.LINE;
        double picture = map.map(this::height).orElse(0.0) * SCALE;
        galley.heading(3, title, Math.min(most, Math.max(words, picture)));
        if (map.isPresent()) {
            figure(map.get(), width + GAP);
        }
        double before = pages.y();
        int page = pages.number();
        PDStructureElement table = galley.under("Table");
        for (Fact fact : facts) {
            galley.fact(table, fact, width);
        }
        if (pages.number() == page) {
            pages.skip(Math.max(0, picture - (before - pages.y())));
        }
        pages.skip(6);
        pages.rule(0, pages.width(), 0, 0.4, 0.6);
        pages.skip(4);
    }

    private double height(Drawing drawing) {
        PdfCanvas nowhere =
                new PdfCanvas(galley.pages().content(), galley.regular(), galley.bold(), 0, 0, PdfCanvas.POINTS);
        return Viewport.of(drawing.view(), MAP_PX).height()
                + 4
                + furniture(nowhere, drawing).height();
    }

    private Furniture furniture(PdfCanvas canvas, Drawing drawing) {
        ScaleBar.GroundUnit unit = report.site().metric() ? ScaleBar.GroundUnit.METRES : ScaleBar.GroundUnit.FEET;
        return new Furniture(canvas, drawing, unit, MAP_PX);
    }

    private void figure(Drawing drawing, double left) throws IOException {
        Viewport viewport = Viewport.of(drawing.view(), MAP_PX);
        galley.figure(
                drawing.title() + ". " + drawing.description(),
                left,
                MAP_PX * SCALE,
                height(drawing) * SCALE,
                SCALE,
                canvas -> {
                    MapPainter painter = new MapPainter(canvas, drawing, viewport);
                    canvas.clipped(viewport.width(), viewport.height(), painter::inside);
                    painter.frame();
                    furniture(canvas, drawing).draw(0, viewport.height() + 4, viewport.pxPerMetre());
                });
    }
}
