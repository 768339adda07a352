package org.fallrule.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Point;

/**
 * Which of the lots of a whole county is the plan's own: the one that holds the buildings which the plan draws, or where it draws
 * none its inlets. That it was found so is told; where it is not one lot, none is taken.
 */
final class LotOfPlan {
    private LotOfPlan() {}

    /** The lots, the plan's own marked, unless one is marked already. */
    static List<Feature> marked(Map<Role, List<Feature>> features, List<Fault> problems) {
        List<Feature> lots = features.getOrDefault(Role.LOT, List.of());
        if (lots.stream().anyMatch(lot -> lot.get(Attribute.OWN).isPresent())) {
            return lots;
        }
        Optional<Role> by = Stream.of(Role.BUILDING, Role.INLET)
                .filter(role -> !own(features, role).isEmpty())
                .findFirst();
        List<Point> inside = by.map(role -> own(features, role)).orElse(List.of());
        List<Feature> holding = lots.stream()
                .filter(lot -> !inside.isEmpty() && inside.stream().allMatch(lot.geometry()::covers))
                .toList();
        if (holding.size() != 1) {
            return lots;
        }
        Feature found = holding.get(0);
        problems.add(new Fault(
                found.origin(),
                "is taken as the site's own lot, since it alone holds every "
                        + by.get().spoken() + " of the plan"));
        return lots.stream()
                .map(lot -> LotOwnership.marked(lot, lot.equals(found)))
                .toList();
    }

    private static List<Point> own(Map<Role, List<Feature>> features, Role role) {
        return features.getOrDefault(role, List.of()).stream()
                .filter(feature -> !feature.origin().file().startsWith(SharedFile.UP))
                .map(feature -> feature.geometry().getInteriorPoint())
                .toList();
    }
}
