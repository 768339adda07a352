package org.fallrule.intake;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fallrule.document.Excerpt;
import org.fallrule.reader.LooseLayers;

/** The columns of the tables that were taken for layers, of which no layer reads anything. Columns of people are not in it. */
final class UnreadColumns {
    private static final int NAMED = 12;

    private final Map<String, Set<String>> bySource = new LinkedHashMap<>();

    /**
     * A layer of a table.
     *
     * @param read the columns that it reads
     * @param names its condition and its open questions, which name others
     */
    void taken(LooseLayers.Table table, Set<String> read, String names) {
        Set<String> left = bySource.computeIfAbsent(
                table.source(),
                any -> table.raw().columns().stream()
                        .filter(column -> !Cells.isOfPeople(column))
                        .collect(Collectors.toCollection(LinkedHashSet::new)));
        left.removeIf(column -> read.contains(column)
                || Pattern.compile("(?<!\\w)" + Pattern.quote(column) + "(?!\\w)")
                        .matcher(names)
                        .find());
    }

    void tell(Ledger ledger) {
        bySource.forEach((source, left) -> {
            if (!left.isEmpty()) {
                String names = left.stream().limit(NAMED).map(Excerpt::of).collect(Collectors.joining(", "));
                int more = left.size() - NAMED;
                ledger.tell(source + ": not used " + (left.size() == 1 ? "is the column " : "are the columns ") + names
                        + (more > 0 ? " and " + more + " more" : ""));
            }
        });
    }
}
