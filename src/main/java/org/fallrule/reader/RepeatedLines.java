package org.fallrule.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Finds utilities that were drawn twice, as when two offices' marks are put into one layer. */
final class RepeatedLines {
    private RepeatedLines() {}

    /**
     * The utilities, each once: of lines of one kind that lie on each other and of which the plan says the same, the first.
     * Where it says different things of them both are kept and it is told. Other roles are left as they are.
     */
    static List<Feature> once(Role role, List<Feature> features, List<Fault> problems) {
        if (role != Role.UTILITY) {
            return features;
        }
        Map<String, Feature> first = new HashMap<>();
        List<Feature> kept = new ArrayList<>();
        for (Feature feature : features) {
            Feature earlier = first.putIfAbsent(key(feature), feature);
            if (earlier == null) {
                kept.add(feature);
            } else if (said(feature).equals(said(earlier))) {
                problems.add(new Fault(
                        feature.origin(), "is drawn where " + earlier.id() + " lies, and counts once with it"));
            } else {
                kept.add(feature);
                problems.add(new Fault(
                        feature.origin(),
                        "is drawn where " + earlier.id()
                                + " lies, of which the plan says otherwise; both count: keep the"
                                + " one that is right"));
            }
        }
        return kept;
    }

    /** What the plan says of it apart from its name. */
    private static Map<String, Object> said(Feature feature) {
        return feature.attributes().asMap().entrySet().stream()
                .filter(entry -> entry.getKey() != Attribute.ID)
                .collect(Collectors.toMap(entry -> entry.getKey().name(), Map.Entry::getValue));
    }

    /** Its kind and its course to the millimetre, whichever way it is drawn. */
    private static String key(Feature feature) {
        return feature.get(Attribute.KIND).orElse("") + RepeatedFeatures.shape(feature);
    }
}
