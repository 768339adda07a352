package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fallrule.analysis.Corridor;
import org.fallrule.analysis.RunParts;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * A reach of a pipe so near a utility that its trench is dug by hand.
 *
 * @param utility the utility
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 */
public record HandReach(Feature utility, double from, double to) {
    /**
     * The reaches of a run in the order of their stations.
     *
     * @param zones how far from each utility
     */
    static List<HandReach> along(SiteAnalysis analysis, PipeRun run, HandZones zones) {
        double half =
                OutsideDiameter.of(run.pipe()).map(OutsideDiameter::radius).orElse(0.0);
        List<HandReach> reaches = new ArrayList<>();
        for (Feature utility : analysis.site().features(Role.UTILITY)) {
            zones.reachFrom(utility)
                    .map(zone -> new Corridor(utility.geometry(), zone.metres() + half).partOf(run.axis()))
                    .ifPresent(inside -> RunParts.of(run, inside)
                            .forEach(reach -> reaches.add(new HandReach(utility, reach.from(), reach.to()))));
        }
        reaches.sort(Comparator.comparingDouble(HandReach::from));
        return reaches;
    }

    boolean holds(double station) {
        return station >= from - Dimension.LENGTH.tolerance() && station <= to + Dimension.LENGTH.tolerance();
    }
}
