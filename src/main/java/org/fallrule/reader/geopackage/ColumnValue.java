package org.fallrule.reader.geopackage;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.document.Excerpt;

/**
 * A value as its column's declared type means it (OGC 12-128, clause 1.1.1, table of data types). SQLite holds any value in any column;
 * readers are told to expect it there, so what does not fit is kept as it is, with a note.
 */
final class ColumnValue {
    private static final int LONGEST_TEXT = 40;
    private static final Set<String> REAL = Set.of("FLOAT", "DOUBLE", "REAL");
    private static final Set<String> WHOLE = Set.of("TINYINT", "SMALLINT", "MEDIUMINT", "INT", "INTEGER");

    private ColumnValue() {}

    /**
     * The value; empty where it is none.
     *
     * @param found as SQLite holds it: a number, a text or bytes
     * @param complain takes a sentence on a value that does not fit
     */
    static Optional<Object> of(Object found, String type, Consumer<String> complain) {
        if (found instanceof byte[]) {
            complain.accept("holds bytes where " + shown(type) + " is wanted; not used");
            return Optional.empty();
        }
        return found instanceof Number number ? number(number, type, complain) : text(found.toString(), type, complain);
    }

    private static Optional<Object> number(Number number, String type, Consumer<String> complain) {
        boolean isWhole = !(number instanceof Double || number instanceof Float);
        if (!isWhole && !Double.isFinite(number.doubleValue())) {
            complain.accept("is infinite; wanted a number; not used");
            return Optional.empty();
        }
        if (type.equals("BOOLEAN") && isWhole && (number.longValue() == 0 || number.longValue() == 1)) {
            return Optional.of(number.longValue() == 1);
        }
        if (type.equals("BOOLEAN")) {
            complain.accept("is " + number + " where 0 or 1 is wanted; read as a number");
        }
        return Optional.of(isWhole && !REAL.contains(type) ? (Object) number.longValue() : number.doubleValue());
    }

    private static Optional<Object> text(String text, String type, Consumer<String> complain) {
        if (type.equals("DATE")) {
            try {
                return Optional.of(LocalDate.parse(text));
            } catch (DateTimeException none) {
                complain.accept(
                        "\"" + Excerpt.of(text, LONGEST_TEXT) + "\" is no date such as 2024-05-31; read as text");
            }
        } else if (REAL.contains(type) || WHOLE.contains(type) || type.equals("BOOLEAN")) {
            complain.accept("\"" + Excerpt.of(text, LONGEST_TEXT) + "\" is text in a column of type " + type
                    + "; read as text");
        }
        return Optional.of(text);
    }

    private static String shown(String type) {
        return type.isEmpty() ? "a number or text" : type;
    }
}
