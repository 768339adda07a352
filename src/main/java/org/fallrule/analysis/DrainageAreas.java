package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.index.strtree.STRtree;

/** The drainage areas that the plan draws, by the inlet that each drains to. One that is left without an inlet is told. */
final class DrainageAreas {
    private final Map<String, List<Feature>> inletsById;
    private final STRtree inlets = new STRtree();
    private final Map<Feature, List<Feature>> areasOf = new HashMap<>();
    private final List<Fault> problems = new ArrayList<>();

    DrainageAreas(Site site) {
        inletsById = site.features(Role.INLET).stream().collect(Collectors.groupingBy(Feature::id));
        site.features(Role.INLET)
                .forEach(inlet -> inlets.insert(inlet.geometry().getEnvelopeInternal(), inlet));
        site.features(Role.DRAINAGE_AREA).forEach(this::assign);
    }

    /** The areas that drain to an inlet: those that name it, and those that name none and hold no other inlet. */
    List<Feature> of(Feature inlet) {
        return areasOf.getOrDefault(inlet, List.of());
    }

    /** What to say of the areas whose water goes to no inlet, so that nothing is reckoned with it. */
    List<Fault> problems() {
        return List.copyOf(problems);
    }

    private void assign(Feature area) {
        Optional<String> named = area.get(Attribute.DRAINS_TO);
        List<Feature> found =
                named.map(id -> inletsById.getOrDefault(id, List.of())).orElseGet(() -> inletsIn(area));
        if (found.isEmpty() || (named.isEmpty() && found.size() > 1)) {
            problems.add(new Fault(area.origin(), says(area, named, found)));
        } else {
            found.forEach(inlet ->
                    areasOf.computeIfAbsent(inlet, any -> new ArrayList<>()).add(area));
        }
    }

    private static String says(Feature area, Optional<String> named, List<Feature> found) {
        String why = named.map(id -> "drains to " + id + ", which is no inlet of the plan")
                .orElseGet(() -> found.isEmpty()
                        ? "holds no inlet"
                        : "holds the inlets "
                                + found.stream().map(Feature::id).sorted().collect(Collectors.joining(", ")));
        return area.spoken() + " " + why + "; it counts for none: name its inlet in the column drains_to";
    }

    private List<Feature> inletsIn(Feature area) {
        List<Feature> inside = new ArrayList<>();
        for (Object near : inlets.query(area.geometry().getEnvelopeInternal())) {
            Feature inlet = (Feature) near;
            if (area.geometry().covers(inlet.geometry())) {
                inside.add(inlet);
            }
        }
        return inside;
    }
}
