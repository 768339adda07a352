package org.fallrule.report.pdf;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** The document's headings, to jump to. */
final class Bookmarks {
    private final PDOutlineNode[] open = new PDOutlineNode[4];

    Bookmarks(PDDocument document) {
        PDDocumentOutline outline = new PDDocumentOutline();
        document.getDocumentCatalog().setDocumentOutline(outline);
        open[0] = outline;
    }

    /**
     * Adds a heading.
     *
     * @param level 1 to 3; no level below the heading's own is passed over
     * @param y where it stands on the page, in points from the lower edge
     */
    void add(int level, String title, PDPage page, double y) {
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(page);
        place.setTop((int) Math.ceil(y));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(place);
        open[level - 1].addLast(item);
        open[level] = item;
    }
}
