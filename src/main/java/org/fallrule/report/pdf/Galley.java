package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.report.Fact;
import org.fallrule.report.map.PlainText;

/** Sets headings, paragraphs, facts, lists and figures, one below the other. */
final class Galley {
    static final double TEXT = 9.5;
    static final double LINE = 12.5;
    private static final double[] HEADINGS = {19, 14, 11};
    private static final double FACT = 110;
    /** Characters of a text from a plan that are printed; more would be no help to anybody. */
    private static final int MOST = 1500;

    private static final int TITLE = 100;

    private final PdfPages pages;
    private final Typeface regular;
    private final Typeface bold;
    private final Bookmarks bookmarks;
    private final FindingLinks links;

    Galley(PDDocument document, Paper paper) throws IOException {
        this.pages = new PdfPages(document, paper);
        this.regular = Typeface.regular(document);
        this.bold = Typeface.semibold(document);
        this.bookmarks = new Bookmarks(document);
        this.links = new FindingLinks(pages.tags());
    }

    PdfPages pages() {
        return pages;
    }

    Typeface regular() {
        return regular;
    }

    Typeface bold() {
        return bold;
    }

    /** Leads the numbers on the drawings to their findings, and closes the last page with what stands at the foot of each. */
    void close(String foot) throws IOException {
        links.close();
        pages.close(regular, foot);
    }

    /** A text from a plan as it is printed: whole, or its beginning with an ellipsis. */
    static String shown(String text) {
        return PlainText.clipped(text, MOST);
    }

    /** A heading that stays with so much of what follows, and its bookmark. */
    void heading(int level, String text, double with) throws IOException {
        double size = HEADINGS[level - 1];
        List<String> lines = bold.lines(text, size, pages.width());
        pages.room(lines.size() * size * 1.4 + with);
        if (!pages.isFresh()) {
            pages.skip(size * 0.6);
        }
        bookmarks.add(level, PlainText.clipped(text, TITLE), pages.page(), pages.y());
        PDStructureElement element = under("H" + level);
        for (String line : lines) {
            pages.text(element, bold, size, 0, size * 1.1, line);
            pages.skip(size * 1.4);
        }
    }

    /** The heading of a finding, to which its number on the drawings leads. */
    void headingOf(int finding, String text, double with) throws IOException {
        heading(3, text, with);
        links.at(finding, pages.page(), pages.y() + HEADINGS[2] * 1.4);
    }

    /** An element of the document's own. */
    PDStructureElement under(String type) {
        return pages.tags().under(pages.tags().whole(), type);
    }

    void paragraph(String text) throws IOException {
        paragraph(under("P"), regular, TEXT, 0, text);
    }

    void strong(String text, double size) throws IOException {
        paragraph(under("P"), bold, size, 0, text);
    }

    private void paragraph(PDStructureElement element, Typeface face, double size, double left, String text)
            throws IOException {
        double line = size * LINE / TEXT;
        for (String words : face.lines(shown(text), size, pages.width() - left)) {
            pages.room(line);
            pages.text(element, face, size, left, line - 3, words);
            pages.skip(line);
        }
        pages.skip(2.5);
    }

    void list(List<String> items) throws IOException {
        PDStructureElement list = under("L");
        for (String item : items) {
            PDStructureElement entry = pages.tags().under(list, "LI");
            pages.room(LINE);
            pages.text(pages.tags().under(entry, "Lbl"), regular, TEXT, 0, LINE - 3, "\u2022");
            paragraph(pages.tags().under(entry, "LBody"), regular, TEXT, 11, item);
        }
    }

    /** Named facts in two columns. */
    void facts(List<Fact> facts) throws IOException {
        PDStructureElement table = under("Table");
        for (Fact fact : facts) {
            fact(table, fact, pages.width());
        }
        pages.skip(4);
    }

    /** A named fact as a row, no wider than so many points. */
    void fact(PDStructureElement table, Fact fact, double width) throws IOException {
        PDStructureElement row = pages.tags().under(table, "TR");
        PDStructureElement name = pages.tags().under(row, "TH");
        pages.tags().heads(name, "Row");
        PDStructureElement value = pages.tags().under(row, "TD");
        boolean first = true;
        for (String line : factLines(fact, width)) {
            pages.room(LINE);
            if (first) {
                pages.text(name, bold, TEXT, 0, LINE - 3, bold.cut(fact.name(), TEXT, FACT - 6));
            }
            first = false;
            pages.text(value, regular, TEXT, FACT, LINE - 3, line.isEmpty() ? " " : line);
            pages.skip(LINE);
        }
    }

    List<String> factLines(Fact fact, double width) {
        return regular.lines(shown(fact.value()), TEXT, width - FACT);
    }

    /** What is painted into a figure. */
    interface Painting {
        void paint(PdfCanvas canvas);
    }

    /**
     * A drawing at a place on the page, which it does not move.
     *
     * @param alternative what a reader hears in its place
     * @param left its left edge from the left margin, in points
     * @param scale points to a pixel of the drawing
     */
    void figure(String alternative, double left, double width, double height, double scale, Painting painting)
            throws IOException {
        PDStructureElement figure = under("Figure");
        double x = PdfPages.MARGIN + left;
        PDRectangle box = new PDRectangle((float) x, (float) (pages.y() - height), (float) width, (float) height);
        pages.tags().alternative(figure, shown(alternative), box);
        pages.content()
                .beginMarkedContent(COSName.getPDFName("Figure"), pages.tags().mark(figure, pages.page()));
        pages.content().saveGraphicsState();
        PdfCanvas canvas = new PdfCanvas(pages.content(), regular, bold, x, pages.y(), scale);
        painting.paint(canvas);
        pages.content().restoreGraphicsState();
        pages.content().endMarkedContent();
        links.over(canvas.links(), pages.page());
    }
}
