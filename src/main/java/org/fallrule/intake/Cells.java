package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fallrule.document.Excerpt;
import org.fallrule.reader.layer.RawFeature;

/** What stands in the columns of some features. Columns that may name people are never looked into. */
final class Cells {
    /** Columns of people: their names and how to reach them, which no check needs. */
    private static final Pattern OF_PEOPLE = Pattern.compile(
            ".*(owner|ownr|taxpayer|grantee|grantor|deedhold|mail|phone|email|contact|resident|tenant|firstn|lastn|fullname).*"
                    + "|own(name|nm|addr|city|state|zip).*|name[12]?.*(own|tax).*");

    private static final int SHOWN = 3;

    private final List<RawFeature> features;
    private final Set<String> columns;

    private Cells(List<RawFeature> features, Set<String> columns) {
        this.features = features;
        this.columns = columns;
    }

    static Cells of(List<RawFeature> features, Collection<String> columns) {
        return new Cells(
                features,
                columns.stream()
                        .filter(column -> !isOfPeople(column))
                        .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    static boolean isOfPeople(String column) {
        return OF_PEOPLE.matcher(TradeWords.plain(column)).matches();
    }

    /** The same columns of other features. */
    Cells of(List<RawFeature> others) {
        return new Cells(others, columns);
    }

    Set<String> columns() {
        return columns;
    }

    List<RawFeature> features() {
        return features;
    }

    /** The values of a column, one for each feature that has one. */
    List<Object> values(String column) {
        List<Object> values = new ArrayList<>();
        for (RawFeature feature : features) {
            Object value = feature.columns().get(column);
            if (value != null && !text(value).isBlank()) {
                values.add(value);
            }
        }
        return values;
    }

    /** The different values of a column as texts, with how many features have each, in the order met. */
    Map<String, Integer> counts(String column) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        values(column).forEach(value -> counts.merge(text(value), 1, Integer::sum));
        return counts;
    }

    /** A few values, for questions. */
    String shown(String column) {
        List<String> all = List.copyOf(counts(column).keySet());
        String some = all.stream().limit(SHOWN).map(Excerpt::of).collect(Collectors.joining(", "));
        return all.size() > SHOWN ? some + ", …" : some;
    }

    /** A cell as the reader takes it for text: a whole number has no point. */
    static String text(Object raw) {
        return raw instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.format(Locale.ROOT, "%d", number.longValue())
                : String.valueOf(raw).strip();
    }
}
