package org.fallrule.report.checklist;

import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.filter.Truth;
import org.fallrule.rulebook.ShownBy;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Site;

/** Whether a plan has features that show an item. */
final class FeaturesShown {
    /** Features that are named before the rest is counted. */
    private static final int NAMED = 4;

    private final Site site;
    private final ShownBy.Features wanted;
    private final String layer;

    FeaturesShown(Site site, ShownBy.Features wanted) {
        this.site = site;
        this.wanted = wanted;
        this.layer = wanted.role().word();
    }

    Evidence evidence() {
        Layer given = site.layer(wanted.role());
        if (given instanceof Layer.StatedAbsent) {
            return new Evidence(
                    Standing.STATED_ABSENT,
                    "the plan states that there is no " + wanted.role().spoken(),
                    "");
        }
        if (given instanceof Layer.NotSupplied) {
            return Evidence.missing(
                    "the plan has no " + layer + " layer", "supply the layer " + layer + ", or state it absent");
        }
        if (given instanceof Layer.Raster raster) {
            return Evidence.shown(layer + " in " + raster.file());
        }
        List<Feature> features = given.features().stream()
                .filter(feature -> wanted.where().test(feature.attributes()) == Truth.TRUE)
                .toList();
        return features.isEmpty() ? none() : known(features);
    }

    private Evidence none() {
        String which =
                wanted.where().isAlways() ? "" : " with " + wanted.where().text();
        return Evidence.missing(
                "the layer " + layer + " has nothing" + which,
                "put it into the layer " + layer + which + (which.isEmpty() ? ", or state it absent" : ""));
    }

    private Evidence known(List<Feature> features) {
        for (Attribute<?> attribute : wanted.known()) {
            List<Feature> lacking = features.stream()
                    .filter(feature -> !feature.attributes().has(attribute))
                    .toList();
            if (!lacking.isEmpty()) {
                return Evidence.missing(
                        attribute.name() + " is not given for " + named(lacking),
                        "give " + attribute.name() + " in the layer " + layer);
            }
        }
        String count = features.size() + " in the layer " + layer;
        return Evidence.shown(
                wanted.known().isEmpty()
                        ? count
                        : count + ", each with "
                                + wanted.known().stream().map(Attribute::name).collect(Collectors.joining(", ")));
    }

    private static String named(List<Feature> features) {
        String named = features.stream().limit(NAMED).map(Feature::spoken).collect(Collectors.joining(", "));
        return features.size() > NAMED ? named + " and " + (features.size() - NAMED) + " more" : named;
    }
}
