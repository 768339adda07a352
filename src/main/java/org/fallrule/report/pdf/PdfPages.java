package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Pages that are written from the top down; a new one begins where the last is full. Lengths in points. */
final class PdfPages {
    static final double MARGIN = 48;
    private static final double FOOT = 26;

    private final PDDocument document;
    private final Paper paper;
    private final Tags tags;
    private final List<PDPage> pages = new ArrayList<>();
    private PDRectangle size;
    private PDPageContentStream content;
    private double y;

    PdfPages(PDDocument document, Paper paper) throws IOException {
        this.document = document;
        this.paper = paper;
        this.tags = new Tags(document);
        this.size = paper.size();
        this.content = open();
    }

    Tags tags() {
        return tags;
    }

    double width() {
        return size.getWidth() - 2 * MARGIN;
    }

    /** The height that is left on the page. */
    double left() {
        return y - MARGIN - FOOT;
    }

    /** The height of a page between its margins. */
    double height() {
        return size.getHeight() - 2 * MARGIN - FOOT;
    }

    boolean isFresh() {
        return y == size.getHeight() - MARGIN;
    }

    boolean isWide() {
        return size.getWidth() > size.getHeight();
    }

    /** The width between the margins of a page that is higher than wide. */
    double upright() {
        return paper.size().getWidth() - 2 * MARGIN;
    }

    /** The page's number, from 1. */
    int number() {
        return pages.size();
    }

    PDPage page() {
        return pages.get(pages.size() - 1);
    }

    PDPageContentStream content() {
        return content;
    }

    /** Where the page is written to, from its lower edge. */
    double y() {
        return y;
    }

    private PDPageContentStream open() throws IOException {
        PDPage page = new PDPage(size);
        document.addPage(page);
        pages.add(page);
        tags.begin(page);
        y = size.getHeight() - MARGIN;
        return new PDPageContentStream(document, page);
    }

    /** Begins a new page unless so much height is left on this one; tells whether it did. */
    boolean room(double height) throws IOException {
        if (y - height >= MARGIN + FOOT) {
            return false;
        }
        next();
        return true;
    }

    /** Begins a page that is wider than high, or higher than wide; nothing happens on a page of that form without a mark. */
    void turn(boolean wide) throws IOException {
        PDRectangle upright = paper.size();
        PDRectangle wanted =
                wide ? new PDRectangle(/* width= */ upright.getHeight(), /* height= */ upright.getWidth()) : upright;
        if (isFresh() && wanted.getWidth() == size.getWidth()) {
            return;
        }
        boolean replace = isFresh();
        size = wanted;
        if (replace) {
            page().setMediaBox(size);
            y = size.getHeight() - MARGIN;
        } else {
            next();
        }
    }

    /** Begins a page, unless nothing stands on this one yet. */
    void nextUnlessFresh() throws IOException {
        if (!isFresh()) {
            next();
        }
    }

    private void next() throws IOException {
        content.close();
        content = open();
    }

    /** Goes down. */
    void skip(double height) {
        y -= height;
    }

    /** Text that stands so far from the left margin, its line's middle so far below where the page is written to. */
    void text(PDStructureElement element, Typeface face, double size, double x, double below, String text)
            throws IOException {
        content.beginMarkedContent(COSName.getPDFName(element.getStructureType()), tags.mark(element, page()));
        show(content, face, size, MARGIN + x, y - below, text);
        content.endMarkedContent();
    }

    /** Text outside of the document's structure, which the caller has marked. */
    void show(Typeface face, double size, double x, double below, String text) throws IOException {
        show(content, face, size, MARGIN + x, y - below, text);
    }

    private static void show(PDPageContentStream content, Typeface face, double size, double x, double y, String text)
            throws IOException {
        content.beginText();
        content.setFont(face.font(), (float) size);
        content.newLineAtOffset((float) x, (float) y);
        content.showText(text);
        content.endText();
    }

    /** A line across the page, which says nothing. */
    void rule(double x, double right, double below, double width, double grey) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        content.setStrokingColor((float) grey);
        content.setLineWidth((float) width);
        content.moveTo((float) (MARGIN + x), (float) (y - below));
        content.lineTo((float) (MARGIN + right), (float) (y - below));
        content.stroke();
        content.endMarkedContent();
    }

    /** A bar, which says nothing that words do not say too. */
    void bar(double x, double width, double height, double grey) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        content.setNonStrokingColor((float) grey);
        content.addRect((float) (MARGIN + x), (float) (y - height), (float) width, (float) height);
        content.fill();
        content.setNonStrokingColor(0f);
        content.endMarkedContent();
    }

    /** An empty box with its upper edge so far below where the page is written to. */
    void box(double x, double below, double width, double height) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        content.setStrokingColor(0.25f);
        content.setLineWidth(0.8f);
        content.addRect((float) (MARGIN + x), (float) (y - below - height), (float) width, (float) height);
        content.stroke();
        content.endMarkedContent();
    }

    /** Closes the last page and writes at the foot of each what the document is and its number. */
    void close(Typeface face, String title) throws IOException {
        content.close();
        for (int i = 0; i < pages.size(); i++) {
            String number = "page " + (i + 1) + " of " + pages.size();
            double right = pages.get(i).getMediaBox().getWidth() - MARGIN;
            double room = right - MARGIN - face.width(number, 9) - 12;
            String shown = face.cut(title, 9, room);
            try (PDPageContentStream foot = new PDPageContentStream(
                    document, pages.get(i), PDPageContentStream.AppendMode.APPEND, true, true)) {
                foot.beginMarkedContent(COSName.ARTIFACT);
                show(foot, face, 9, MARGIN, MARGIN, shown);
                show(foot, face, 9, right - face.width(number, 9), MARGIN, number);
                foot.endMarkedContent();
            }
        }
        tags.close();
    }
}
