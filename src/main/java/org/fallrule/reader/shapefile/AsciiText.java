package org.fallrule.reader.shapefile;

import java.nio.charset.StandardCharsets;

/** Numbers, dates and logical values as the text that stands in a row. */
final class AsciiText {
    private AsciiText() {}

    /** The text without outer blanks and NUL bytes; empty when the column is blank. */
    static String of(byte[] raw) {
        int from = 0;
        int to = raw.length;
        while (from < to && isBlank(raw[from])) {
            from++;
        }
        while (to > from && isBlank(raw[to - 1])) {
            to--;
        }
        return new String(raw, from, to - from, StandardCharsets.ISO_8859_1);
    }

    /** The text of a complaint: quoted, with a dot for what cannot be shown. */
    static String quoted(String text) {
        return "\"" + text.replaceAll("\\p{Cntrl}", ".") + "\"";
    }

    private static boolean isBlank(byte character) {
        return character >= 0 && character <= ' ';
    }
}
