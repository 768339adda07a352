package org.fallrule.report.water;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;

/**
 * A table of results.
 *
 * @param key its name in files: {@code flows}
 * @param title its name to a reader
 * @param columns its columns
 * @param rows its rows, a cell for each column
 */
public record ResultTable(String key, String title, List<Column> columns, List<List<Cell>> rows) {

    public ResultTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A column.
     *
     * @param key its name in files: {@code flow}
     * @param heading its name to a reader
     * @param unit the unit that its values are printed in; empty for words
     */
    public record Column(String key, String heading, Optional<Unit> unit) {
        static Column of(String key, String heading, Unit unit) {
            return new Column(key, heading, Optional.of(unit));
        }

        static Column words(String key, String heading) {
            return new Column(key, heading, Optional.empty());
        }
    }

    /** What stands in a cell. */
    public sealed interface Cell {
        /** A value. */
        record Value(Quantity quantity) implements Cell {}

        /** A name or a remark. */
        record Words(String words) implements Cell {}

        /** Nothing: not known, or not applicable. */
        record Empty() implements Cell {}

        static Cell of(Optional<? extends Quantity> quantity) {
            return quantity.<Cell>map(Value::new).orElseGet(Empty::new);
        }

        static Cell remark(Optional<String> remark) {
            return remark.<Cell>map(Words::new).orElseGet(Empty::new);
        }

        /** Why the first of some answers that has no value has none; nothing where all have one. */
        static Cell why(Answer<?>... answers) {
            return remark(Stream.of(answers)
                    .map(Answer::why)
                    .filter(reason -> !reason.isEmpty())
                    .findFirst());
        }
    }

    /** A cell as printed, without its unit. */
    public static String bare(Cell cell, Column column) {
        if (cell instanceof Cell.Words words) {
            return words.words();
        }
        if (cell instanceof Cell.Value value) {
            String printed = Printed.of(value.quantity(), column.unit().orElseThrow());
            int space = printed.indexOf(' ');
            return space < 0 ? printed : printed.substring(0, space);
        }
        return "";
    }

    /** The columns in which some row has something. */
    public List<Column> used() {
        return columns.stream()
                .filter(column ->
                        rows.stream().anyMatch(row -> !(row.get(columns.indexOf(column)) instanceof Cell.Empty)))
                .toList();
    }
}
