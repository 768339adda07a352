package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.measure.Elevation;
import org.fallrule.network.FlowLine;
import org.fallrule.remedy.Change;
import org.fallrule.report.Report;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The inverts of what would pass, dashed beside those that were submitted. */
final class SectionRemedies {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final int TITLE_LENGTH = 300;

    private SectionRemedies() {}

    static List<Shape> shapes(Report report, FlowLine line, SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        changes(report)
                .forEach(change -> line.legs()
                        .forEach(leg -> change.site().features(Role.PIPE).stream()
                                .filter(pipe -> pipe.id().equals(leg.run().id()))
                                .flatMap(pipe -> invert(pipe, leg, scale, change.says()).stream())
                                .forEach(shapes::add)));
        return shapes.stream().distinct().toList();
    }

    private static Stream<Change> changes(Report report) {
        return Stream.concat(
                report.remedies().each().stream().flatMap(one -> one.change().stream()),
                report.remedies().joint().stream()
                        .map(all -> new Change(all.site(), String.join("; ", all.changes()))));
    }

    private static Optional<Shape> invert(Feature pipe, FlowLine.Leg leg, SectionScale scale, String says) {
        Optional<Elevation> up = pipe.get(Attribute.INVERT_UP);
        Optional<Elevation> down = pipe.get(Attribute.INVERT_DOWN);
        boolean same = up.equals(leg.run().invertUp()) && down.equals(leg.run().invertDown());
        if (same || up.isEmpty() || down.isEmpty()) {
            return Optional.empty();
        }
        double end = leg.start() + pipe.geometry().getLength();
        Coordinate[] ends = {scale.at(leg.start(), up.get()), scale.at(end, down.get())};
        String title = PlainText.clipped("would pass: " + says, TITLE_LENGTH);
        return Optional.of(new Shape.Line(Look.REMEDY, GEOMETRY.createLineString(ends), title));
    }
}
