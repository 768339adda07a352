package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.report.Reports;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Dockets to look at. */
public final class Dockets {
    private Dockets() {}

    /** The sample sites, and a plan that could not be checked. */
    public static Docket ofSamples() {
        List<DocketEntry> entries = new ArrayList<>(
                Stream.of("harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3")
                        .map(sample -> EntryOfReport.of(Reports.of(sample), "sample-sites/" + sample, sample))
                        .toList());
        entries.add(DocketEntry.broken(
                "stack/torn", "torn", "torn", List.of("lot.geojson:1:2: found the end of the file")));
        return new Docket(entries, List.of("stack/photos: holds no site.yaml"), "2026-06-01");
    }

    /** Many plans that stand to two rules in turn in every way, with a square lot each, as near as neighbours. */
    public static Docket ofMany(int count) {
        List<DocketEntry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Outcome> outcomes = List.of(Outcome.values());
            Outcome outcome = outcomes.get(i % outcomes.size());
            int row = i / 100;
            entries.add(entry(
                    "plan-" + i,
                    List.of(
                            new RuleStanding("first-rule", "The first is kept", Weight.MUST, outcome, 1),
                            new RuleStanding("second-rule", "The second is kept", Weight.SHOULD, Outcome.FAILS, 2)),
                    Optional.of(square(-76 + (i % 100) * 0.001, 35 + row * 0.001))));
        }
        return new Docket(entries, List.of(), "2026-06-01");
    }

    static DocketEntry entry(String name, List<RuleStanding> standings, Optional<Geometry> lot) {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        standings.forEach(each -> counts.merge(each.outcome(), (long) each.findings(), Long::sum));
        return new DocketEntry(
                "stack/" + name, name, name, "saltmeadow", "Verdict.", counts, standings, lot, List.of());
    }

    static Geometry square(double lon, double lat) {
        double side = 0.0005;
        return new GeometryFactory().createPolygon(new Coordinate[] {
            new Coordinate(lon, lat),
            new Coordinate(lon + side, lat),
            new Coordinate(lon + side, lat + side),
            new Coordinate(lon, lat + side),
            new Coordinate(lon, lat)
        });
    }
}
