package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Ecql;
import org.fallrule.reader.ColumnFinder;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * A column whose values tell what each feature of a table is: the codes of a field book, or the layers of a drawing.
 *
 * @param name the column
 * @param meanings what its values may stand for, none for a value that is not known
 * @param counts how many features have each value
 */
record CodeColumn(String name, Map<String, List<Meaning>> meanings, Map<String, Integer> counts) {
    private static final int MOST_CODES = 200;
    /** The share of the features that have to have a known code: most. No source. */
    private static final double MOST = 0.6;
    /** The same for a column that is called a code, so that what is not known in it is asked about. No source. */
    private static final double SOME = 0.1;

    /** The column of a table that tells most; none where no column tells enough. */
    static Optional<CodeColumn> of(Cells cells, TradeWords words) {
        List<CodeColumn> found = new ArrayList<>();
        for (String column : cells.columns()) {
            Map<String, Integer> counts = cells.counts(column);
            boolean isOfText = cells.values(column).stream().allMatch(String.class::isInstance);
            if (isOfText
                    && !isStatus(column, words)
                    && isNameable(column)
                    && !counts.isEmpty()
                    && counts.size() <= MOST_CODES) {
                found.add(of(column, counts, cells, words));
            }
        }
        return found.stream()
                .filter(column ->
                        column.known() >= column.least(words) * cells.features().size())
                .filter(column -> column.known() > 0)
                .max(Comparator.comparingInt(CodeColumn::known)
                        .thenComparing(column -> isCalledCode(column.name(), words))
                        .thenComparingInt(column -> column.roles().size()));
    }

    /** Whether a column says whether things are there yet, which is not what they are. */
    private static boolean isStatus(String column, TradeWords words) {
        List<String> names = new ArrayList<>(List.of(Attribute.STATUS.name()));
        names.addAll(Attribute.STATUS.columns());
        names.addAll(words.columns(Attribute.STATUS));
        return CutNames.with(names, Set.of(column), List.of()).contains(TradeWords.plain(column));
    }

    /** The column of the colors that utilities are marked in; none where another column says the kind. */
    static Optional<CodeColumn> ofColors(Cells cells, TradeWords words) {
        if (!ColumnFinder.candidates(Attribute.KIND, cells.columns()).isEmpty()) {
            return Optional.empty();
        }
        return cells.columns().stream()
                .filter(words::isOfColors)
                .filter(CodeColumn::isNameable)
                .map(column -> {
                    Map<String, List<Meaning>> meanings = new LinkedHashMap<>();
                    cells.counts(column).keySet().forEach(color -> meanings.put(color, words.color(color)));
                    return new CodeColumn(column, meanings, cells.counts(column));
                })
                .filter(column -> column.known() > 0
                        && column.known() >= MOST * cells.features().size())
                .findFirst();
    }

    /** Whether a condition can name a column. */
    private static boolean isNameable(String column) {
        return column.indexOf('"') < 0 && isRead(quoted(column));
    }

    private static boolean isRead(String name) {
        try {
            Ecql.parse(name + " = 'x'", Place.of(name));
            return true;
        } catch (UnusableInput e) {
            return false;
        }
    }

    private static CodeColumn of(String column, Map<String, Integer> counts, Cells cells, TradeWords words) {
        Map<String, List<Meaning>> meanings = new LinkedHashMap<>();
        // where every value is another one they may be ids, such as CB-1, whose words mean nothing
        boolean mayBeIds = !isCalledCode(column, words)
                && counts.size() == cells.features().size()
                && counts.size() > 3;
        for (String code : counts.keySet()) {
            boolean mayBeId =
                    mayBeIds && SizedCode.of(code).filter(SizedCode::isBare).isPresent();
            List<Meaning> known = mayBeId ? List.of() : words.code(code);
            boolean byName = known.isEmpty() && !mayBeIds;
            meanings.put(code, byName ? byName(code, with(column, code, cells.features()), words) : known);
        }
        return new CodeColumn(column, meanings, counts);
    }

    private static List<Meaning> byName(String code, List<RawFeature> features, TradeWords words) {
        return Drawn.as(features)
                .map(form -> new LayerName(words, code).meaningsOrNone(form))
                .orElse(List.of());
    }

    /** The features that have a value in a column. */
    static List<RawFeature> with(String column, String value, List<RawFeature> features) {
        return features.stream()
                .filter(feature -> {
                    Object cell = feature.columns().get(column);
                    return cell != null && Cells.text(cell).equals(value);
                })
                .toList();
    }

    private double least(TradeWords words) {
        return isCalledCode(name, words) ? SOME : MOST;
    }

    private static boolean isCalledCode(String name, TradeWords words) {
        return words.columns(Attribute.KIND).contains(TradeWords.plain(name));
    }

    private int known() {
        return meanings.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .mapToInt(entry -> counts.getOrDefault(entry.getKey(), 0))
                .sum();
    }

    /** The roles that its values may stand for. */
    Set<Role> roles() {
        return meanings.values().stream()
                .flatMap(List::stream)
                .flatMap(meaning -> meaning.role().stream())
                .collect(Collectors.toSet());
    }

    /**
     * Whether its values stand for one role and nothing else. A value that is not known may be a kind of it, where the role has kinds;
     * where it has none, it is something else.
     */
    boolean isAllOf(Role role) {
        boolean hasKinds = Attribute.of(role).contains(Meaning.attribute(role));
        return meanings.values().stream()
                .allMatch(each -> (hasKinds || !each.isEmpty()) && each.stream().allMatch(meaning -> meaning.is(role)));
    }

    /** The condition in ECQL that takes the features with some values. */
    static String where(String column, Collection<String> values) {
        return quoted(column) + " IN ("
                + values.stream()
                        .map(value -> "'" + value.replace("'", "''") + "'")
                        .collect(Collectors.joining(", "))
                + ")";
    }

    /** A column's name as ECQL wants it. */
    static String quoted(String column) {
        boolean isPlain = column.matches("[A-Za-z_][A-Za-z0-9_]*") && isRead(column);
        return isPlain ? column : '"' + column + '"';
    }
}
