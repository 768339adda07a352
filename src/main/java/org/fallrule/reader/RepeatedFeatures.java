package org.fallrule.reader;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * Tells of features drawn twice in one place, as when a layer was pasted into itself: a pipe that is there twice carries half the
 * water each. All of them count, as nobody knows which is meant; utilities are looked after by {@link RepeatedLines}.
 */
final class RepeatedFeatures {
    /** The ground is the same with spots and contours once or twice, and counties stack the lots of a house of flats. */
    private static final Set<Role> NOT_HERE = EnumSet.of(
            Role.UTILITY,
            Role.LOT,
            Role.SPOT,
            Role.CONTOUR,
            Role.BREAKLINE,
            Role.GROUND,
            Role.PROPOSED_GROUND,
            Role.SOIL);

    private RepeatedFeatures() {}

    static void tell(Role role, List<Feature> features, List<Fault> problems) {
        if (NOT_HERE.contains(role)) {
            return;
        }
        Map<String, Feature> first = new HashMap<>();
        for (Feature feature : features) {
            if (feature.isAbandoned()) {
                continue;
            }
            Feature earlier = first.putIfAbsent(place(feature), feature);
            if (earlier != null) {
                problems.add(new Fault(
                        feature.origin(),
                        "is drawn where " + earlier.id() + " lies ("
                                + earlier.origin().feature()
                                + "); both count: take one out, or move it to where it is"));
            }
        }
    }

    private static String place(Feature feature) {
        return feature.geometry().getGeometryType() + shape(feature);
    }

    /** Its vertices to the millimetre, whichever way it is drawn. */
    static String shape(Feature feature) {
        return Stream.of(feature.geometry().norm().getCoordinates())
                .map(at -> Math.round(at.x * 1000) + " " + Math.round(at.y * 1000))
                .collect(Collectors.joining(","));
    }
}
