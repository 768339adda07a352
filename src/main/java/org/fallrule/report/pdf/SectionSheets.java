package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.fallrule.network.FlowLine;
import org.fallrule.report.Report;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.profile.Section;
import org.fallrule.report.profile.SectionDrawing;
import org.fallrule.report.profile.SectionForm;
import org.fallrule.report.profile.SectionPainter;

/** The long sections, each at scales that a rule measures. */
final class SectionSheets {
    private static final double HEADING = 40;
    /** What a heading and the scales take of a page. */
    private static final double ROOM = 105;

    /** Heights of the drawn part that are tried, in pixels. */
    private static final double[] HEIGHTS = {200, 140, 90};

    private static final int NAME = 80;

    private final Galley galley;
    private final Report report;

    SectionSheets(Galley galley, Report report) {
        this.galley = galley;
        this.report = report;
    }

    /** A section and the scale of its lengths. */
    private record Scaled(Section section, DrawingScale scale) {}

    void write() throws IOException {
        galley.heading(2, "Long sections", 200);
        List<FlowLine> lines = SectionDrawing.lines(report);
        galley.paragraph(
                lines.isEmpty()
                        ? "The plan has no pipes."
                        : "The drain under its ground along the flow: each line from its upper end down, stations from"
                                + " there.");
        for (FlowLine line : lines) {
            String name = PlainText.clipped(line.name(), NAME);
            Optional<Scaled> scaled = scaled(line);
            if (scaled.isEmpty()) {
                galley.heading(3, name, HEADING);
                galley.paragraph("Not drawn: neither the ground nor an invert is known along it.");
            } else {
                draw(name, scaled.get());
            }
        }
    }

    /** The section at the largest scale that it fits, drawn lower where much is written over it; nothing when it has nothing to draw. */
    private Optional<Scaled> scaled(FlowLine line) {
        Optional<Scaled> first = Optional.empty();
        for (double height : HEIGHTS) {
            Optional<Scaled> scaled = scaled(line, height);
            if (scaled.isEmpty()
                    || height(scaled.get().section()) <= galley.pages().height() - ROOM) {
                return scaled;
            }
            first = first.or(() -> scaled);
        }
        return first;
    }

    private Optional<Scaled> scaled(FlowLine line, double height) {
        double width = galley.pages().width() / PdfCanvas.POINTS;
        for (DrawingScale scale : DrawingScale.ofSections(report.site().metric())) {
            double px = scale.pointsPerMetre() / PdfCanvas.POINTS;
            if (line.length() * px > width - SectionForm.PAPER.left()) {
                continue;
            }
            SectionForm form = SectionForm.PAPER.wide(width).low(height).atMost(px);
            Optional<Section> section = SectionDrawing.of(report, line, form);
            if (section.isEmpty()) {
                return Optional.empty();
            }
            if (Math.abs(section.get().scale().pxPerMetre() - px) < 1e-6 * px) {
                return section.map(drawn -> new Scaled(drawn, scale));
            }
        }
        return Optional.empty();
    }

    /** The height of a section in points, with all that is written at it. */
    private double height(Section section) {
        PdfCanvas nowhere =
                new PdfCanvas(galley.pages().content(), galley.regular(), galley.bold(), 0, 0, PdfCanvas.POINTS);
        return new SectionPainter(nowhere, section).height() * PdfCanvas.POINTS;
    }

    private void draw(String name, Scaled scaled) throws IOException {
        Section section = scaled.section();
        double height = height(section);
        double scale = Math.min(1, (galley.pages().height() - ROOM) / height);
        String scales = scale < 1
                ? "Drawn smaller to go on one page: not to scale."
                : "Scale of lengths " + scaled.scale().words() + ", of heights "
                        + scaled.scale().exaggerated(section.scale().exaggeration()) + ".";
        galley.heading(3, name, Math.min(height, galley.pages().height() - ROOM) + Galley.LINE + 4);
        galley.paragraph(scales);
        galley.figure(
                section.drawing().title() + ". " + section.drawing().description() + " " + scales,
                0,
                section.form().width() * PdfCanvas.POINTS * scale,
                height * scale,
                PdfCanvas.POINTS * scale,
                canvas -> new SectionPainter(canvas, section).draw());
        galley.pages().skip(height * scale + 6);
    }
}
