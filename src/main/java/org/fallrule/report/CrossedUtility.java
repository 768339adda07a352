package org.fallrule.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.analysis.VerticalGap;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/**
 * A crossing as the table of crossings states it.
 *
 * @param plan the plan that it lies in
 * @param crossing where, and what is known there
 * @param station where along the pipe, as printed
 * @param findings what the rules of separation make of it; none where no rule speaks of it
 */
public record CrossedUtility(Site plan, UtilityCrossing crossing, String station, List<Finding> findings) {

    public CrossedUtility {
        findings = List.copyOf(findings);
    }

    /** Every crossing of the drain, pipe by pipe and along each pipe. */
    public static List<CrossedUtility> of(Report report) {
        List<Finding> across = report.review().findings().stream()
                .filter(CrossedUtility::isAcross)
                .toList();
        List<CrossedUtility> all = new ArrayList<>();
        for (PipeRun run : report.analysis().network().runs()) {
            for (UtilityCrossing crossing : UtilityCrossing.along(report.analysis(), run)) {
                all.add(new CrossedUtility(
                        report.site(),
                        crossing,
                        report.analysis().station(crossing.station()),
                        across.stream()
                                .filter(finding -> isOf(crossing, finding.observation()))
                                .toList()));
            }
        }
        return all;
    }

    private static boolean isAcross(Finding finding) {
        return finding.check().equals("separation")
                && finding.observation()
                        .where()
                        .filter(where -> where instanceof Point)
                        .isPresent();
    }

    private static boolean isOf(UtilityCrossing crossing, Observation seen) {
        Coordinate where = seen.where().orElseThrow().getCoordinate();
        return seen.subject().equals(Optional.of(crossing.run().pipe()))
                && seen.other().equals(Optional.of(crossing.utility()))
                && where.distance(crossing.place()) <= Dimension.LENGTH.tolerance();
    }

    /** The worst that a rule makes of it; nothing where no rule speaks of it. */
    public Optional<Outcome> outcome() {
        return findings.stream().map(Finding::outcome).min(Comparator.naturalOrder());
    }

    /**
     * The clear height; nothing where a level is not given or not to be relied on, or where it would hang on a size that is
     * not given.
     */
    public Optional<VerticalGap> gap() {
        return crossing.gap(crossing.size().orElse(new Length(0)))
                .filter(gap -> crossing.isTopRelied())
                .filter(gap -> gap.isDrainOver() || crossing.size().isPresent());
    }

    /** The clear height as printed: as the finding prints it that measured it, so that the two never differ. */
    public Optional<String> gapShown() {
        return gap().map(gap -> findings.stream()
                .flatMap(finding -> finding.observation().measured().stream())
                .filter(measured -> isSame(measured, gap.clear()))
                .findFirst()
                .map(Sentence::shown)
                .orElseGet(() -> plan.printed(gap.clear(), Unit.INCH)));
    }

    private static boolean isSame(Measured measured, Length gap) {
        return measured.value() instanceof Length length
                && Math.abs(length.metres() - gap.metres()) <= Dimension.LENGTH.tolerance();
    }
}
