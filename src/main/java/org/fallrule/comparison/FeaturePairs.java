package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Which features of two states are the same thing.
 *
 * @param pairs what is in both
 * @param removed what was, and is no more
 * @param added what was not before
 */
public record FeaturePairs(List<FeaturePair> pairs, List<Feature> removed, List<Feature> added) {

    public FeaturePairs {
        pairs = List.copyOf(pairs);
        removed = List.copyOf(removed);
        added = List.copyOf(added);
    }

    /**
     * Pairs the features of two sites in one local frame, role by role: by their names; those that the plan does not name,
     * and those whose name is gone, by their place, where only one lies there.
     */
    public static FeaturePairs of(Site before, Site after) {
        List<FeaturePair> pairs = new ArrayList<>();
        List<Feature> removed = new ArrayList<>();
        List<Feature> added = new ArrayList<>();
        for (Role role : Role.values()) {
            Pairing pairing = new Pairing(before.drawn(role), after.drawn(role));
            pairs.addAll(pairing.pairs());
            removed.addAll(pairing.removed());
            added.addAll(pairing.added());
        }
        return new FeaturePairs(pairs, removed, added);
    }

    /** A feature's role and name. */
    record Name(Role role, String id) {
        static Name of(Feature feature) {
            return new Name(feature.role(), feature.id());
        }
    }

    /** The name that each feature of the earlier state goes by in the later one. */
    Map<Name, Name> namesAfter() {
        Map<Name, Name> names = new HashMap<>();
        pairs.forEach(pair -> names.putIfAbsent(Name.of(pair.before()), Name.of(pair.after())));
        return names;
    }

    /** What a feature of the earlier state is in the later one. */
    public Optional<Feature> after(Feature before) {
        return pairs.stream()
                .filter(pair -> pair.before().equals(before))
                .map(FeaturePair::after)
                .findFirst();
    }
}
