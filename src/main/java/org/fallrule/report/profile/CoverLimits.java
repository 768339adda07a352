package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.Stretch;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeProfile;
import org.fallrule.report.Report;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** How high a pipe's top may come under the ground: the ground less the cover that the rules ask there. */
final class CoverLimits {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** How far apart, in metres, the limit is looked up along the pipe. */
    private static final double STEP = 0.05;

    private final Report report;
    private final List<Limits> limits;

    private CoverLimits(Report report, Predicate<Rule> which) {
        this.report = report;
        this.limits = report.book().rules().stream()
                .filter(rule -> rule.check().name().equals("cover"))
                .filter(which)
                .flatMap(rule -> leastCover(rule).stream())
                .toList();
    }

    /** What all the rules of cover ask together. */
    static CoverLimits of(Report report) {
        return new CoverLimits(report, rule -> true);
    }

    /** What one rule asks, by its id. */
    static CoverLimits of(Report report, String id) {
        return new CoverLimits(report, rule -> rule.id().equals(id));
    }

    private static Optional<Limits> leastCover(Rule rule) {
        return rule.check().parameters().stream()
                .filter(parameter ->
                        parameter.form() instanceof Parameter.Form.LimitOf limit && limit.bound() == Bound.AT_LEAST)
                .findFirst()
                .flatMap(rule.terms()::find)
                .map(Limits.class::cast);
    }

    List<Shape> shapes(FlowLine line, SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        for (FlowLine.Leg leg : line.legs()) {
            PipeProfile.of(leg.run()).ifPresent(pipe -> along(leg, pipe, scale, shapes));
        }
        return shapes;
    }

    private void along(FlowLine.Leg leg, PipeProfile pipe, SectionScale scale, List<Shape> shapes) {
        LongSection section = new LongSection(report.analysis(), leg.run(), pipe);
        List<Coordinate> run = new ArrayList<>();
        for (Stretch piece : section.pieces(pipe::topAt)) {
            int steps = (int) Math.max(1, Math.ceil((piece.to() - piece.from()) / STEP));
            for (int i = 0; i <= steps && piece.isKnown(); i++) {
                double station = piece.from() + (piece.to() - piece.from()) * i / steps;
                Optional<Elevation> level = asked(piece, station)
                        .flatMap(cover -> section.heightAt(station, pipe::topAt)
                                .map(height -> pipe.topAt(station).plus(height).minus(cover)));
                if (level.isEmpty()) {
                    close(run, shapes);
                }
                level.ifPresent(at -> run.add(scale.at(leg.start() + station, at)));
            }
        }
        close(run, shapes);
    }

    /** The greatest cover that a rule asks at a station. */
    private Optional<Length> asked(Stretch piece, double station) {
        double middle = (piece.from() + piece.to()) / 2;
        Attributes there = piece.attributes()
                .get(Attribute.TO_OUTFALL)
                .map(left -> piece.attributes().with(Attribute.TO_OUTFALL, left.plus(new Length(middle - station))))
                .orElse(piece.attributes());
        return limits.stream()
                .map(each -> each.of(there))
                .flatMap(answer -> answer instanceof Limits.Answer.Asked asked
                        ? Optional.of(
                                new Length(asked.limit().value().quantity().si()))
                                .stream()
                        : Optional.<Length>empty().stream())
                .max(Length::compareTo);
    }

    private static void close(List<Coordinate> run, List<Shape> shapes) {
        if (run.size() > 1) {
            shapes.add(new Shape.Line(
                    Look.COVER_LIMIT,
                    GEOMETRY.createLineString(run.toArray(Coordinate[]::new)),
                    "limit of cover: the pipe's top belongs below"));
        }
        run.clear();
    }
}
