package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.fallrule.report.gradesheet.GradeRow;
import org.fallrule.report.gradesheet.GradeWords;
import org.fallrule.report.gradesheet.PipeGrade;

/** A pipe's rows as a table. Its head is repeated on each page. */
final class GradeTable {
    private static final double FONT = 10;
    private static final double LINE = 12.5;
    private static final double PAD = 3;
    /** The right edges of the columns of figures, then the left edges of the columns of words. */
    private static final double[] EDGES = {52, 108, 164, 212, 256, 268, 300};

    private static final int FIGURES = 5;

    private final PdfPages pages;
    private final Typeface regular;
    private final Typeface bold;
    private final PDStructureElement table;

    GradeTable(PdfPages pages, Typeface regular, Typeface bold) {
        this.pages = pages;
        this.regular = regular;
        this.bold = bold;
        this.table = pages.tags().under(pages.tags().whole(), "Table");
    }

    void draw(GradeWords words, PipeGrade pipe) throws IOException {
        head();
        for (GradeRow row : pipe.rows()) {
            List<String> cells = words.cells(pipe, row);
            List<String> at = regular.lines(cells.get(6), FONT, pages.width() - EDGES[6]);
            if (pages.room(at.size() * LINE + PAD)) {
                continued(words.heading(pipe));
                head();
            }
            row(cells, at, row.byHand());
        }
    }

    private void continued(String heading) throws IOException {
        PDStructureElement caption = pages.tags().under(table, "Caption");
        String text = bold.lines(heading + ", continued", FONT, pages.width()).get(0);
        pages.text(caption, bold, FONT, 0, LINE - 2, text);
        pages.skip(LINE + PAD);
    }

    private void head() throws IOException {
        PDStructureElement row = pages.tags().under(table, "TR");
        List<String> columns = GradeWords.columns();
        for (int i = 0; i < columns.size(); i++) {
            PDStructureElement cell = pages.tags().under(row, "TH");
            pages.text(cell, bold, FONT, left(columns.get(i), i, bold), LINE - 2, columns.get(i));
        }
        pages.skip(LINE + PAD);
        pages.rule(0, pages.width(), 0, 1, 0);
    }

    private void row(List<String> cells, List<String> at, boolean byHand) throws IOException {
        double height = at.size() * LINE + PAD;
        if (byHand) {
            pages.bar(-8, 4, height, 0);
        }
        PDStructureElement row = pages.tags().under(table, "TR");
        for (int i = 0; i < cells.size() - 1; i++) {
            PDStructureElement cell = pages.tags().under(row, "TD");
            Typeface face = i == FIGURES ? bold : regular;
            String text = face.printable(cells.get(i));
            if (!text.isEmpty()) {
                pages.text(cell, face, FONT, left(text, i, face), LINE - 1, text);
            }
        }
        PDStructureElement cell = pages.tags().under(row, "TD");
        for (int i = 0; i < at.size(); i++) {
            if (!at.get(i).isEmpty()) {
                pages.text(cell, regular, FONT, EDGES[6], LINE - 1 + i * LINE, at.get(i));
            }
        }
        pages.skip(height);
        pages.rule(0, pages.width(), 0, 0.4, 0.6);
    }

    private static double left(String text, int column, Typeface face) {
        return column < FIGURES ? EDGES[column] - face.width(text, FONT) : EDGES[column];
    }
}
