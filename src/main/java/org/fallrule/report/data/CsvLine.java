package org.fallrule.report.data;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One line of a table (RFC 4180), with its line end. A cell that a spreadsheet would take for a formula gets an apostrophe
 * before it.
 */
public final class CsvLine {
    private CsvLine() {}

    public static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(String value) {
        boolean formula = !value.isEmpty() && "=+-@\t\r".indexOf(value.charAt(0)) >= 0 && !isQuantity(value);
        String safe = formula ? "'" + value : value;
        boolean quoted =
                safe.chars().anyMatch(letter -> letter == ',' || letter == '"' || letter == '\n' || letter == '\r');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static boolean isQuantity(String value) {
        return value.matches("-\\d+(\\.\\d+)?( [a-z%/]+)?");
    }
}
