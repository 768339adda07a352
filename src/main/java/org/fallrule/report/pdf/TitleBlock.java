package org.fallrule.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.report.Report;

/** What a sheet is, at its foot: whose plan, which sheet, at what scale, from what, and when. */
final class TitleBlock {
    private static final double HEIGHT = 52;
    private static final double ROW = 12;
    private static final double PAD = 6;

    private final Galley galley;
    private final Report report;
    private final PrintSettings settings;

    TitleBlock(Galley galley, Report report, PrintSettings settings) {
        this.galley = galley;
        this.report = report;
        this.settings = settings;
    }

    void draw(String sheet, String scale) throws IOException {
        PdfPages pages = galley.pages();
        double width = pages.width();
        double middle = width * 0.58;
        pages.box(0, 0, width, HEIGHT);
        pages.box(middle, 0, width - middle, HEIGHT);
        PDStructureElement element = galley.under("P");
        String name = galley.bold().cut(Galley.shown(report.site().name()), 11, middle - 2 * PAD);
        pages.text(element, galley.bold(), 11, PAD, 15, name);
        line(
                element,
                PAD,
                1,
                middle,
                "County " + report.county() + "; " + report.site().crs());
        String heights = report.site().datum().map(datum -> "Heights " + datum).orElse("Heights in a datum not given");
        String surveyed =
                report.site().survey().date().map(date -> "surveyed " + date).orElse("surveyed on a day not given");
        line(element, PAD, 2, middle, heights + "; " + surveyed + "; drawn from these data, not a survey");
        pages.text(
                element, galley.bold(), 11, middle + PAD, 15, galley.bold().cut(sheet, 11, width - middle - 2 * PAD));
        line(
                element,
                middle + PAD,
                1,
                width,
                scale + ", on " + settings.paper().name() + " paper printed at full size");
        line(element, middle + PAD, 2, width, "Reviewed " + settings.reviewed() + ", Fallrule");
        pages.skip(HEIGHT);
    }

    private void line(PDStructureElement element, double left, int row, double right, String words) throws IOException {
        String shown = galley.regular().cut(Galley.shown(words), 8.5, right - left - PAD);
        galley.pages().text(element, galley.regular(), 8.5, left, 16 + row * ROW, shown);
    }
}
