package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;

/** Numbers on the drawings that lead to their findings, which are printed later (ISO 32000-1, 12.5.6.5; ISO 14289-1, 7.18.5). */
final class FindingLinks {
    private final Tags tags;
    private final Map<Integer, PDPageXYZDestination> findings = new HashMap<>();
    private final List<Pending> pending = new ArrayList<>();

    /** A link whose finding is not printed yet. */
    private record Pending(int finding, PDAnnotationLink link) {}

    FindingLinks(Tags tags) {
        this.tags = tags;
    }

    /** Lays links over a drawing that was painted on a page. */
    void over(List<PdfCanvas.Link> links, PDPage page) throws IOException {
        if (links.isEmpty()) {
            return;
        }
        PDStructureElement together = tags.under(tags.whole(), "P");
        for (PdfCanvas.Link each : links) {
            PDAnnotationLink link = new PDAnnotationLink();
            float r = (float) each.radius();
            link.setRectangle(new PDRectangle(
                    (float) each.middle().x - r, (float) each.middle().y - r, /* width= */ 2 * r, /* height= */ 2 * r));
            link.setContents("Finding " + each.finding() + ": " + each.title());
            link.setBorder(withoutEdge());
            link.setPrinted(true);
            link.setPage(page);
            page.getAnnotations().add(link);
            tags.holds(tags.under(together, "Link"), link, page);
            pending.add(new Pending(each.finding(), link));
        }
    }

    private static COSArray withoutEdge() {
        COSArray border = new COSArray();
        for (int i = 0; i < 3; i++) {
            border.add(COSInteger.ZERO);
        }
        return border;
    }

    /** Notes where a finding is printed. */
    void at(int finding, PDPage page, double y) {
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(page);
        place.setTop((int) Math.ceil(y));
        findings.put(finding, place);
    }

    /** Leads every link to its finding. */
    void close() {
        for (Pending each : pending) {
            PDPageXYZDestination place = findings.get(each.finding());
            if (place == null) {
                throw new IllegalStateException("finding " + each.finding() + " is on a drawing but not printed");
            }
            each.link().setDestination(place);
        }
    }
}
