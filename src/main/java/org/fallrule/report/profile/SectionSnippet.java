package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.network.FlowLine;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.Clip;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.DrawingLayer;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.ScaleBar;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * The profile of one finding about a height: the ground and the drain there, what was measured, its value and the limit.
 * What the key of the long sections explains it does not explain again, nor the limit, at which its words stand.
 */
public final class SectionSnippet {
    /** What its key does not speak of. */
    public static final Set<Look> EXPLAINED = Arrays.stream(Look.values())
            .filter(look -> SectionKey.isUtility(look) || SectionKey.isOfDrain(look) || look == Look.LEVEL_LIMIT)
            .collect(Collectors.toUnmodifiableSet());

    private static final SectionForm FORM = SectionForm.SNIPPET;
    /** Room in pixels around what is drawn. */
    private static final double MARGIN = 18;
    /** Metres beyond any height. */
    private static final double FAR = 1e6;

    private final Report report;
    private final Finding finding;
    private final HeightMeasured height;
    private final Optional<SectionCrossings> crossings;

    private SectionSnippet(Report report, Finding finding, HeightMeasured height) {
        this.report = report;
        this.finding = finding;
        this.height = height;
        this.crossings = height.line().map(line -> new SectionCrossings(report.analysis(), line));
    }

    /** Draws a finding; nothing when it did not measure a height. */
    public static Optional<Section> of(Report report, Finding finding) {
        return MeasuredHeights.of(report, finding).map(height -> new SectionSnippet(report, finding, height).section());
    }

    private Section section() {
        SectionScale scale = scale();
        List<DrawingLayer> whole = layers(scale);
        Envelope view = grown(extent(scale, whole), scale);
        List<DrawingLayer> layers = whole.stream()
                .map(layer -> within(layer, new Clip(view)))
                .filter(layer -> !layer.shapes().isEmpty())
                .toList();
        String about = PlainText.clipped(Sentence.about(finding.observation()), 200);
        String says = PlainText.clipped(Sentence.of(finding), 600);
        Drawing drawing = new Drawing("Profile of " + about, says, view, ScaleBar.GroundUnit.of(report.site()), layers);
        return new Section(
                height.reach(), SheetUnits.of(report.site()), drawing, scale, FORM, List.of(), List.of(), List.of());
    }

    private SectionScale scale() {
        SectionForm inside = FORM.wide(FORM.width() - 2 * MARGIN).low(FORM.greatestHeight() - 2 * MARGIN);
        double length = height.reach().length().metres();
        SectionScale fullWidth = SectionScale.fitting(length, 0, inside).natural();
        double range = extent(fullWidth, layers(fullWidth)).getHeight();
        return height.isTrue()
                ? new SectionScale(1, Math.min(fullWidth.pxPerMetre(), inside.greatestHeight() / range))
                : SectionScale.fitting(length, range, inside);
    }

    /** What is drawn between the ends of the reach. */
    private Envelope extent(SectionScale scale, List<DrawingLayer> layers) {
        Reach reach = height.reach();
        Clip between = new Clip(new Envelope(reach.from(), reach.to(), -FAR, FAR));
        Envelope extent = new Envelope();
        layers.stream()
                .flatMap(layer -> within(layer, between).shapes().stream())
                .forEach(shape -> {
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
        Envelope view = new Envelope(height.reach().from(), height.reach().to(), extent.getMinY(), extent.getMaxY());
        view.expandBy(scale.metres(MARGIN));
        double lower = Math.max(0, scale.metres(FORM.leastHeight()) - view.getHeight());
        double narrower = height.isTrue() ? Math.max(0, scale.metres(FORM.plotWidth()) - view.getWidth()) : 0;
        view.expandBy(narrower / 2, lower / 2);
        return view;
    }

    private List<DrawingLayer> layers(SectionScale scale) {
        List<DrawingLayer> layers = new ArrayList<>();
        layers.add(new DrawingLayer("limit", height.limit().apply(scale)));
        height.line().ifPresent(line -> along(line, scale, layers));
        String value = finding.observation().measured().map(Sentence::shown).orElse("");
        layers.add(new DrawingLayer(
                "measured", List.of(new Shape.Dimension(at(height.from(), scale), at(height.to(), scale), value))));
        return layers;
    }

    private void along(FlowLine line, SectionScale scale, List<DrawingLayer> layers) {
        List<Stand> stands = Stand.along(report.analysis(), line).stream()
                .filter(stand -> stand.station() >= height.reach().from() - 1e-6
                        && stand.station() <= height.reach().to() + 1e-6)
                .toList();
        layers.add(new DrawingLayer("pipe", SectionPipes.shapes(line, scale)));
        layers.add(new DrawingLayer("ground", new SectionGround(report.analysis(), line).shapes(scale)));
        layers.add(new DrawingLayer("structure", SectionStructures.shapes(stands, scale)));
        layers.add(new DrawingLayer(
                "utility", crossings.map(all -> all.known(scale)).orElse(List.of())));
        layers.add(new DrawingLayer("names", names(stands, scale)));
    }

    private static List<Shape> names(List<Stand> stands, SectionScale scale) {
        List<Shape> names = new ArrayList<>();
        for (Stand stand : stands) {
            stand.rim()
                    .or(stand::ground)
                    .filter(top -> !stand.name().equals("joint"))
                    .map(top -> LimitLine.point(scale.at(stand.station(), top)))
                    .ifPresent(top -> names.add(new Shape.Label(Shape.Rank.INLET, stand.name(), top, false)));
        }
        return names;
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
            return part.isEmpty()
                    ? Stream.of()
                    : Stream.of(new Shape.Label(label.rank(), label.text(), part, label.kept()));
        }
        return Stream.of(shape);
    }
}
