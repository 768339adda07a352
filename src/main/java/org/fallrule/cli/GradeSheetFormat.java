package org.fallrule.cli;

import java.nio.charset.StandardCharsets;
import org.fallrule.report.gradesheet.GradeSheet;
import org.fallrule.report.gradesheet.GradeSheetCsv;
import org.fallrule.report.gradesheet.GradeSheetText;
import org.fallrule.report.pdf.GradeSheetPdf;
import org.fallrule.report.pdf.Paper;

/** The forms that a grade sheet is written in. The names are what a person types. */
enum GradeSheetFormat {
    text("txt") {
        @Override
        byte[] write(GradeSheet sheet, Paper paper) {
            return GradeSheetText.write(sheet).getBytes(StandardCharsets.UTF_8);
        }
    },
    csv("csv") {
        @Override
        byte[] write(GradeSheet sheet, Paper paper) {
            return GradeSheetCsv.write(sheet).getBytes(StandardCharsets.UTF_8);
        }
    },
    pdf("pdf") {
        @Override
        byte[] write(GradeSheet sheet, Paper paper) {
            return GradeSheetPdf.write(sheet, paper);
        }
    };

    private final String ending;

    GradeSheetFormat(String ending) {
        this.ending = ending;
    }

    abstract byte[] write(GradeSheet sheet, Paper paper);

    /** {@code harrow-14-gradesheet.pdf}. */
    String file(GradeSheet sheet) {
        return sheet.id() + "-gradesheet." + ending;
    }
}
