package org.fallrule.report.gradesheet;

import java.util.List;
import java.util.Locale;
import org.fallrule.report.text.Wrapped;

/** The grade sheet as text, 80 columns wide. */
public final class GradeSheetText {
    private static final int WIDTH = 80;

    private final GradeSheet sheet;
    private final GradeWords words;
    private final StringBuilder text = new StringBuilder();

    private GradeSheetText(GradeSheet sheet) {
        this.sheet = sheet;
        this.words = new GradeWords(sheet);
    }

    public static String write(GradeSheet sheet) {
        return new GradeSheetText(sheet).written();
    }

    private String written() {
        paragraph("", "", words.title());
        words.reading().forEach(line -> paragraph("", "  ", line));
        if (sheet.pipes().isEmpty()) {
            line("");
            line("The plan has no pipes.");
        }
        sheet.pipes().forEach(this::pipe);
        line("");
        line("CAUTIONS");
        sheet.cautions().forEach(caution -> paragraph("  ", "  ", caution));
        return text.toString();
    }

    private void pipe(PipeGrade pipe) {
        line("");
        paragraph("", "  ", words.heading(pipe));
        words.facts(pipe).forEach(fact -> paragraph("  ", "    ", fact));
        row(GradeWords.columns());
        pipe.rows().forEach(each -> row(words.cells(pipe, each)));
    }

    private void row(List<String> cells) {
        String numbers = String.format(
                Locale.ROOT,
                "  %10s %9s %9s %7s %7s %5s",
                cells.get(0),
                cells.get(1),
                cells.get(2),
                cells.get(3),
                cells.get(4),
                cells.get(5));
        List<String> at = Wrapped.lines(cells.get(6), WIDTH - numbers.length() - 2);
        for (int i = 0; i < at.size(); i++) {
            String start = i == 0 ? numbers : " ".repeat(numbers.length());
            line((start + "  " + at.get(i)).stripTrailing());
        }
    }

    private void paragraph(String first, String others, String content) {
        List<String> lines = Wrapped.lines(content, WIDTH - Math.max(first.length(), others.length()));
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? first : others) + lines.get(i));
        }
    }

    private void line(String content) {
        text.append(content).append('\n');
    }
}
