package org.fallrule.report.profile;

import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Dimension;
import org.fallrule.network.PipeRun;
import org.fallrule.report.Report;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/** Finds the height that a finding measured; nothing where it is about something that a long section does not show. */
final class MeasuredHeights {
    private final Report report;
    private final Finding finding;
    private final Observation seen;

    private MeasuredHeights(Report report, Finding finding) {
        this.report = report;
        this.finding = finding;
        this.seen = finding.observation();
    }

    static Optional<HeightMeasured> of(Report report, Finding finding) {
        MeasuredHeights heights = new MeasuredHeights(report, finding);
        return finding.observation().measured().flatMap(heights::of);
    }

    private Optional<HeightMeasured> of(Measured measured) {
        Dimension dimension = measured.value().dimension();
        if (dimension == Dimension.SLOPE) {
            return run().flatMap(run -> new PipeHeights(report, measured).slope(run));
        }
        if (dimension != Dimension.LENGTH) {
            return Optional.empty();
        }
        return switch (finding.check()) {
            case "cover" -> atPoint().flatMap(run -> new PipeHeights(report, measured).cover(run, where(), rule()));
            case "depth", "trench_safety" ->
                atPoint().flatMap(run -> new PipeHeights(report, measured).depth(run, where()));
            case "continuous_fall" ->
                atPoint()
                        .flatMap(in -> other().flatMap(report.analysis().network()::runOf)
                                .flatMap(out -> new PipeHeights(report, measured).step(in, out)));
            case "fall_available" -> inlet().flatMap(inlet -> new PipeHeights(report, measured).fall(inlet));
            case "separation" ->
                atPoint()
                        .flatMap(run -> other().flatMap(
                                        utility -> new CrossingHeights(report, measured).of(run, utility, where())));
            case "frost" ->
                atPoint()
                        .flatMap(run -> new PipeHeights(report, measured).depth(run, where()))
                        .or(() -> inlet().flatMap(inlet -> new StructureHeights(report, measured).down(inlet)));
            case "grade_line" -> inlet().flatMap(inlet -> new StructureHeights(report, measured).down(inlet));
            case "inlet_capture" -> inlet().flatMap(inlet -> new StructureHeights(report, measured).up(inlet));
            case "low_point" ->
                measured.of().startsWith("distance")
                        ? Optional.empty()
                        : inlet().flatMap(inlet -> new StructureHeights(report, measured).above(inlet));
            case "ground_fall" ->
                seen.where()
                        .filter(LineString.class::isInstance)
                        .flatMap(line -> new GroundHeights(report, measured).fall((LineString) line));
            default -> Optional.empty();
        };
    }

    private String rule() {
        return finding.rule();
    }

    private Optional<PipeRun> run() {
        return seen.subject().flatMap(report.analysis().network()::runOf);
    }

    /** The pipe that was measured at a point. */
    private Optional<PipeRun> atPoint() {
        return run().filter(run -> seen.where().filter(Point.class::isInstance).isPresent());
    }

    private Point where() {
        return (Point) seen.where().orElseThrow();
    }

    private Optional<Feature> other() {
        return seen.other();
    }

    private Optional<Feature> inlet() {
        return seen.subject().filter(subject -> subject.role() == Role.INLET || subject.role() == Role.CLEANOUT);
    }
}
