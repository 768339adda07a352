package org.fallrule.reader;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * Inverts, rims and heights of pipes that are exactly 0 in a plan that lies elsewhere: tables hold 0 where nothing was measured, and
 * programs write 2D lines as 3D lines at 0. Such a height is told and not used. Where the plan lies near height 0 it may be one.
 */
final class ZeroHeights {
    /** A drain that lies farther than this above or below 0, in metres, has no end at 0. */
    private static final double ELSEWHERE = 6;

    private final List<Fault> problems;

    private ZeroHeights(List<Fault> problems) {
        this.problems = problems;
    }

    static Map<Role, List<Feature>> unused(Map<Role, List<Feature>> features, List<Fault> problems) {
        double[] heights = features.values().stream()
                .flatMap(List::stream)
                .mapMultiToDouble(ZeroHeights::heights)
                .filter(height -> height != 0)
                .sorted()
                .toArray();
        boolean elsewhere = heights.length > 0 && Math.abs(heights[heights.length / 2]) > ELSEWHERE;
        if (!elsewhere) {
            return features;
        }
        ZeroHeights zero = new ZeroHeights(problems);
        Map<Role, List<Feature>> kept = new EnumMap<>(Role.class);
        features.forEach((role, all) ->
                kept.put(role, all.stream().map(zero::withoutZeros).toList()));
        return kept;
    }

    private static void heights(Feature feature, DoubleConsumer heights) {
        for (Object value : feature.attributes().asMap().values()) {
            if (value instanceof Elevation height) {
                heights.accept(height.metres());
            }
        }
        double z = feature.geometry().getCoordinate().getZ();
        if (Double.isFinite(z)) {
            heights.accept(z);
        }
    }

    private Feature withoutZeros(Feature feature) {
        if (!feature.role().isOfDrain()) {
            return feature;
        }
        Predicate<Attribute<?>> isZero = attribute ->
                WithoutHeights.isElevation(attribute) && feature.get(attribute).equals(Optional.of(new Elevation(0)));
        List<String> zeros = new ArrayList<>();
        feature.attributes().asMap().keySet().stream()
                .filter(isZero)
                .forEach(attribute -> zeros.add("its " + attribute.spoken()));
        boolean flat = feature.role() == Role.PIPE
                && Stream.of(feature.geometry().getCoordinates()).allMatch(place -> place.getZ() == 0);
        if (flat) {
            zeros.add("its Z");
        }
        if (zeros.isEmpty()) {
            return feature;
        }
        problems.add(new Fault(
                feature.origin(),
                String.join(" and ", zeros) + (zeros.size() > 1 ? " are " : " is ") + Printed.feet(0)
                        + " where the plan lies elsewhere, and seems to stand for none; it is not used: leave it empty"
                        + " where it is not known"));
        return new Feature(
                feature.role(),
                feature.id(),
                flat ? WithoutHeights.flat(feature.geometry()) : feature.geometry(),
                feature.attributes().without(isZero),
                feature.origin());
    }
}
