package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.remedy.Change;
import org.fallrule.remedy.Remedied;
import org.fallrule.report.Report;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/**
 * What would pass, drawn dashed beside what was submitted: pipes led another way, structures moved or added, the
 * edge of what is graded.
 */
final class RemedyShapes {
    /** Radius in metres of the ring around a structure that is moved or added. */
    private static final double RING = 0.4;

    private static final int TITLE_LENGTH = 300;

    private RemedyShapes() {}

    /** Those of one finding. */
    static Optional<DrawingLayer> of(Report report, Finding finding) {
        return layer(report, report.remedies().of(finding).flatMap(Remedied::change).stream());
    }

    /** Those of all findings, and of the joint change. */
    static Optional<DrawingLayer> of(Report report) {
        Stream<Change> each = report.remedies().each().stream().flatMap(one -> one.change().stream());
        Stream<Change> joint =
                report.remedies().joint().stream().map(all -> new Change(all.site(), String.join("; ", all.changes())));
        return layer(report, Stream.concat(each, joint));
    }

    private static Optional<DrawingLayer> layer(Report report, Stream<Change> changes) {
        List<Shape> shapes = new ArrayList<>();
        changes.forEach(change -> {
            String says = PlainText.clipped("would pass: " + change.says(), TITLE_LENGTH);
            change.drawnAnew(report.site()).stream()
                    .filter(feature -> !isDrawn(report, feature))
                    .forEach(feature -> shapes.add(new Shape.Line(Look.REMEDY, line(feature), says)));
            Geometry graded = change.gradedAnew(report.site());
            if (!graded.isEmpty()) {
                shapes.add(new Shape.Line(Look.REMEDY, graded.getBoundary(), says));
            }
        });
        List<Shape> once = shapes.stream().distinct().toList();
        return once.isEmpty() ? Optional.empty() : Optional.of(new DrawingLayer("remedy", once));
    }

    /** Whether the submitted plan has a feature of that role in the same place. */
    private static boolean isDrawn(Report report, Feature feature) {
        return report.site().features(feature.role()).stream()
                .anyMatch(each -> each.geometry().equalsTopo(feature.geometry()));
    }

    private static Geometry line(Feature feature) {
        return feature.role() == Role.PIPE
                ? feature.geometry()
                : feature.geometry().buffer(RING).getBoundary();
    }
}
