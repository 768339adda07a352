package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

/** Pairs the features of one role. Each feature is paired once; what could be two things stays unpaired. */
final class Pairing {
    /** Within this a feature under another name is taken as the same thing, and the reader is told: 1 ft. */
    static final Length SAME_PLACE = Length.feet(1);

    private final List<FeaturePair> pairs = new ArrayList<>();
    private final List<Feature> before;
    private final List<Feature> after;

    Pairing(List<Feature> before, List<Feature> after) {
        this.before = new ArrayList<>(before);
        this.after = new ArrayList<>(after);
        byName();
        byPlace((one, other) -> one.geometry().equalsExact(other.geometry(), Moves.LAST_DIGIT));
        byPlace((one, other) -> distance(one.geometry(), other.geometry()) <= SAME_PLACE.metres());
    }

    List<FeaturePair> pairs() {
        return List.copyOf(pairs);
    }

    List<Feature> removed() {
        return List.copyOf(before);
    }

    List<Feature> added() {
        return List.copyOf(after);
    }

    /** How far the one lies from the other at most, vertex to line (discrete Hausdorff distance of JTS). */
    static double distance(Geometry one, Geometry other) {
        return one.getDimension() != other.getDimension()
                ? Double.POSITIVE_INFINITY
                : DiscreteHausdorffDistance.distance(one, other);
    }

    /** Names that stand once in each state. */
    private void byName() {
        Map<String, Optional<Feature>> now = once(after);
        Map<String, Optional<Feature>> was = once(before);
        was.forEach((id, feature) -> feature.ifPresent(
                one -> now.getOrDefault(id, Optional.empty()).ifPresent(other -> pair(new FeaturePair(one, other)))));
        dropPaired();
    }

    private static Map<String, Optional<Feature>> once(List<Feature> features) {
        Map<String, Optional<Feature>> once = new LinkedHashMap<>();
        features.stream()
                .filter(FeaturePair::isNamed)
                .forEach(feature -> once.merge(feature.id(), Optional.of(feature), (one, two) -> Optional.empty()));
        return once;
    }

    /** Those that have each other alone for a counterpart. */
    private void byPlace(BiPredicate<Feature, Feature> same) {
        Map<Feature, List<Feature>> ahead = counterparts(before, after, same);
        Map<Feature, List<Feature>> back = counterparts(after, before, same);
        ahead.forEach((one, others) -> {
            if (others.size() == 1
                    && back.getOrDefault(others.get(0), List.of()).size() == 1) {
                pair(new FeaturePair(one, others.get(0)));
            }
        });
        dropPaired();
    }

    private static Map<Feature, List<Feature>> counterparts(
            List<Feature> of, List<Feature> among, BiPredicate<Feature, Feature> same) {
        STRtree index = new STRtree();
        among.forEach(feature -> index.insert(feature.geometry().getEnvelopeInternal(), feature));
        Map<Feature, List<Feature>> found = new HashMap<>();
        for (Feature one : of) {
            Envelope near = one.geometry().getEnvelopeInternal();
            near.expandBy(SAME_PLACE.metres());
            List<Feature> others = new ArrayList<>();
            for (Object hit : index.query(near)) {
                Feature other = (Feature) hit;
                if (sameKind(one, other) && same.test(one, other)) {
                    others.add(other);
                }
            }
            found.put(one, others);
        }
        return found;
    }

    private static boolean sameKind(Feature one, Feature other) {
        return one.get(Attribute.KIND).equals(other.get(Attribute.KIND));
    }

    private void pair(FeaturePair pair) {
        pairs.add(pair);
    }

    private void dropPaired() {
        Set<Feature> paired = new HashSet<>();
        pairs.forEach(pair -> {
            paired.add(pair.before());
            paired.add(pair.after());
        });
        before.removeIf(paired::contains);
        after.removeIf(paired::contains);
    }
}
