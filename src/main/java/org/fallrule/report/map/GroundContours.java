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

    private GroundContours() {}

    /** The layer, with a height on each line; empty where there is no ground in view. */
    static Optional<DrawingLayer> in(SiteAnalysis analysis, Envelope view) {
        return analysis.ground()
                .map(ground -> shapes(analysis, ground, view))
                .filter(shapes -> !shapes.isEmpty())
                .map(shapes -> new DrawingLayer("contour", shapes));
    }

    private static List<Shape> shapes(SiteAnalysis analysis, GroundSurface ground, Envelope view) {
        Envelope box = view.intersection(ground.extent());
        if (box.isNull() || box.getArea() == 0) {
            return List.of();
        }
        boolean metric = analysis.site().metric();
        Length spacing = new Length(Math.max(box.getWidth(), box.getHeight()) / SAMPLES);
        List<ContourLines.Contour> contours = ContourLines.of(ground, box, spacing, metric ? IN_METRES : IN_FEET, MOST);
        Unit unit = metric ? Unit.ELEVATION_METRE : Unit.ELEVATION_FOOT;
        List<Shape> shapes = new ArrayList<>();
        Geometry buildings = FeatureShapes.buildingsIn(analysis.site());
        contours.forEach(contour -> add(contour, buildings, unit, shapes));
        return shapes;
    }

    private static void add(ContourLines.Contour contour, Geometry buildings, Unit unit, List<Shape> shapes) {
        Elevation level = contour.level();
        shapes.add(new Shape.Line(Look.CONTOUR, contour.lines(), "contour " + Printed.of(level, unit)));
        Geometry bare = contour.lines().difference(buildings);
        if (!bare.isEmpty()) {
            Geometry longest = LabelCandidates.longest(bare);
            shapes.add(new Shape.Label(Shape.Rank.CONTOUR, Printed.trimmed(level.in(unit)), longest, false));
        }
    }
}
