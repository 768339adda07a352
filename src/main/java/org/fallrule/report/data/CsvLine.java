package org.fallrule.report.data;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fallrule.report.Visible;

/**
 * One row of a table (RFC 4180), always one line, with its line end. A cell that a spreadsheet would take for a formula gets an apostrophe
 * before it; so does what follows a semicolon in a cell, since a spreadsheet set to a language with decimal commas parts cells there and
 * does not heed quotes that begin further left.
 */
public final class CsvLine {
    /** With the full-width forms, which some spreadsheets take for the plain ones. */
    private static final String FORMULA_STARTS = "-=+@\uFF1D\uFF0B\uFF0D\uFF20";

    /** A number with its unit, which stays what it is. */
    private static final String QUANTITY = "-\\d+(\\.\\d+)?( [a-z%/]+)?";

    private static final Pattern WITHIN =
            Pattern.compile("(;[\\s\"]*)(?!" + QUANTITY + "(?:;|$))(?=[" + FORMULA_STARTS + "])");

    /** Spreadsheets take a table for one of their own language's letters, unless it begins with this. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private CsvLine() {}

    /** The row of names that a table begins with. */
    public static String first(List<String> names) {
        return BYTE_ORDER_MARK + of(names);
    }

    public static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(String any) {
        String value = Visible.of(any);
        boolean formula =
                !value.isBlank() && FORMULA_STARTS.indexOf(value.stripLeading().charAt(0)) >= 0 && !isQuantity(value);
        String safe = WITHIN.matcher(formula ? "'" + value : value).replaceAll("$1'");
        boolean quoted = safe.chars().anyMatch(letter -> letter == ',' || letter == ';' || letter == '"');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static boolean isQuantity(String value) {
        return value.matches(QUANTITY);
    }
}
