package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.network.FlowLine;
import org.fallrule.network.FlowLines;
import org.fallrule.network.InvertLine;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.DrawingLayer;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.ScaleBar;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** Draws the lines of a drain as long sections. */
public final class SectionDrawing {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Room in pixels around what is drawn. */
    private static final double MARGIN = 16;

    private static final double STRIP = 15;

    private final Report report;
    private final FlowLine line;
    private final SectionForm form;
    private final SectionGround ground;
    private final SectionCrossings crossings;
    private final List<Stand> stands;
    private final SectionWords words;

    private SectionDrawing(Report report, FlowLine line, SectionForm form) {
        this.report = report;
        this.line = line;
        this.ground = new SectionGround(report.analysis(), line);
        this.crossings = new SectionCrossings(report.analysis(), line);
        this.stands = Stand.along(report.analysis(), line);
        this.words = new SectionWords(report, line, ground, crossings, stands);
        this.form = form.withRight(Flags.width(stands.get(stands.size() - 1)) + SectionStructures.WIDTH);
    }

    /** The lines of a report's drain. */
    public static List<FlowLine> lines(Report report) {
        return FlowLines.of(report.analysis().network());
    }

    /** The section of a line; nothing when no height is known along it. */
    public static Optional<Section> of(Report report, FlowLine line, SectionForm form) {
        return new SectionDrawing(report, line, form).section();
    }

    private Optional<Section> section() {
        Envelope natural = extent(SectionScale.NATURAL);
        if (natural.isNull()) {
            return Optional.empty();
        }
        SectionScale scale = SectionScale.fitting(line.length(), natural.getHeight(), form);
        Envelope view = view(scale);
        String title = "Long section " + PlainText.clipped(line.name(), 60);
        Drawing drawing = new Drawing(
                title, words.description(scale), view, ScaleBar.GroundUnit.of(report.site()), layers(scale, view));
        SheetUnits units = SheetUnits.of(report.site());
        List<PipeFacts> facts =
                line.legs().stream().map(leg -> PipeFacts.of(leg, units)).toList();
        return Optional.of(
                new Section(new Reach(0, line.length()), units, drawing, scale, form, stands, facts, words.notes()));
    }

    private Envelope view(SectionScale scale) {
        Envelope view = extent(scale);
        view.expandToInclude(new Envelope(0, line.length(), view.getMinY(), view.getMaxY()));
        view.expandBy(scale.metres(SectionStructures.WIDTH), scale.metres(MARGIN));
        double missing = Math.max(0, scale.metres(form.leastHeight()) - view.getHeight());
        return new Envelope(
                view.getMinX(),
                view.getMaxX(),
                view.getMinY() - missing / 2,
                view.getMaxY() + missing / 2 + scale.metres(STRIP));
    }

    private Envelope extent(SectionScale scale) {
        Envelope extent = new Envelope();
        List<Shape> shapes = new ArrayList<>(ground.shapes(scale));
        shapes.addAll(SectionPipes.shapes(line, scale));
        shapes.addAll(SectionRemedies.shapes(report, line, scale));
        for (Shape shape : shapes) {
            if (shape instanceof Shape.Line path) {
                extent.expandToInclude(path.path().getEnvelopeInternal());
            } else if (shape instanceof Shape.Area area) {
                extent.expandToInclude(area.outline().getEnvelopeInternal());
            }
        }
        crossings
                .all()
                .forEach(placed -> placed.crossing().top().ifPresent(top -> {
                    extent.expandToInclude(scale.at(placed.station(), top));
                    placed.crossing()
                            .size()
                            .ifPresent(size -> extent.expandToInclude(scale.at(placed.station(), top.minus(size))));
                }));
        crossings.all().stream()
                .filter(placed -> SectionCrossings.isExpected(placed.crossing()))
                .forEach(placed -> placed.crossing().expected().ifPresent(level -> {
                    level.highest().ifPresent(high -> extent.expandToInclude(scale.at(placed.station(), high)));
                    level.lowest().ifPresent(low -> extent.expandToInclude(scale.at(placed.station(), low)));
                }));
        for (Stand stand : stands) {
            heights(stand).forEach(level -> extent.expandToInclude(scale.at(stand.station(), level)));
        }
        return extent;
    }

    private static List<Elevation> heights(Stand stand) {
        List<Elevation> heights = new ArrayList<>(stand.levels());
        stand.rim().ifPresent(heights::add);
        return heights;
    }

    private List<DrawingLayer> layers(SectionScale scale, Envelope view) {
        double strip = view.getMaxY() - scale.metres(STRIP);
        List<DrawingLayer> layers = new ArrayList<>();
        layers.add(new DrawingLayer("above", ground.strip(strip, view.getMaxY())));
        layers.add(new DrawingLayer("depth-unknown", crossings.unknown(scale, view.getMinY(), strip)));
        layers.add(new DrawingLayer("limit", CoverLimits.of(report).shapes(line, scale)));
        layers.add(new DrawingLayer("pipe", SectionPipes.shapes(line, scale)));
        layers.add(new DrawingLayer("remedy", SectionRemedies.shapes(report, line, scale)));
        layers.add(new DrawingLayer("ground", ground.shapes(scale)));
        layers.add(new DrawingLayer("structure", SectionStructures.shapes(stands, scale)));
        layers.add(new DrawingLayer("utility", crossings.known(scale)));
        layers.add(new DrawingLayer("unknown", unknown(view.getMinY() + scale.metres(11), strip - scale.metres(11))));
        layers.add(new DrawingLayer("findings", SectionFindings.badges(report, line, scale)));
        return layers.stream().filter(layer -> !layer.shapes().isEmpty()).toList();
    }

    /** Words where something is not drawn because it is not known. */
    private List<Shape> unknown(double low, double high) {
        List<Shape> shapes = new ArrayList<>();
        ground.gaps().forEach(gap -> shapes.add(words("ground not known", gap.from(), gap.to(), high)));
        line.legs().stream()
                .filter(leg -> InvertLine.of(leg.run()).isEmpty())
                .forEach(leg -> shapes.add(words("invert not given", leg.start(), leg.end(), low)));
        return shapes;
    }

    private static Shape words(String text, double from, double to, double height) {
        Coordinate[] ends = {new Coordinate(from, height), new Coordinate(to, height)};
        return new Shape.Label(Shape.Rank.SURFACE, text, GEOMETRY.createLineString(ends), false);
    }
}
