package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fallrule.report.Visible;

/** Text broken into lines between its words. */
public final class Wrapped {
    /** The first and last letters of what a terminal shows two columns wide (Unicode UAX #11, East Asian Width W and F). */
    private static final int[][] WIDE = {
        {0x1100, 0x115F},
        {0x2E80, 0xA4CF},
        {0xAC00, 0xD7A3},
        {0xF900, 0xFAFF},
        {0xFE30, 0xFE6F},
        {0xFF00, 0xFF60},
        {0xFFE0, 0xFFE6},
        {0x1F300, 0x1FAFF},
        {0x20000, 0x3FFFD}
    };

    private final List<String> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private final int width;
    private int used;

    private Wrapped(int width) {
        this.width = width;
    }

    /** Lines that take at most so many columns; a longer word is cut. Only what is {@link Visible} is left. */
    public static List<String> lines(String words, int width) {
        Wrapped wrapped = new Wrapped(width);
        for (String word : Visible.of(words).strip().split("\\s+", -1)) {
            wrapped.add(word);
        }
        wrapped.end();
        return wrapped.lines;
    }

    private void add(String word) {
        if (used > 0 && used + 1 + columns(word) > width) {
            end();
        }
        if (used > 0) {
            put(' ');
        }
        word.codePoints().forEach(this::put);
    }

    private void put(int letter) {
        int more = columns(letter);
        if (used + more > width) {
            end();
        }
        line.appendCodePoint(letter);
        used += more;
    }

    private void end() {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
    }

    /** Columns that a terminal gives a text. */
    static int columns(String word) {
        return word.codePoints().map(Wrapped::columns).sum();
    }

    /** Columns that a terminal gives a letter: two for ideographs and pictures, none for marks that stand over others. */
    private static int columns(int letter) {
        int type = Character.getType(letter);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = Arrays.stream(WIDE).anyMatch(range -> range[0] <= letter && letter <= range[1]);
        return wide ? 2 : 1;
    }
}
