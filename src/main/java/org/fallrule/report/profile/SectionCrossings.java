package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLine;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.util.GeometricShapeFactory;

/**
 * Utilities that cross a line: a circle at its depth, as high as the utility is on the scale of heights; where the depth is
 * not known a line down from the ground.
 */
final class SectionCrossings {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Least radius in pixels. */
    private static final double LEAST = 3.5;

    private static final int SIDES = 32;

    private final SiteAnalysis analysis;
    private final FlowLine line;

    SectionCrossings(SiteAnalysis analysis, FlowLine line) {
        this.analysis = analysis;
        this.line = line;
    }

    /** A crossing and its station in metres along the line. */
    record Placed(UtilityCrossing crossing, FlowLine.Leg leg) {
        double station() {
            return leg.start() + crossing.station();
        }
    }

    List<Placed> all() {
        return line.legs().stream()
                .flatMap(leg ->
                        UtilityCrossing.along(analysis, leg.run()).stream().map(crossing -> new Placed(crossing, leg)))
                .toList();
    }

    /** The utilities whose depth is known, as circles. */
    List<Shape> known(SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        for (Placed placed : all()) {
            placed.crossing().top().ifPresent(top -> shapes.add(circle(placed, top, scale)));
        }
        return shapes;
    }

    private static Shape circle(Placed placed, Elevation top, SectionScale scale) {
        UtilityCrossing crossing = placed.crossing();
        double height = crossing.size().map(Length::metres).orElse(0.0) * scale.exaggeration();
        double radius = Math.max(height / 2, scale.metres(LEAST));
        Coordinate crown = scale.at(placed.station(), top);
        GeometricShapeFactory shape = new GeometricShapeFactory(GEOMETRY);
        shape.setNumPoints(SIDES);
        shape.setCentre(new Coordinate(crown.x, crown.y - Math.max(height / 2, 0)));
        shape.setSize(2 * radius);
        String size = crossing.size().isPresent() ? "" : ", size not given";
        return new Shape.Area(Look.of(crossing.utility()), shape.createEllipse(), name(crossing) + size);
    }

    /** The utilities whose depth is not known, each as a line from the ground to the bottom of the drawing. */
    List<Shape> unknown(SectionScale scale, double bottom, double top) {
        List<Shape> shapes = new ArrayList<>();
        for (Placed placed : all()) {
            if (placed.crossing().top().isEmpty()) {
                Optional<Elevation> ground = new GroundAlong(
                                analysis, placed.leg().run())
                        .at(placed.crossing().station());
                double from = ground.map(level -> scale.at(0, level).y).orElse(top);
                Geometry path = GEOMETRY.createLineString(new Coordinate[] {
                    new Coordinate(placed.station(), from), new Coordinate(placed.station(), bottom)
                });
                shapes.add(new Shape.Line(
                        Look.of(placed.crossing().utility()), path, name(placed.crossing()) + ", depth not known"));
            }
        }
        return shapes;
    }

    static String name(UtilityCrossing crossing) {
        return PlainText.clipped(crossing.utility().spoken(), 120);
    }
}
