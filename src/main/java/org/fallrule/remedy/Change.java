package org.fallrule.remedy;

import java.util.List;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

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
}
