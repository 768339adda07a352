package org.fallrule.reader;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Asks about depths of utilities that no trench on a lot has, as when a column holds elevations. Such a depth is not used. */
final class PlausibleDepths {
    /** Beyond this a depth is asked about; common practice: services on lots lie within some ten feet. */
    private static final Length DEEPEST = Length.feet(50);

    private PlausibleDepths() {}

    static List<Feature> asked(Role role, List<Feature> features, List<Fault> problems) {
        return role == Role.UTILITY
                ? features.stream().map(feature -> asked(feature, problems)).toList()
                : features;
    }

    private static Feature asked(Feature utility, List<Fault> problems) {
        Optional<Length> depth = utility.get(Attribute.DEPTH).filter(given -> given.metres() > DEEPEST.metres());
        if (depth.isEmpty()) {
            return utility;
        }
        problems.add(new Fault(
                utility.origin(),
                "depth: " + Printed.feet(depth.get().metres())
                        + " is deeper than utilities lie on a lot, and is not used; if the column holds elevations say"
                        + " fields: {top: COLUMN}, if it is in another unit say units: {depth: …}"));
        return utility.with(utility.attributes().without(attribute -> attribute == Attribute.DEPTH));
    }
}
