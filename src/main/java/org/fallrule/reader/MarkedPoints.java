package org.fallrule.reader;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Puntal;

/**
 * Joins a utility's marks that were surveyed as points into the line they stand for. Which marks belong together, and in what
 * order, is never guessed: the columns {@code line} and {@code sequence} say it.
 */
final class MarkedPoints {
    private MarkedPoints() {}

    /** The features, points of utilities joined; what cannot be joined is a fault. Other roles are left as they are. */
    static List<Feature> joined(Role role, List<Feature> features, List<Fault> faults) {
        if (role != Role.UTILITY || features.stream().noneMatch(MarkedPoints::isMark)) {
            return features;
        }
        List<Feature> joined = new ArrayList<>();
        Map<String, List<Feature>> marks = new LinkedHashMap<>();
        for (Feature feature : features) {
            if (!isMark(feature)) {
                joined.add(feature);
            } else if (isPlaced(feature)) {
                marks.computeIfAbsent(key(feature), any -> new ArrayList<>()).add(feature);
            } else {
                faults.add(new Fault(
                        feature.origin(),
                        "is a point; draw utilities as lines, or say with the columns line (the name of the line) and"
                                + " sequence (1, 2, 3 …) which marks belong together and in what order"));
            }
        }
        marks.values()
                .forEach(points -> line(points.get(0).get(Attribute.LINE).orElseThrow(), points, faults)
                        .ifPresent(joined::add));
        return joined;
    }

    /** Lines of the same name in two files are two lines. */
    private static String key(Feature mark) {
        return mark.origin().file() + "\n" + mark.get(Attribute.LINE).orElseThrow();
    }

    private static boolean isMark(Feature feature) {
        return feature.geometry() instanceof Puntal;
    }

    private static boolean isPlaced(Feature mark) {
        return mark.get(Attribute.LINE).isPresent()
                && mark.get(Attribute.SEQUENCE)
                        .filter(text -> text.matches("\\d{1,9}(\\.0*)?"))
                        .isPresent();
    }

    private static double position(Feature mark) {
        return Double.parseDouble(mark.get(Attribute.SEQUENCE).orElseThrow());
    }

    private static Optional<Feature> line(String name, List<Feature> marks, List<Fault> faults) {
        List<Feature> inOrder = marks.stream()
                .sorted(Comparator.comparingDouble(MarkedPoints::position))
                .toList();
        Feature first = inOrder.get(0);
        if (marks.size() < 2) {
            faults.add(new Fault(first.origin(), "is the only mark of line " + name + "; a line wants two or more"));
            return Optional.empty();
        }
        for (int i = 1; i < inOrder.size(); i++) {
            if (position(inOrder.get(i)) == position(inOrder.get(i - 1))) {
                faults.add(new Fault(
                        inOrder.get(i).origin(),
                        "has the same sequence as another mark of line " + name + "; number the marks along the line"));
                return Optional.empty();
            }
        }
        Coordinate[] places =
                inOrder.stream().map(mark -> mark.geometry().getCoordinate()).toArray(Coordinate[]::new);
        Geometry drawn = first.geometry().getFactory().createLineString(places);
        return Optional.of(new Feature(Role.UTILITY, name, drawn, common(name, inOrder), first.origin()));
    }

    /** What all marks of a line say alike; a depth that differs from mark to mark is that of no whole line. */
    private static Attributes common(String name, List<Feature> marks) {
        return Attributes.alike(marks)
                .without(attribute -> attribute == Attribute.SEQUENCE)
                .with(Attribute.ID, name);
    }
}
