package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.network.FlowLine;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.gradesheet.SheetUnits;
import org.fallrule.report.map.Clip;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.DrawingLayer;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** The profile of one finding about a height: the ground and the drain there, what was measured, its value and the limit. */
public final class SectionSnippet {
    private static final SectionForm FORM = SectionForm.SNIPPET;
    /** Room in pixels around what is drawn. */
    private static final double MARGIN = 12;

    private final Report report;
    private final Finding finding;
    private final HeightMeasured height;

    private SectionSnippet(Report report, Finding finding, HeightMeasured height) {
        this.report = report;
        this.finding = finding;
        this.height = height;
    }

    /** Draws a finding; nothing when it did not measure a height. */
    public static Optional<Section> of(Report report, Finding finding) {
        return MeasuredHeights.of(report, finding)
                .map(height -> new SectionSnippet(report, finding, height).section());
    }

    private Section section() {
        SectionScale scale = scale();
        Envelope view = grown(extent(scale, layers(scale)), scale);
        List<DrawingLayer> layers = layers(scale).stream()
                .map(layer -> within(layer, new Clip(view)))
                .filter(layer -> !layer.shapes().isEmpty())
                .toList();
        String about = PlainText.clipped(Sentence.about(finding.observation()), 200);
        String says = PlainText.clipped(Sentence.of(finding), 600);
        Drawing drawing = new Drawing("Profile of " + about, says, view, layers);
        return new Section(
                height.reach(),
                SheetUnits.of(report.site()),
                drawing,
                scale,
                FORM,
                List.of(),
                List.of(),
                List.of());
    }

    private SectionScale scale() {
        double range = extent(SectionScale.NATURAL, layers(SectionScale.NATURAL)).getHeight();
        double length = height.reach().length().metres();
        if (!height.isTrue()) {
            return SectionScale.fitting(length, range, FORM);
        }
        double px = Math.min(FORM.plotWidth() / length, (FORM.greatestHeight() - 2 * MARGIN) / range);
        return new SectionScale(1, px);
    }

    /** What is drawn between the ends of the reach. */
    private Envelope extent(SectionScale scale, List<DrawingLayer> layers) {
        Reach reach = height.reach();
        double far = 1e6;
        Clip between = new Clip(new Envelope(reach.from() - 0.3, reach.to() + 1e-6, -far, far));
        Envelope extent = new Envelope();
        layers.stream().flatMap(layer -> within(layer, between).shapes().stream()).forEach(shape -> {
            geometry(shape).ifPresent(drawn -> extent.expandToInclude(drawn.getEnvelopeInternal()));
        });
        extent.expandToInclude(at(height.from(), scale));
        extent.expandToInclude(at(height.to(), scale));
        return extent;
    }

    private static Coordinate at(HeightMeasured.Mark mark, SectionScale scale) {
        return scale.at(mark.station(), mark.level());
    }

    private static Optional<Geometry> geometry(Shape shape) {
        if (shape instanceof Shape.Line line) {
            return Optional.of(line.path());
        }
        return shape instanceof Shape.Area area ? Optional.of(area.outline()) : Optional.empty();
    }

    /** The extent with room around it, no lower than the form asks; heights drawn true fill its width. */
    private Envelope grown(Envelope extent, SectionScale scale) {
        Envelope view = new Envelope(
                Math.min(extent.getMinX(), height.reach().from()),
                Math.max(extent.getMaxX(), height.reach().to()),
                extent.getMinY(),
                extent.getMaxY());
        view.expandBy(0, scale.metres(MARGIN));
        double lacking = Math.max(0, scale.metres(FORM.leastHeight()) - view.getHeight());
        view.expandBy(0, lacking / 2);
        double widest = scale.metres(FORM.plotWidth());
        double narrow = Math.min(scale.metres(2 * MARGIN), Math.max(0, widest - view.getWidth()));
        view.expandBy((height.isTrue() ? Math.max(0, widest - view.getWidth()) : narrow) / 2, 0);
        return view;
    }

    private List<DrawingLayer> layers(SectionScale scale) {
        List<DrawingLayer> layers = new ArrayList<>();
        layers.add(new DrawingLayer("limit", height.limit().apply(scale)));
        height.line().ifPresent(line -> along(line, scale, layers));
        String value = finding.observation().measured().map(Sentence::shown).orElse("");
        layers.add(new DrawingLayer(
                "measured",
                List.of(new Shape.Dimension(at(height.from(), scale), at(height.to(), scale), value))));
        return layers;
    }

    private void along(FlowLine line, SectionScale scale, List<DrawingLayer> layers) {
        List<Stand> stands = Stand.along(report.analysis(), line).stream()
                .filter(stand -> stand.station() >= height.reach().from() - 1e-6
                        && stand.station() <= height.reach().to() + 1e-6)
                .toList();
        SectionCrossings crossings = new SectionCrossings(report.analysis(), line);
        layers.add(new DrawingLayer("pipe", SectionPipes.shapes(line, scale)));
        layers.add(new DrawingLayer("ground", new SectionGround(report.analysis(), line).shapes(scale)));
        layers.add(new DrawingLayer("structure", SectionStructures.shapes(stands, scale)));
        layers.add(new DrawingLayer("utility", crossings.known(scale)));
    }

    private static DrawingLayer within(DrawingLayer layer, Clip clip) {
        return new DrawingLayer(
                layer.name(),
                layer.shapes().stream().flatMap(shape -> within(shape, clip)).toList());
    }

    private static Stream<Shape> within(Shape shape, Clip clip) {
        if (shape instanceof Shape.Line line) {
            Geometry part = clip.of(line.path());
            return part.isEmpty()
                    ? Stream.of()
                    : Stream.of(new Shape.Line(line.look(), part, line.title(), line.feature()));
        }
        if (shape instanceof Shape.Area area) {
            Geometry part = clip.of(area.outline());
            return part.isEmpty()
                    ? Stream.of()
                    : Stream.of(new Shape.Area(area.look(), part, area.title(), area.feature()));
        }
        if (shape instanceof Shape.Label label) {
            Geometry part = clip.of(label.of());
            return part.isEmpty() ? Stream.of() : Stream.of(new Shape.Label(label.rank(), label.text(), part, true));
        }
        return Stream.of(shape);
    }
}
