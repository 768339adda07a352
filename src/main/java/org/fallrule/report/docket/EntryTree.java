package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** An entry of a plan that was checked as a tree of JSON, whole, and made again from it. */
public final class EntryTree {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private EntryTree() {}

    /** The tree of an entry. */
    public static Map<String, Object> of(DocketEntry entry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", entry.name());
        tree.put("county", entry.county());
        tree.put("verdict", entry.verdict());
        tree.put("counts", counts(entry.counts()));
        tree.put("rules", entry.standings().stream().map(EntryTree::standing).toList());
        entry.lot().ifPresent(lot -> tree.put("lot", rings(lot)));
        return tree;
    }

    /**
     * The entry of a tree.
     *
     * @throws IllegalArgumentException when it is no tree that {@link #of} gives
     */
    public static DocketEntry read(Map<?, ?> tree, String path, String folder) {
        return new DocketEntry(
                path,
                folder,
                text(tree, "name"),
                text(tree, "county"),
                text(tree, "verdict"),
                countsOf(map(tree.get("counts"))),
                list(tree.get("rules")).stream()
                        .map(each -> standing(map(each)))
                        .toList(),
                tree.containsKey("lot") ? Optional.of(lot(list(tree.get("lot")))) : Optional.empty(),
                List.of());
    }

    static Map<String, Object> counts(Map<Outcome, Long> counts) {
        Map<String, Object> tree = new LinkedHashMap<>();
        counts.forEach((outcome, count) -> tree.put(outcome.word(), count));
        return tree;
    }

    private static Map<Outcome, Long> countsOf(Map<?, ?> tree) {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        tree.forEach((word, count) -> counts.put(outcome(String.valueOf(word)), number(count)));
        return counts;
    }

    private static Map<String, Object> standing(RuleStanding standing) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("rule", standing.rule());
        tree.put("title", standing.title());
        tree.put("weight", standing.weight().word());
        tree.put("outcome", standing.outcome().word());
        tree.put("findings", standing.findings());
        return tree;
    }

    private static RuleStanding standing(Map<?, ?> tree) {
        return new RuleStanding(
                text(tree, "rule"),
                text(tree, "title"),
                Weight.valueOf(text(tree, "weight").toUpperCase(Locale.ROOT)),
                outcome(text(tree, "outcome")),
                (int) number(tree.get("findings")));
    }

    private static Outcome outcome(String word) {
        return Outcome.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** The outlines of a lot: of each area its outer ring, of a point the point. */
    static List<List<List<Double>>> rings(Geometry lot) {
        List<List<List<Double>>> rings = new ArrayList<>();
        for (int i = 0; i < lot.getNumGeometries(); i++) {
            Geometry part = lot.getGeometryN(i);
            Geometry line = part instanceof Polygon polygon ? polygon.getExteriorRing() : part;
            List<List<Double>> ring = new ArrayList<>();
            for (Coordinate place : line.getCoordinates()) {
                ring.add(List.of(place.x, place.y));
            }
            rings.add(ring);
        }
        return rings;
    }

    private static Geometry lot(List<?> rings) {
        List<Geometry> parts = new ArrayList<>();
        for (Object ring : rings) {
            Coordinate[] places = list(ring).stream().map(EntryTree::place).toArray(Coordinate[]::new);
            Geometry part = places.length == 1 ? GEOMETRY.createPoint(places[0]) : GEOMETRY.createPolygon(places);
            parts.add(part);
        }
        Geometry whole = GEOMETRY.buildGeometry(parts);
        return whole instanceof Point || whole.getDimension() == 2 ? whole : whole.convexHull();
    }

    private static Coordinate place(Object pair) {
        List<?> numbers = list(pair);
        return new Coordinate(degrees(numbers.get(0)), degrees(numbers.get(1)));
    }

    private static double degrees(@Nullable Object number) {
        if (number instanceof Number found) {
            return found.doubleValue();
        }
        throw new IllegalArgumentException("not a number: " + number);
    }

    private static long number(@Nullable Object number) {
        return (long) degrees(number);
    }

    private static String text(Map<?, ?> tree, String key) {
        if (tree.get(key) instanceof String text) {
            return text;
        }
        throw new IllegalArgumentException("no text under " + key);
    }

    private static Map<?, ?> map(@Nullable Object found) {
        if (found instanceof Map<?, ?> map) {
            return map;
        }
        throw new IllegalArgumentException("not an object");
    }

    private static List<?> list(@Nullable Object found) {
        if (found instanceof List<?> list) {
            return list;
        }
        throw new IllegalArgumentException("not a list");
    }
}
