package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.report.map.PlainText;

/** A table as wide as its words want, or as the page has; its head stands again on every page. */
final class DataTable {
    private static final double FONT = 8.5;
    private static final double LINE = 10.5;
    private static final double PAD = 4;
    private static final double GAP = 8;
    private static final double WIDEST_WORD = 110;
    private static final int MOST = 300;

    private final Galley galley;
    private final PdfPages pages;
    private final List<String> columns;
    private final List<List<String>> rows;
    private final double[] widths;

    DataTable(Galley galley, List<String> columns, List<List<String>> rows) {
        this.galley = galley;
        this.pages = galley.pages();
        this.columns = columns;
        this.rows = rows.stream()
                .map(row ->
                        row.stream().map(cell -> PlainText.clipped(cell, MOST)).toList())
                .toList();
        this.widths = widths();
    }

    /** The width that the table would like, in points. */
    static double wanted(Galley galley, List<String> columns, List<List<String>> rows) {
        DataTable table = new DataTable(galley, columns, rows);
        return Arrays.stream(table.natural()).map(width -> width + GAP).sum();
    }

    private double[] natural() {
        double[] natural = new double[columns.size()];
        for (int i = 0; i < natural.length; i++) {
            natural[i] = widest(i, false);
        }
        return natural;
    }

    private double widest(int column, boolean words) {
        double widest = words
                ? widestWord(galley.bold(), columns.get(column))
                : galley.bold().width(galley.bold().printable(columns.get(column)), FONT);
        for (List<String> row : rows) {
            String cell = row.get(column);
            widest = Math.max(
                    widest,
                    words
                            ? widestWord(galley.regular(), cell)
                            : galley.regular().width(galley.regular().printable(cell), FONT));
        }
        return words ? Math.min(WIDEST_WORD, widest) : widest;
    }

    private static double widestWord(Typeface face, String text) {
        return Arrays.stream(face.printable(text).split("\\s", -1))
                .mapToDouble(word -> face.width(word, FONT))
                .max()
                .orElse(0);
    }

    /** As wide as the widest cell where the page has room; else every column its widest word and a share of the rest. */
    private double[] widths() {
        double[] natural = natural();
        double room = pages.width() - GAP * (natural.length - 1);
        double wanted = Arrays.stream(natural).sum();
        if (wanted <= room) {
            return natural;
        }
        double[] widths = new double[natural.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.min(natural[i], widest(i, true));
        }
        double least = Arrays.stream(widths).sum();
        for (int i = 0; i < widths.length; i++) {
            widths[i] = least >= room
                    ? widths[i] * room / least
                    : widths[i] + (natural[i] - widths[i]) * (room - least) / (wanted - least);
        }
        return widths;
    }

    void draw() throws IOException {
        PDStructureElement table = galley.under("Table");
        List<List<String>> head = cells(galley.bold(), columns);
        pages.room(height(head) + 3 * LINE);
        head(head, table);
        for (List<String> row : rows) {
            List<List<String>> cells = cells(galley.regular(), row);
            if (pages.room(height(cells))) {
                headAgain(head);
            }
            row(cells, pages.tags().under(table, "TR"));
        }
        pages.skip(6);
    }

    private List<List<String>> cells(Typeface face, List<String> row) {
        List<List<String>> cells = new ArrayList<>();
        int most = (int) ((pages.height() - 60) / LINE);
        for (int i = 0; i < row.size(); i++) {
            List<String> lines = face.lines(row.get(i), FONT, widths[i] + 0.01);
            cells.add(lines.subList(0, Math.min(most, lines.size())));
        }
        return cells;
    }

    private static double height(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1) * LINE + PAD;
    }

    private void head(List<List<String>> head, PDStructureElement table) throws IOException {
        PDStructureElement row = pages.tags().under(table, "TR");
        double x = 0;
        for (int i = 0; i < head.size(); i++) {
            PDStructureElement cell = pages.tags().under(row, "TH");
            pages.tags().heads(cell, "Column");
            lines(cell, galley.bold(), x, head.get(i));
            x += widths[i] + GAP;
        }
        pages.skip(height(head));
        pages.rule(0, pages.width(), 0, 0.9, 0.1);
    }

    /** The head on a further page, which is no new row. */
    private void headAgain(List<List<String>> head) throws IOException {
        pages.content().beginMarkedContent(COSName.ARTIFACT);
        double x = 0;
        for (int i = 0; i < head.size(); i++) {
            for (int k = 0; k < head.get(i).size(); k++) {
                pages.show(
                        galley.bold(), FONT, x, LINE - 2 + k * LINE, head.get(i).get(k));
            }
            x += widths[i] + GAP;
        }
        pages.content().endMarkedContent();
        pages.skip(height(head));
        pages.rule(0, pages.width(), 0, 0.9, 0.1);
    }

    private void row(List<List<String>> cells, PDStructureElement row) throws IOException {
        double x = 0;
        for (int i = 0; i < cells.size(); i++) {
            lines(pages.tags().under(row, "TD"), galley.regular(), x, cells.get(i));
            x += widths[i] + GAP;
        }
        pages.skip(height(cells));
        pages.rule(0, pages.width(), 0, 0.4, 0.7);
    }

    private void lines(PDStructureElement cell, Typeface face, double x, List<String> lines) throws IOException {
        for (int k = 0; k < lines.size(); k++) {
            String line = lines.get(k);
            if (!line.isEmpty()) {
                pages.text(cell, face, FONT, x, LINE - 1 + k * LINE, line);
            }
        }
    }
}
