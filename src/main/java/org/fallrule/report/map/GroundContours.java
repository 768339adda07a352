package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.terrain.ContourLines;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Contours of the finished ground, drawn where the plan gives no contours of its own. */
final class GroundContours {
    /** Samples across the longer side of the map. */
    private static final double SAMPLES = 160;
    /** More lines than this would bury the plan. */
    private static final int MOST = 12;

    private static final List<Length> IN_FEET =
            List.of(Length.feet(0.5), Length.feet(1), Length.feet(2), Length.feet(5), Length.feet(10), Length.feet(20));
    private static final List<Length> IN_METRES =
            List.of(new Length(0.1), new Length(0.25), new Length(0.5), new Length(1), new Length(2), new Length(5));

    /** A line of one height, and as much of it as no building stands on. */
    private record Line(String height, String title, Geometry whole, Geometry bare) {}

    private final List<Line> lines;

    private GroundContours(List<Line> lines) {
        this.lines = lines;
    }

    /** The contours of the ground in a box. */
    static GroundContours over(SiteAnalysis analysis, Envelope box) {
        return new GroundContours(
                analysis.ground().map(ground -> lines(analysis, ground, box)).orElse(List.of()));
    }

    /** The layer of a view, with a height on each line; empty where there is no ground in it. */
    Optional<DrawingLayer> in(Envelope view) {
        Clip clip = new Clip(view);
        List<Shape> shapes = new ArrayList<>();
        for (Line line : lines) {
            Geometry visible = clip.of(line.whole());
            if (!visible.isEmpty()) {
                shapes.add(new Shape.Line(Look.CONTOUR, visible, line.title()));
                add(line, clip.of(line.bare()), shapes);
            }
        }
        return shapes.isEmpty() ? Optional.empty() : Optional.of(new DrawingLayer("contour", shapes));
    }

    private static void add(Line line, Geometry bare, List<Shape> shapes) {
        if (!bare.isEmpty()) {
            shapes.add(new Shape.Label(Shape.Rank.CONTOUR, line.height(), LabelCandidates.longest(bare), false));
        }
    }

    private static List<Line> lines(SiteAnalysis analysis, GroundSurface ground, Envelope around) {
        Envelope box = around.intersection(ground.extent());
        if (box.isNull() || box.getArea() == 0) {
            return List.of();
        }
        boolean metric = analysis.site().metric();
        Length spacing = new Length(Math.max(box.getWidth(), box.getHeight()) / SAMPLES);
        List<ContourLines.Contour> contours = ContourLines.of(ground, box, spacing, metric ? IN_METRES : IN_FEET, MOST);
        Unit unit = metric ? Unit.ELEVATION_METRE : Unit.ELEVATION_FOOT;
        Geometry buildings = FeatureShapes.buildingsIn(analysis.site());
        return contours.stream().map(contour -> line(contour, buildings, unit)).toList();
    }

    private static Line line(ContourLines.Contour contour, Geometry buildings, Unit unit) {
        Elevation level = contour.level();
        return new Line(
                Printed.trimmed(level.in(unit)),
                "contour " + Printed.of(level, unit),
                contour.lines(),
                OverlayNGRobust.overlay(contour.lines(), buildings, OverlayNG.DIFFERENCE));
    }
}
