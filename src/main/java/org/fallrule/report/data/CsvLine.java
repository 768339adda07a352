package org.fallrule.report.data;

import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.report.Visible;

/**
 * One row of a table (RFC 4180), always one line, with its line end. A cell that a spreadsheet would take for a formula gets an apostrophe
 * before it.
 */
public final class CsvLine {
    /** With the full-width forms, which some spreadsheets take for the plain ones. */
    private static final String FORMULA_STARTS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private CsvLine() {}

    public static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(String any) {
        String value = Visible.of(any);
        boolean formula =
                !value.isBlank() && FORMULA_STARTS.indexOf(value.stripLeading().charAt(0)) >= 0 && !isQuantity(value);
        String safe = formula ? "'" + value : value;
        boolean quoted = safe.chars().anyMatch(letter -> letter == ',' || letter == ';' || letter == '"');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static boolean isQuantity(String value) {
        return value.matches("-\\d+(\\.\\d+)?( [a-z%/]+)?");
    }
}
