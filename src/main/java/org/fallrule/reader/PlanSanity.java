package org.fallrule.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Envelope;

/** Looks whether the layers of a plan belong together. */
final class PlanSanity {
    /** Layers whose nearest features lie farther than this from the lots, in metres, are not of one plan. */
    private static final double FARTHEST = 1000;

    private final List<Fault> faults;
    private final List<Fault> problems;

    PlanSanity(List<Fault> faults, List<Fault> problems) {
        this.faults = faults;
        this.problems = problems;
    }

    /**
     * Looks at all layers.
     *
     * @param cause why a layer of a role may lie elsewhere than at a box: a sentence that begins with a blank, or nothing
     */
    void look(Map<Role, List<Feature>> features, BiFunction<Role, Envelope, String> cause) {
        boolean lots = !features.getOrDefault(Role.LOT, List.of()).isEmpty();
        List<Feature> anchors = !lots
                ? features.values().stream()
                        .filter(all -> !all.isEmpty())
                        .findFirst()
                        .orElse(List.of())
                : features.getOrDefault(Role.LOT, List.of());
        Envelope anchor = extent(anchors);
        features.forEach((role, all) -> {
            refuseFarAway(role, all, anchor, lots ? "lots" : "rest of the plan", cause);
            tellRepeatedIds(all);
        });
    }

    private void refuseFarAway(
            Role role, List<Feature> features, Envelope anchor, String from, BiFunction<Role, Envelope, String> cause) {
        Envelope extent = extent(features);
        double apart = extent.isNull() || anchor.isNull() ? 0 : extent.distance(anchor);
        if (apart > FARTHEST) {
            String file = features.get(0).origin().file();
            faults.add(new Fault(
                    Place.of(file),
                    String.format(
                            java.util.Locale.ROOT,
                            "its %s features lie %.1f miles from the %s; check the layer's crs and its .prj%s",
                            role.spoken(),
                            apart / 1609.344,
                            from,
                            cause.apply(role, anchor))));
        }
    }

    private void tellRepeatedIds(List<Feature> features) {
        Map<String, Feature> seen = new HashMap<>();
        Set<String> told = new HashSet<>();
        for (Feature feature : features) {
            Feature first = seen.putIfAbsent(feature.id(), feature);
            if (first != null && told.add(feature.id())) {
                problems.add(new Fault(
                        feature.origin(),
                        "has the same id " + feature.id() + " as "
                                + first.origin().feature()
                                + "; give each its own, so that findings can be told apart"));
            }
        }
    }

    private static Envelope extent(List<Feature> features) {
        Envelope extent = new Envelope();
        features.forEach(feature -> extent.expandToInclude(feature.geometry().getEnvelopeInternal()));
        return extent;
    }
}
