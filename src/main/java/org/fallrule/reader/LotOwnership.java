package org.fallrule.reader;

import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Settles which lot is the site's own as far as the plan allows. */
final class LotOwnership {
    private LotOwnership() {}

    /**
     * The lots, each marked as own or not where that follows: a single lot is the site's own, and beside one that is marked
     * own the others are not. Other roles are left as they are.
     */
    static List<Feature> settled(Role role, List<Feature> features, List<Fault> problems) {
        if (role != Role.LOT) {
            return features;
        }
        long own = features.stream()
                .filter(lot -> lot.get(Attribute.OWN).orElse(false))
                .count();
        if (own == 1) {
            return features.stream()
                    .map(lot -> marked(lot, lot.get(Attribute.OWN).orElse(false)))
                    .toList();
        }
        if (own > 1) {
            problems.add(new Fault(
                    Place.of(features.get(0).origin().file()),
                    own + " lots are marked as own, so none is taken; mark the one that the plan is for"));
        }
        if (features.size() == 1 && features.get(0).get(Attribute.OWN).isEmpty()) {
            Feature only = features.get(0);
            problems.add(new Fault(only.origin(), "is the only lot and is taken as the site's own"));
            return List.of(marked(only, true));
        }
        return features;
    }

    /** A lot that is marked as the site's own, or as another's. */
    static Feature marked(Feature lot, boolean own) {
        return lot.with(lot.attributes().with(Attribute.OWN, own));
    }
}
