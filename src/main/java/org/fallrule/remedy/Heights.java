package org.fallrule.remedy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Changes that leave everything where it lies in plan, and which rules they cannot touch. */
final class Heights {
    private static final Set<Attribute<?>> OF_DRAIN = Set.of(
            Attribute.INVERT_UP,
            Attribute.INVERT_DOWN,
            Attribute.DEPTH_UP,
            Attribute.DEPTH_DOWN,
            Attribute.INVERT,
            Attribute.RIM,
            Attribute.SUMP);

    private Heights() {}

    /** Whether a rule may find something else once heights of the drain are changed. */
    static boolean matterTo(Rule rule) {
        return rule.check().looksAtHeights() || rule.terms().read(OF_DRAIN);
    }

    /** Whether a plan differs from another in heights of the drain alone. */
    static boolean alone(Site before, Site after) {
        return List.of(Role.PIPE, Role.INLET, Role.OUTFALL, Role.CLEANOUT).stream()
                .allMatch(role -> alone(before.features(role), after.features(role)));
    }

    private static boolean alone(List<Feature> before, List<Feature> after) {
        return before.size() == after.size()
                && IntStream.range(0, before.size()).allMatch(i -> alone(before.get(i), after.get(i)));
    }

    private static boolean alone(Feature before, Feature after) {
        return before.id().equals(after.id())
                && before.geometry().equalsExact(after.geometry())
                && others(before).equals(others(after));
    }

    private static Set<Map.Entry<Attribute<?>, Object>> others(Feature feature) {
        return feature.attributes().asMap().entrySet().stream()
                .filter(entry -> !OF_DRAIN.contains(entry.getKey()))
                .collect(Collectors.toSet());
    }
}
