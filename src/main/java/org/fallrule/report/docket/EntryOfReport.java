package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Report;
import org.fallrule.site.Feature;
import org.fallrule.site.Frame;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryTransformer;

/** What a docket keeps of a report, which itself is let go. */
public final class EntryOfReport {
    /** Parts of a degree that are kept: 1e-7 is about a centimetre. */
    private static final double PARTS = 1e7;

    private EntryOfReport() {}

    /**
     * The entry of a plan.
     *
     * @param path the site folder as the user knows it
     * @param folder the folder of its report within the output folder
     */
    public static DocketEntry of(Report report, String path, String folder) {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        for (Outcome outcome : Outcome.values()) {
            counts.put(outcome, report.review().count(outcome));
        }
        return new DocketEntry(
                path,
                folder,
                report.site().name(),
                report.county(),
                report.verdict(),
                counts,
                standings(report.review().findings()),
                lot(report.site()),
                List.of());
    }

    private static List<RuleStanding> standings(List<Finding> findings) {
        Map<String, List<Finding>> byRule = new LinkedHashMap<>();
        findings.forEach(finding ->
                byRule.computeIfAbsent(finding.rule(), any -> new ArrayList<>()).add(finding));
        return byRule.values().stream().map(EntryOfReport::standing).toList();
    }

    private static RuleStanding standing(List<Finding> findings) {
        Finding worst = findings.get(0);
        int alike = 0;
        for (Finding finding : findings) {
            if (finding.outcome().compareTo(worst.outcome()) < 0) {
                worst = finding;
                alike = 0;
            }
            alike += finding.outcome() == worst.outcome() ? 1 : 0;
        }
        return new RuleStanding(worst.rule(), worst.title(), worst.weight(), worst.outcome(), alike);
    }

    private static Optional<Geometry> lot(Site site) {
        Geometry drawn = site.ownLot()
                .map(Feature::geometry)
                .orElseGet(() -> new GeometryFactory().createPoint(new Coordinate(0, 0)));
        Geometry placed = inDegrees(drawn, site.frame());
        return placed.isEmpty() ? Optional.empty() : Optional.of(placed);
    }

    private static Geometry inDegrees(Geometry local, Frame frame) {
        return new GeometryTransformer() {
            @Override
            protected CoordinateSequence transformCoordinates(CoordinateSequence places, Geometry parent) {
                Coordinate[] moved = new Coordinate[places.size()];
                for (int i = 0; i < moved.length; i++) {
                    Coordinate place = frame.toLonLat(places.getCoordinate(i));
                    moved[i] = new Coordinate(Math.round(place.x * PARTS) / PARTS, Math.round(place.y * PARTS) / PARTS);
                }
                return createCoordinateSequence(moved);
            }
        }.transform(local);
    }
}
