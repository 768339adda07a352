package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.finding.Measured;
import org.fallrule.report.Sentence;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What a rule asks, as a line in a long section with its words. */
final class LimitLine {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private LimitLine() {}

    /** The limit in metres or as a ratio; zero where a value is held against none. */
    static double asked(Measured measured) {
        return measured.limit().map(limit -> limit.value().quantity().si()).orElse(0.0);
    }

    /** The line through the marks; none where a value is held against no limit. */
    static List<Shape> through(Measured measured, SectionScale scale, HeightMeasured.Mark... marks) {
        List<Coordinate> places = new ArrayList<>();
        for (HeightMeasured.Mark mark : marks) {
            places.add(scale.at(mark.station(), mark.level()));
        }
        return along(measured, places);
    }

    /** The line through places of the drawing. */
    static List<Shape> along(Measured measured, List<Coordinate> places) {
        if (measured.limit().isEmpty() || places.size() < 2) {
            return List.of();
        }
        Geometry line = GEOMETRY.createLineString(places.toArray(Coordinate[]::new));
        return List.of(new Shape.Line(Look.LEVEL_LIMIT, line, words(measured)), label(measured, line));
    }

    /** The words of the limit at a place or along a line. */
    static Shape label(Measured measured, Geometry of) {
        return new Shape.Label(Shape.Rank.LIMIT, words(measured), of, true);
    }

    static String words(Measured measured) {
        return PlainText.of(Sentence.asked(measured).orElse(""));
    }

    static Geometry point(Coordinate place) {
        return GEOMETRY.createPoint(place);
    }
}
