package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Unit;
import org.fallrule.report.water.ResultTable;
import org.fallrule.report.water.StormWords;
import org.fallrule.report.water.WaterTables;

/** The tables of the water in columns; a remark stands below its row. */
final class WaterText {
    private static final int WIDTH = 80;
    private static final int NAME = 9;
    /** Columns that do not fit: remarks, which stand below, and what the other tables of the text tell. */
    private static final Set<String> ELSEWHERE = Set.of("remark", "size", "slope", "grade_line_up", "grade_line_down");

    private final List<String> lines = new ArrayList<>();

    private WaterText() {}

    /** Lines of at most 80 columns. */
    static List<String> lines(SiteAnalysis analysis) {
        WaterText text = new WaterText();
        Wrapped.lines(StormWords.of(analysis), WIDTH - 2).forEach(line -> text.lines.add("  " + line));
        WaterTables.of(analysis).stream()
                .filter(table -> !table.rows().isEmpty())
                .forEach(text::table);
        return text.lines;
    }

    private void table(ResultTable table) {
        List<ResultTable.Column> columns = table.used().stream()
                .filter(column -> !ELSEWHERE.contains(column.key()))
                .toList();
        int width = columns.size() < 2 ? 0 : Math.min(9, (WIDTH - 2 - NAME) / (columns.size() - 1));
        lines.add("");
        lines.add("  " + table.title());
        lines.add(row(columns.stream().map(ResultTable.Column::heading).toList(), width));
        if (columns.size() > 1) {
            lines.add(row(
                    columns.stream()
                            .map(column -> column.unit().map(Unit::symbol).orElse(""))
                            .toList(),
                    width));
        }
        for (List<ResultTable.Cell> cells : table.rows()) {
            lines.add(row(
                    columns.stream()
                            .map(column ->
                                    ResultTable.bare(cells.get(table.columns().indexOf(column)), column))
                            .toList(),
                    width));
            if (cells.get(cells.size() - 1) instanceof ResultTable.Cell.Words remark) {
                Wrapped.lines(remark.words(), WIDTH - 6).forEach(line -> lines.add("      " + line));
            }
        }
    }

    private static String row(List<String> cells, int width) {
        String name = Wrapped.lines(cells.get(0), NAME).get(0);
        StringBuilder row = new StringBuilder("  ").append(name);
        row.append(" ".repeat(Math.max(0, NAME - Wrapped.columns(name))));
        cells.stream()
                .skip(1)
                .forEach(cell -> row.append(" ".repeat(Math.max(1, width - Wrapped.columns(cell))))
                        .append(cell));
        return row.toString().stripTrailing();
    }
}
