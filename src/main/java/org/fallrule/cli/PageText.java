package org.fallrule.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fallrule.report.text.Wrapped;

/** A reference page, which is written in Markdown, as a terminal of 80 columns shows it. A row of a table becomes an item. */
final class PageText {
    private static final int WIDTH = 79;
    /** Tables with more columns than this need the names of the columns beside their values. */
    private static final int PLAIN_COLUMNS = 3;

    private final StringBuilder text = new StringBuilder();
    private List<String> columns = List.of();

    private PageText() {}

    static String of(String page) {
        PageText text = new PageText();
        page.lines().forEach(text::line);
        return text.text.toString();
    }

    private void line(String line) {
        if (!line.startsWith("|")) {
            columns = List.of();
        }
        if (line.startsWith("# ")) {
            put(line.substring(2), "", "");
        } else if (line.startsWith("#")) {
            put(line.replaceFirst("#+ *", "").toUpperCase(Locale.ROOT), "", "");
        } else if (line.startsWith("|")) {
            row(cells(line));
        } else if (line.startsWith("- ")) {
            put(line.substring(2), "- ", "  ");
        } else if (line.startsWith("    ")) {
            put(line, "    ", "      ");
        } else {
            put(line, "", "");
        }
    }

    private void row(List<String> cells) {
        if (columns.isEmpty()) {
            columns = cells;
        } else if (!cells.get(0).startsWith("---")) {
            boolean named = columns.size() > PLAIN_COLUMNS;
            String rest = IntStream.range(1, cells.size())
                    .filter(column -> !cells.get(column).isEmpty())
                    .mapToObj(column -> (named ? columns.get(column) + " " : "") + cells.get(column))
                    .collect(Collectors.joining("; "));
            put(cells.get(0) + ": " + rest, "- ", "  ");
        }
    }

    private static List<String> cells(String row) {
        return Arrays.stream(row.substring(1, row.lastIndexOf('|')).split("\\|", -1))
                .map(String::strip)
                .toList();
    }

    private void put(String words, String first, String then) {
        List<String> lines = new ArrayList<>(Wrapped.lines(plain(words), WIDTH - then.length()));
        for (int i = 0; i < lines.size(); i++) {
            text.append((i == 0 ? first : then) + lines.get(i)).append('\n');
        }
    }

    /** Without what only marks code and links. */
    private static String plain(String words) {
        return words.replace("`", "").replaceAll("\\[([^]]+)]\\([^)]+\\)", "$1");
    }
}
