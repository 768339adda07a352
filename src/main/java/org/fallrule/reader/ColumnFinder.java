package org.fallrule.reader;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;

/** Finds the column that holds an attribute: the one that site.yaml names, or one whose name is known to mean it. */
public final class ColumnFinder {
    /** Letters of a unit's name, which is no sign: foot, inch. */
    private static final int SHORTEST_NAME = 4;

    private final LayerSpec spec;
    private final Set<String> columns;
    private final Map<String, String> plain;
    private final List<Fault> faults;

    ColumnFinder(LayerSpec spec, Set<String> columns, List<Fault> faults) {
        this.spec = spec;
        this.columns = columns;
        this.plain = plain(columns);
        this.faults = faults;
    }

    /**
     * A column and the unit that its name carries.
     *
     * @param name the column as the file names it
     * @param unit the unit at the end of its name, as in {@code DIAM_IN}
     */
    public record Column(String name, Optional<Unit> unit) {}

    /** The column of an attribute. Two columns that could both be it are a fault; one that is left open is none. */
    Optional<Column> of(Attribute<?> attribute) {
        Node.Scalar stated = spec.fields().get(attribute);
        if (stated != null) {
            return stated.blank() ? Optional.empty() : stated(attribute, stated);
        }
        return one(attribute, candidates(attribute, plain));
    }

    /**
     * The columns that could hold an attribute by their names: those that carry the attribute's own name, else those of which it
     * is known. Of several ids it is the likeliest.
     */
    public static List<Column> candidates(Attribute<?> attribute, Set<String> columns) {
        return candidates(attribute, plain(columns));
    }

    private static List<Column> candidates(Attribute<?> attribute, Map<String, String> columns) {
        List<Column> exact = matching(attribute, List.of(plain(attribute.name())), columns);
        if (!exact.isEmpty()) {
            return exact;
        }
        List<Column> known = matching(attribute, attribute.columns(), columns);
        return attribute == Attribute.ID ? known.stream().limit(1).toList() : known;
    }

    /**
     * The columns whose names are one of some words, with or without a unit at the end.
     *
     * @param words what the attribute may be called, likeliest first
     */
    public static List<Column> candidates(Attribute<?> attribute, List<String> words, Set<String> columns) {
        return matching(attribute, words.stream().map(ColumnFinder::plain).toList(), plain(columns));
    }

    private Optional<Column> stated(Attribute<?> attribute, Node.Scalar stated) {
        List<Column> found = columns.stream()
                .filter(column -> column.equalsIgnoreCase(stated.text()))
                .sorted(Comparator.comparing((String column) -> !column.equals(stated.text())))
                .map(column -> new Column(column, suffix(attribute, column, attribute.columns())))
                .toList();
        if (found.isEmpty()) {
            faults.add(new Fault(
                    stated.place(),
                    spec.source() + " has no column " + stated.text() + " for " + attribute.name() + "; it has "
                            + listed(columns) + (columns.isEmpty() ? ofShapefile(spec.source()) : "")));
        }
        return found.stream().findFirst();
    }

    /** A shapefile's columns stand in a file of their own, which is easily left behind. */
    private static String ofShapefile(String source) {
        return source.toLowerCase(Locale.ROOT).endsWith(".shp") ? "; put its .dbf beside it, which holds them" : "";
    }

    /** The columns, for messages. */
    static String listed(Set<String> columns) {
        return columns.isEmpty() ? "no columns" : String.join(", ", columns);
    }

    private Optional<Column> one(Attribute<?> attribute, List<Column> found) {
        List<Column> free = found.stream()
                .filter(column -> !isStatedForAnother(attribute, column))
                .toList();
        if (free.size() > 1) {
            faults.add(new Fault(
                    spec.place(),
                    spec.source() + ": the columns "
                            + String.join(
                                    " and ", free.stream().map(Column::name).toList())
                            + " could both be " + attribute.name() + "; say which: fields: {" + attribute.name() + ": "
                            + free.get(0).name() + "}"));
        }
        return free.stream().findFirst();
    }

