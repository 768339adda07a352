package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where a utility crosses a pipe in plan, and how high it lies there.
 *
 * @param utility the utility
 * @param station metres from the pipe's upstream end
 * @param top the utility's outside top: given, or the ground there less its depth; empty when neither is known
 * @param size its outside diameter, if the plan tells it
 */
public record UtilityCrossing(Feature utility, double station, Optional<Elevation> top, Optional<Length> size) {

    /** The crossings of a pipe in the order of their stations. */
    public static List<UtilityCrossing> along(SiteAnalysis analysis, PipeRun run) {
        List<UtilityCrossing> crossings = new ArrayList<>();
        for (Feature utility : analysis.site().features(Role.UTILITY)) {
            for (Crossing crossing : Crossing.of(run, utility)) {
                crossings.add(new UtilityCrossing(
                        utility,
                        crossing.station(),
                        topAt(analysis, utility, crossing.place()),
                        OutsideDiameter.of(utility).map(OutsideDiameter::value)));
            }
        }
        crossings.sort(Comparator.comparingDouble(UtilityCrossing::station));
        return crossings;
    }

    /** A utility's outside top at a place: given, or the ground there less its depth; empty when neither is known. */
    public static Optional<Elevation> topAt(SiteAnalysis analysis, Feature utility, Coordinate place) {
        return utility.get(Attribute.TOP)
                .or(() -> utility.get(Attribute.DEPTH)
                        .flatMap(depth -> analysis.ground()
                                .flatMap(ground -> ground.elevationAt(place))
                                .map(ground -> ground.minus(depth))));
    }
}
