package org.fallrule.analysis;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Utility marks of a quality level of which no rule book says how well it is known. They are taken as drawn, which a reader has to
 * be told: paint on the grass may lie feet from the pipe.
 */
final class UnsaidMarks {
    private UnsaidMarks() {}

    /** One fault for each quality level, at its first mark. */
    static List<Fault> in(Site site, MarkAccuracy accuracy) {
        Map<String, List<Feature>> byQuality = site.features(Role.UTILITY).stream()
                .filter(mark -> !saysItself(mark))
                .filter(mark -> accuracy.of(mark.get(Attribute.QUALITY)).isEmpty())
                .collect(Collectors.groupingBy(
                        mark -> MarkAccuracy.level(mark.get(Attribute.QUALITY)), TreeMap::new, Collectors.toList()));
        return byQuality.entrySet().stream()
                .map(level -> new Fault(level.getValue().get(0).origin(), says(level.getKey(), level.getValue())))
                .toList();
    }

    private static boolean saysItself(Feature mark) {
        return mark.get(Attribute.HORIZONTAL_ACCURACY).isPresent()
                && mark.get(Attribute.VERTICAL_ACCURACY).isPresent();
    }

    private static String says(String quality, List<Feature> marks) {
        return "no rule book in force says how well a utility mark of quality " + quality + " is known, so that "
                + (marks.size() == 1
                        ? "this one is taken as drawn and its depth"
                        : marks.size() + " marks are taken as drawn and their depths")
                + " relied on; add mark_accuracy to the county's book, or build it on"
                + " rules/baseline.yaml";
    }
}
