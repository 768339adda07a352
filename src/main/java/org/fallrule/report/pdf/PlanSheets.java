package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.report.Report;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.Furniture;
import org.fallrule.report.map.MapPainter;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.Viewport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The plan at a scale that a rule measures: on one sheet at the largest scale that it fits, or on several. */
final class PlanSheets {
    /** Ground shown around the plan, in metres; a share where the plan is large. */
    private static final double AROUND = 2;

    private static final double SHARE = 0.04;
    private static final int MOST_SHEETS = 12;
    /** Points by which two lengths may differ and be equal. */
    private static final double SLACK = 1e-6;

    private static final double HEADING = 30;
    private static final double TITLE_BLOCK = 64;
    private static final double GAP = 8;

    private final Galley galley;
    private final Report report;
    private final PlanDrawing plan;
    private final TitleBlock block;
    private final boolean metric;

    PlanSheets(Galley galley, Report report, PlanDrawing plan, PrintSettings settings) {
        this.plan = plan;
        this.galley = galley;
        this.report = report;
        this.metric = report.site().metric();
        this.block = new TitleBlock(galley, report, settings);
    }

    /**
     * The views of the sheets at a scale.
     *
     * @param scale the scale
     * @param views the parts of the plan in metres, row by row from the north
     * @param across how many sheets lie beside each other
     */
    private record Layout(DrawingScale scale, List<Envelope> views, int across) {}

    void write() throws IOException {
        Optional<Envelope> extent = PlanDrawing.extent(report);
        galley.pages().turn(false);
        if (extent.isEmpty()) {
            galley.heading(2, "Plan", 40);
            galley.paragraph("The plan has nothing that could be drawn.");
            return;
        }
        Layout layout = layout(extent.get());
        for (int i = 0; i < layout.views().size(); i++) {
            galley.pages().nextUnlessFresh();
            sheet(layout, i);
        }
    }

    private Layout layout(Envelope extent) {
        Envelope roomy = extent.copy();
        roomy.expandBy(Math.max(AROUND, SHARE * Math.max(extent.getWidth(), extent.getHeight())));
        List<DrawingScale> usual = metric ? DrawingScale.METRIC : DrawingScale.FEET;
        for (DrawingScale scale : usual) {
            if (!mayFit(scale, roomy)) {
                continue;
            }
            Layout layout = at(scale, roomy);
            if (layout.views().size() == 1) {
                return layout;
            }
        }
        Stream<DrawingScale> small = (metric ? DrawingScale.SMALL_METRIC : DrawingScale.MANY_FEET).stream();
        List<Layout> layouts = Stream.concat(Stream.of(usual.get(usual.size() - 1)), small)
                .map(scale -> at(scale, roomy))
                .toList();
        return layouts.stream()
                .filter(layout -> layout.views().size() <= MOST_SHEETS)
                .findFirst()
                .orElse(layouts.get(layouts.size() - 1));
    }

    /** Whether one sheet could hold the plan at a scale if it had no legend, which takes a drawing to know. */
    private boolean mayFit(DrawingScale scale, Envelope roomy) {
        return roomy.getWidth() * scale.pointsPerMetre() <= galley.pages().width() + SLACK
                && roomy.getHeight() * scale.pointsPerMetre() <= room() + SLACK;
    }

    /** The sheets that the plan takes at a scale; they lie evenly about its middle. */
    private Layout at(DrawingScale scale, Envelope roomy) {
        double width = galley.pages().width() / scale.pointsPerMetre();
        double most = room() / scale.pointsPerMetre();
        Envelope widest = about(roomy.centre(), width, most);
        double height = (room() - legend(widest) * PdfCanvas.POINTS) / scale.pointsPerMetre();
        long across = (long) Math.ceil(roomy.getWidth() / width - 1e-9);
        long down = (long) Math.ceil(roomy.getHeight() / height - 1e-9);
        List<Envelope> views = new ArrayList<>();
        for (long k = 0; k < Math.min(across * down, MOST_SHEETS + 1L); k++) {
            long row = k / across;
            double x = roomy.centre().x + (k % across - (across - 1) / 2.0) * width;
            double y = roomy.centre().y + ((down - 1) / 2.0 - row) * height;
            views.add(about(new Coordinate(x, y), width, height));
        }
        return new Layout(scale, views, (int) across);
    }

    private static Envelope about(Coordinate middle, double width, double height) {
        return new Envelope(middle.x - width / 2, middle.x + width / 2, middle.y - height / 2, middle.y + height / 2);
    }

    /** The height in points for the map and what belongs under it. */
    private double room() {
        return galley.pages().height() - HEADING - TITLE_BLOCK - 2 * GAP;
    }

    private double legend(Envelope view) {
        PdfCanvas nowhere =
                new PdfCanvas(galley.pages().content(), galley.regular(), galley.bold(), 0, 0, PdfCanvas.POINTS);
        return furniture(nowhere, plan.drawing(view)).height();
    }

    private Furniture furniture(PdfCanvas canvas, Drawing drawing) {
        return new Furniture(canvas, drawing, galley.pages().width() / PdfCanvas.POINTS);
    }

    private void sheet(Layout layout, int number) throws IOException {
        int sheets = layout.views().size();
        Drawing drawing = plan.drawing(layout.views().get(number));
        String which = sheets == 1
                ? ""
                : ", sheet " + (number + 1) + " of " + sheets + " (row " + (number / layout.across() + 1) + ", column "
                        + (number % layout.across() + 1) + ")";
        galley.heading(2, "Plan" + which, 0);
        Viewport viewport = new Viewport(drawing.view(), layout.scale().pointsPerMetre() / PdfCanvas.POINTS);
        double height = viewport.height() + GAP / PdfCanvas.POINTS + legend(drawing.view());
        galley.figure(
                drawing.description() + " Scale " + layout.scale().words() + ".",
                0,
                viewport.width() * PdfCanvas.POINTS,
                height * PdfCanvas.POINTS,
                PdfCanvas.POINTS,
                canvas -> {
                    MapPainter map = new MapPainter(canvas, drawing, viewport);
                    canvas.clipped(viewport.width(), viewport.height(), map::inside);
                    map.frame();
                    furniture(canvas, drawing)
                            .draw(0, viewport.height() + GAP / PdfCanvas.POINTS, viewport.pxPerMetre());
                });
        galley.pages().skip(galley.pages().left() - TITLE_BLOCK);
        block.draw("Plan" + which, "Scale " + layout.scale().words());
    }
}