    private boolean isStatedForAnother(Attribute<?> attribute, Column column) {
        return spec.fields().entrySet().stream()
                .anyMatch(entry ->
                        entry.getKey() != attribute && entry.getValue().text().equalsIgnoreCase(column.name()));
    }

    /**
     * As {@link #candidates(Attribute, List, Set)}.
     *
     * @param words plain, as those of an attribute are
     * @param columns the plain name of each column
     */
    private static List<Column> matching(Attribute<?> attribute, List<String> words, Map<String, String> columns) {
        List<Column> found = new ArrayList<>();
        for (String word : words) {
            columns.forEach((column, name) -> {
                if (name.equals(word)) {
                    found.add(new Column(column, Optional.empty()));
                } else if (name.startsWith(word)) {
                    suffix(attribute, column, words)
                            .filter(unit -> signs(unit).anyMatch(sign -> name.equals(word + plain(sign))))
                            .ifPresent(unit -> found.add(new Column(column, Optional.of(unit))));
                }
            });
        }
        return found;
    }

    /**
     * The unit that a column's name ends with, of those that measure the attribute: one that stands apart, as in DIAM_M, before
     * one that does not, as in DIAMM; then the one with the longest sign.
     */
    private static Optional<Unit> suffix(Attribute<?> attribute, String column, List<String> words) {
        String name = plain(column);
        if (isKnown(attribute, name, words)) {
            return Optional.empty();
        }
        return attribute
                .dimension()
                .flatMap(dimension -> Arrays.stream(Unit.values())
                        .filter(unit -> unit.dimension() == dimension)
                        .flatMap(unit -> signs(unit).map(sign -> Map.entry(sign, unit)))
                        .filter(ending -> isSuffix(attribute, name, plain(ending.getKey()), words))
                        .max(Comparator.comparing(
                                        (Map.Entry<String, Unit> ending) -> standsApart(column, ending.getKey()))
                                .thenComparing(ending -> ending.getKey().length()))
                        .map(Map.Entry::getValue));
    }

    /** What a unit goes by at the end of a name: its sign, or its name as in DEPTH_FEET. */
    private static Stream<String> signs(Unit unit) {
        return Stream.concat(
                Stream.of(unit.symbol()),
                unit.words().stream().filter(word -> word.matches("[a-z]{" + SHORTEST_NAME + ",}")));
    }

    private static boolean standsApart(String column, String sign) {
        int before = column.length() - sign.length() - 1;
        return before >= 0
                && "_- ".indexOf(column.charAt(before)) >= 0
                && column.substring(before + 1).equalsIgnoreCase(sign);
    }

    private static boolean isSuffix(Attribute<?> attribute, String plainName, String sign, List<String> words) {
        if (!plainName.endsWith(sign) || plainName.length() == sign.length()) {
            return false;
        }
        String stem = plainName.substring(0, plainName.length() - sign.length());
        return isKnown(attribute, stem, words);
    }

    /** Whether a name without a unit is known to mean the attribute: DIAM is a diameter, not DIA in metres. */
    private static boolean isKnown(Attribute<?> attribute, String plainName, List<String> words) {
        return plainName.equals(plain(attribute.name())) || words.contains(plainName);
    }

    private static Map<String, String> plain(Set<String> columns) {
        Map<String, String> plain = new LinkedHashMap<>();
        columns.forEach(column -> plain.put(column, plain(column)));
        return plain;
    }

    private static String plain(String name) {
        StringBuilder plain = new StringBuilder(name.length());
        String small = name.toLowerCase(Locale.ROOT);
        for (int i = 0; i < small.length(); i++) {
            if ("_- \t\n\u000B\f\r".indexOf(small.charAt(i)) < 0) {
                plain.append(small.charAt(i));
            }
        }
        return plain.toString();
    }
}
