package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.network.FlowLine;
import org.fallrule.network.InvertLine;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The findings that a long section can show: of a pipe's slope, and at a place on its axis such as of cover or a crossing. */
final class SectionFindings {
    private static final Set<Outcome> MARKED = EnumSet.of(Outcome.FAILS, Outcome.BORDERLINE);
    private static final int TITLE_LENGTH = 300;
    /** How far, in metres, a place may lie from the axis that it was measured on. */
    private static final double ON_AXIS = 0.02;

    private SectionFindings() {}

    static List<Shape> badges(Report report, FlowLine line, SectionScale scale) {
        List<Finding> findings = report.byNeed();
        List<Shape> badges = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (MARKED.contains(finding.outcome())) {
                int number = i + 1;
                line.legs().forEach(leg -> badge(finding, number, leg, scale).ifPresent(badges::add));
            }
        }
        return badges;
    }

    private static Optional<Shape> badge(Finding finding, int number, FlowLine.Leg leg, SectionScale scale) {
        Observation seen = finding.observation();
        boolean ofThisPipe = seen.subject().filter(leg.run().pipe()::equals).isPresent();
        if (!ofThisPipe) {
            return Optional.empty();
        }
        return station(seen, leg)
                .flatMap(station -> InvertLine.of(leg.run())
                        .map(invert -> new Shape.Badge(
                                finding.outcome(),
                                number,
                                scale.at(leg.start() + station, invert.at(station)),
                                PlainText.clipped(Sentence.of(finding), TITLE_LENGTH))));
    }

    private static Optional<Double> station(Observation seen, FlowLine.Leg leg) {
        boolean ofSlope = seen.measured()
                .map(Measured::value)
                .filter(value -> value.dimension() == Dimension.SLOPE)
                .isPresent();
        if (ofSlope) {
            return Optional.of(leg.run().axis().getLength() / 2);
        }
        Optional<Geometry> where = seen.where()
                .filter(place ->
                        place instanceof Point && place.distance(leg.run().axis()) < ON_AXIS);
        return where.map(place -> new LengthIndexedLine(leg.run().axis()).project(place.getCoordinate()));
    }
}
