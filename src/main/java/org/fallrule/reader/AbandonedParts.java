package org.fallrule.reader;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.site.Feature;

/** Tells of the parts of the drain that a layer calls abandoned: they carry no water, so that no rule is held against them. */
final class AbandonedParts {
    private static final int NAMED = 5;

    private AbandonedParts() {}

    static void tell(List<Feature> features, List<Fault> problems) {
        Map<String, List<Feature>> byFile = features.stream()
                .filter(Feature::isAbandoned)
                .collect(Collectors.groupingBy(
                        feature -> feature.origin().file(), LinkedHashMap::new, Collectors.toList()));
        byFile.forEach((file, abandoned) -> problems.add(new Fault(Place.of(file), says(abandoned))));
    }

    private static String says(List<Feature> abandoned) {
        String names = abandoned.stream().limit(NAMED).map(Feature::spoken).collect(Collectors.joining(", "));
        int more = abandoned.size() - NAMED;
        boolean one = abandoned.size() == 1;
        return names + (more > 0 ? " and " + more + " more" : "") + (one ? " is" : " are")
                + " abandoned: no part of the drain, so that no water is counted in " + (one ? "it" : "them")
                + " and no rule held against " + (one ? "it" : "them") + "; if the drain still runs through "
                + (one ? "it" : "one of them") + ", give status existing";
    }
}
