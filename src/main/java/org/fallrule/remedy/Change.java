package org.fallrule.remedy;

import java.util.List;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * A changed plan and what was changed.
 *
 * @param site the changed plan
 * @param says the change in the words of the trade, as an order: {@code lower the outfall invert by 0.18 ft}
 */
public record Change(Site site, String says) {

    /** The pipes and structures that the changed plan has and the submitted one has not. */
    public List<Feature> drawnAnew(Site submitted) {
        return Role.ofDrain().stream()
                .flatMap(role -> site.features(role).stream()
                        .filter(feature -> !submitted.features(role).contains(feature)))
                .toList();
    }

    /** Where the changed plan has other ground than the submitted one; empty where it has not. */
    public Geometry gradedAnew(Site submitted) {
        List<Feature> were = submitted.features(Role.PROPOSED_GROUND);
        return UnaryUnionOp.union(
                site.features(Role.PROPOSED_GROUND).stream()
                        .filter(feature -> !were.contains(feature))
                        .map(Feature::geometry)
                        .toList(),
                Edits.GEOMETRY);
    }
}
