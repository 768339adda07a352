package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.report.water.ResultTable;
import org.fallrule.report.water.WaterTables;

/** The tables of the water as trees: for each table its rows, each by column. */
final class WaterTree {
    private WaterTree() {}

    static Map<String, Object> of(SiteAnalysis analysis) {
        Map<String, Object> tree = new LinkedHashMap<>();
        WaterTables.of(analysis).forEach(table -> tree.put(table.key(), rows(table)));
        return tree;
    }

    private static List<Map<String, Object>> rows(ResultTable table) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (List<ResultTable.Cell> cells : table.rows()) {
            Map<String, Object> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                put(row, table.columns().get(i), cells.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static void put(Map<String, Object> row, ResultTable.Column column, ResultTable.Cell cell) {
        if (cell instanceof ResultTable.Cell.Words words) {
            row.put(column.key(), words.words());
        } else if (cell instanceof ResultTable.Cell.Value value) {
            Tables.put(
                    row,
                    column.key(),
                    Optional.of(value.quantity()),
                    column.unit().orElseThrow());
        }
    }
}
