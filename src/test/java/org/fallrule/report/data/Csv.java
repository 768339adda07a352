package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.List;

/** Reads a table after RFC 4180, so that tests do not rest on the writer's own idea of it. */
final class Csv {
    private Csv() {}

    static List<List<String>> parse(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '"' && quoted && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                row.add(cell.toString());
                cell.setLength(0);
            } else if (letter == '\n' && !quoted) {
                row.add(cell.toString());
                cell.setLength(0);
                rows.add(List.copyOf(row));
                row.clear();
            } else if (letter != '\r' || quoted) {
                cell.append(letter);
            }
        }
        if (quoted || cell.length() > 0 || !row.isEmpty()) {
            throw new IllegalArgumentException("the last row does not end");
        }
        return rows;
    }
}
