package org.fallrule.reader.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A column.
 *
 * @param name its name
 * @param isNumeric whether every value in it is a number, none of them written with a leading zero
 * @param separator what parts the cells of its table
 */
record CsvColumn(String name, boolean isNumeric, char separator) {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+");
    private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,18}");
    private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0\\d.*");

    /** The columns of a table, in the order of its header. */
    static List<CsvColumn> of(CsvTable table) {
        boolean[] isText = new boolean[table.header().size()];
        table.read(row -> {
            for (int index = 0; index < isText.length; index++) {
                isText[index] = isText[index] || !isBlankOrNumber(row.cells().get(index), table.separator());
            }
        });
        List<CsvColumn> columns = new ArrayList<>();
        for (int index = 0; index < isText.length; index++) {
            columns.add(new CsvColumn(table.header().get(index), !isText[index], table.separator()));
        }
        return columns;
    }

    private static boolean isBlankOrNumber(String cell, char separator) {
        String text = cell.strip();
        return text.isEmpty()
                || (number(text, separator).isPresent()
                        && !LEADING_ZERO.matcher(text).matches());
    }

    /** What a cell holds; nothing where it is blank. */
    Optional<Object> value(String cell) {
        String text = cell.strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (isNumeric && WHOLE.matcher(text).matches()) {
            return Optional.of(Long.valueOf(text));
        }
        return isNumeric ? number(text, separator).map(value -> value) : Optional.of(text);
    }

    /** The number that a cell holds; with a decimal comma only where commas do not part the cells. */
    static Optional<Double> number(String cell, char separator) {
        if (NUMBER.matcher(cell).matches()) {
            return Optional.of(Double.valueOf(cell)).filter(Double::isFinite);
        }
        boolean isWithComma = separator != ',' && DECIMAL_COMMA.matcher(cell).matches();
        return isWithComma
                ? Optional.of(Double.valueOf(cell.replace(',', '.'))).filter(Double::isFinite)
                : Optional.empty();
    }
}
