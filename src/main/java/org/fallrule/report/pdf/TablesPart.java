package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fallrule.report.Report;
import org.fallrule.report.data.ShownQuantity;
import org.fallrule.report.data.Tables;
import org.jspecify.annotations.Nullable;

/** Every table that the report has, with the columns that it has. */
final class TablesPart {

    /** Columns whose texts are names and stand as the plan writes them. */
    private static final Set<String> NAMES = Set.of("id", "from", "to", "from_pipe", "to_pipe", "pipe", "utility");

    private final Galley galley;
    private final Report report;

    TablesPart(Galley galley, Report report) {
        this.galley = galley;
        this.report = report;
    }

    void write() throws IOException {
        galley.heading(2, "Tables", 120);
        for (Map.Entry<String, Object> table : new Tables(report).tree().entrySet()) {
            if (table.getValue() instanceof List<?> rows) {
                table(words(table.getKey()), rows);
            }
        }
        galley.pages().turn(false);
    }

    private void table(String name, List<?> rows) throws IOException {
        Set<String> columns = new LinkedHashSet<>();
        for (Object row : rows) {
            if (row instanceof Map<?, ?> cells) {
                cells.keySet().forEach(key -> columns.add(String.valueOf(key)));
            }
        }
        List<List<String>> cells = new ArrayList<>();
        for (Object row : rows) {
            if (row instanceof Map<?, ?> values) {
                cells.add(columns.stream()
                        .map(column -> shown(column, values.get(column)))
                        .toList());
            }
        }
        draw(name, columns.stream().map(TablesPart::words).toList(), cells);
    }

    private void draw(String name, List<String> columns, List<List<String>> cells) throws IOException {
        String title = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        boolean wide = DataTable.wanted(galley, columns, cells) > galley.pages().upright() * 1.15;
        if (wide != galley.pages().isWide()) {
            galley.pages().turn(wide);
        }
        galley.heading(3, title, 50);
        if (cells.isEmpty()) {
            galley.paragraph("The plan has none.");
        } else {
            new DataTable(galley, columns, cells).draw();
        }
    }

    private static String words(String key) {
        return key.replace('_', ' ');
    }

    private static String shown(String column, @Nullable Object value) {
        if (value instanceof ShownQuantity quantity) {
            return quantity.shown();
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        String text = value == null ? "" : value.toString();
        return NAMES.contains(column) ? text : words(text);
    }
}
