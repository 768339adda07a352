package org.fallrule.report.html;

import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Unit;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.water.ResultTable;
import org.fallrule.report.water.WaterTables;

/**
 * A table of the water as the page shows it.
 *
 * @param key its name in the page
 * @param title its caption
 * @param headings its columns with their units
 * @param rows its rows, a text for each column; empty where nothing is known
 */
public record WaterView(String key, String title, List<String> headings, List<List<String>> rows) {

    public WaterView {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    static List<WaterView> all(SiteAnalysis analysis) {
        return WaterTables.of(analysis).stream()
                .filter(table -> !table.rows().isEmpty())
                .map(WaterView::of)
                .toList();
    }

    private static WaterView of(ResultTable table) {
        List<ResultTable.Column> columns = table.used();
        return new WaterView(
                table.key(),
                table.title(),
                columns.stream().map(WaterView::heading).toList(),
                table.rows().stream()
                        .map(row -> columns.stream()
                                .map(column -> PlainText.of(
                                        ResultTable.bare(row.get(table.columns().indexOf(column)), column)))
                                .toList())
                        .toList());
    }

    private static String heading(ResultTable.Column column) {
        String unit = column.unit().map(Unit::symbol).orElse("");
        return unit.isEmpty() ? column.heading() : column.heading() + ", " + unit;
    }
}
