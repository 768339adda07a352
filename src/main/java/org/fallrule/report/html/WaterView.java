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
 * @param rows its rows
 */
public record WaterView(String key, String title, List<String> headings, List<Row> rows) {
    private static final String REMARK = "remark";

    /**
     * A row.
     *
     * @param cells a text for each column; empty where nothing is known
     * @param remark what is to be said of it; stands below it
     */
    public record Row(List<String> cells, String remark) {}

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
        List<ResultTable.Column> columns = table.used().stream()
                .filter(column -> !column.key().equals(REMARK))
                .toList();
        return new WaterView(
                table.key(),
                table.title(),
                columns.stream().map(WaterView::heading).toList(),
                table.rows().stream().map(row -> row(table, columns, row)).toList());
    }

    private static Row row(ResultTable table, List<ResultTable.Column> columns, List<ResultTable.Cell> cells) {
        List<String> texts = columns.stream()
                .map(column ->
                        PlainText.of(ResultTable.bare(cells.get(table.columns().indexOf(column)), column)))
                .toList();
        ResultTable.Cell last = cells.get(cells.size() - 1);
        return new Row(texts, last instanceof ResultTable.Cell.Words words ? PlainText.of(words.words()) : "");
    }

    private static String heading(ResultTable.Column column) {
        String unit = column.unit().map(Unit::symbol).orElse("");
        return unit.isEmpty() ? column.heading() : column.heading() + ", " + unit;
    }
}
