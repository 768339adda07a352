package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A reach of a pipe so near a utility that its trench is dug by hand.
 *
 * @param utility the utility
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 */
public record HandReach(Feature utility, double from, double to) {
    /** Straight pieces to a quarter circle at the ends of a zone: within 0.1 % of its width. */
    private static final int ARC_SEGMENTS = 16;

    /**
     * The reaches of a run in the order of their stations.
     *
     * @param zones how far from each utility
     */
    static List<HandReach> along(SiteAnalysis analysis, PipeRun run, HandZones zones) {
        double half =
                OutsideDiameter.of(run.pipe()).map(OutsideDiameter::radius).orElse(0.0);
        List<HandReach> reaches = new ArrayList<>();
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        for (Feature utility : analysis.site().features(Role.UTILITY)) {
            Optional<Length> zone = zones.reachFrom(utility);
            if (zone.isEmpty()) {
                continue;
            }
            Geometry near = utility.geometry().buffer(zone.get().metres() + half, ARC_SEGMENTS);
            Geometry inside = run.axis().intersection(near);
            for (int i = 0; i < inside.getNumGeometries(); i++) {
                if (inside.getGeometryN(i).getLength() > Dimension.LENGTH.tolerance()) {
                    double[] ends = line.indicesOf(inside.getGeometryN(i));
                    reaches.add(new HandReach(utility, Math.min(ends[0], ends[1]), Math.max(ends[0], ends[1])));
                }
            }
        }
        reaches.sort(Comparator.comparingDouble(HandReach::from));
        return reaches;
    }

    boolean holds(double station) {
        return station >= from - Dimension.LENGTH.tolerance() && station <= to + Dimension.LENGTH.tolerance();
    }
}
