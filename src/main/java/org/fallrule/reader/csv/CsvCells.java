package org.fallrule.reader.csv;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** Parts a text into rows of cells (RFC 4180, section 2): a quoted cell may hold separators, line ends and doubled quotes. */
final class CsvCells {
    private static final char QUOTE = '"';

    private final String text;
    private final char separator;
    private final Place file;
    private int at;
    private int line = 1;

    CsvCells(String text, char separator, Place file) {
        this.text = text;
        this.separator = separator;
        this.file = file;
    }

    boolean hasNext() {
        return at < text.length();
    }

    /** The next row. */
    CsvTable.Row next() {
        int start = line;
        List<String> cells = new ArrayList<>();
        cells.add(cell());
        while (at < text.length() && text.charAt(at) == separator) {
            at++;
            cells.add(cell());
        }
        passLineEnd();
        return new CsvTable.Row(start, cells);
    }

    private String cell() {
        int start = at;
        if (at < text.length() && text.charAt(at) == QUOTE) {
            return quoted();
        }
        while (at < text.length() && !endsCell(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at);
    }

    private String quoted() {
        int opened = line;
        StringBuilder cell = new StringBuilder();
        for (at++; at < text.length(); at++) {
            char sign = text.charAt(at);
            boolean doubled = sign == QUOTE && at + 1 < text.length() && text.charAt(at + 1) == QUOTE;
            if (sign == QUOTE && !doubled) {
                at++;
                refuseMore();
                return cell.toString();
            }
            at += doubled ? 1 : 0;
            line += sign == '\n' ? 1 : 0;
            cell.append(sign);
        }
        throw new UnusableInput(file.at(opened, 0), "opens a quote (\") that is not closed; close or double it");
    }

    private void refuseMore() {
        if (at < text.length() && !endsCell(text.charAt(at))) {
            throw new UnusableInput(
                    file.at(line, 0),
                    "has more after a quote (\") that ends a cell; double a quote that belongs to the text");
        }
    }

    private boolean endsCell(char sign) {
        return sign == separator || sign == '\n' || sign == '\r';
    }

    private void passLineEnd() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
            line += at < text.length() && text.charAt(at) == '\n' ? 0 : 1;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
            line++;
        }
    }
}
