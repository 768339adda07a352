package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.ExpectedLevel;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.FlowLine;
import org.fallrule.report.map.FeatureName;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.util.GeometricShapeFactory;

/**
 * Utilities that cross a line: a circle at its depth, as high as the utility is on the scale of heights; where the depth is
 * not known or not relied on, the band that it is expected in, or a line down from the ground.
 */
final class SectionCrossings {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Least radius in pixels. */
    private static final double LEAST = 3.5;

    private static final int SIDES = 32;

    private final SiteAnalysis analysis;
    private final List<Placed> all;

    SectionCrossings(SiteAnalysis analysis, FlowLine line) {
        this.analysis = analysis;
        this.all = line.legs().stream()
                .flatMap(leg ->
                        UtilityCrossing.along(analysis, leg.run()).stream().map(crossing -> new Placed(crossing, leg)))
                .toList();
    }

    /** A crossing and its station in metres along the line. */
    record Placed(UtilityCrossing crossing, FlowLine.Leg leg) {
        double station() {
            return leg.start() + crossing.station();
        }
    }

    List<Placed> all() {
        return all;
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
        String relied = crossing.isTopRelied() ? "" : ", as the plan says, not relied on";
        return new Shape.Area(
                Look.of(crossing.utility()),
                shape.createEllipse(),
                name(crossing) + size + relied,
                Optional.of(name(crossing)));
    }

    /** Whether no depth is known or relied on, but one may be expected. */
    static boolean isExpected(UtilityCrossing crossing) {
        boolean isKnown = crossing.top().isPresent() && crossing.isTopRelied();
        return !isKnown && crossing.expected().flatMap(ExpectedLevel::highest).isPresent();
    }

    /** {@code gas G-1, expected 12.0 in to 36.0 in deep, not known}. */
    String expected(UtilityCrossing crossing) {
        return name(crossing)
                + crossing.expected()
                        .map(level -> ", expected "
                                + analysis.site().printed(level.cover().from(), Unit.INCH) + " to "
                                + analysis.site().printed(level.cover().to(), Unit.INCH) + " deep, not known")
                        .orElse("");
    }

    /** The band that its top is expected in: an upright with a bar at either end. */
    private Shape band(Placed placed, SectionScale scale) {
        ExpectedLevel level = placed.crossing().expected().orElseThrow();
        Coordinate high = scale.at(placed.station(), level.highest().orElseThrow());
        Coordinate low = scale.at(placed.station(), level.lowest().orElseThrow());
        double half = scale.metres(LEAST);
        Geometry path = GEOMETRY.createLineString(new Coordinate[] {
            new Coordinate(high.x - half, high.y),
            new Coordinate(high.x + half, high.y),
            high,
            low,
            new Coordinate(low.x - half, low.y),
            new Coordinate(low.x + half, low.y)
        });
        return new Shape.Line(
                Look.of(placed.crossing().utility()),
                path,
                expected(placed.crossing()),
                Optional.of(name(placed.crossing())));
    }

    /** The utilities whose depth is not known: the band that it is expected in, else a line from the ground to the bottom. */
    List<Shape> unknown(SectionScale scale, double bottom, double top) {
        List<Shape> shapes = new ArrayList<>();
        for (Placed placed : all()) {
            if (isExpected(placed.crossing())) {
                shapes.add(band(placed, scale));
            } else if (placed.crossing().top().isEmpty()) {
                Optional<Elevation> ground = new GroundAlong(
                                analysis, placed.leg().run())
                        .at(placed.crossing().station());
                double from = ground.map(level -> scale.at(0, level).y).orElse(top);
                Geometry path = GEOMETRY.createLineString(new Coordinate[] {
                    new Coordinate(placed.station(), from), new Coordinate(placed.station(), bottom)
                });
                shapes.add(new Shape.Line(
                        Look.of(placed.crossing().utility()),
                        path,
                        name(placed.crossing()) + ", depth not known",
                        Optional.of(name(placed.crossing()))));
            }
        }
        return shapes;
    }

    static String name(UtilityCrossing crossing) {
        return FeatureName.of(crossing.utility());
    }
}
