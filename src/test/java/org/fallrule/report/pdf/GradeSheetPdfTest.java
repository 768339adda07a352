package org.fallrule.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Written;
import org.fallrule.report.gradesheet.GradeSheet;
import org.fallrule.report.gradesheet.HandZones;
import org.fallrule.report.gradesheet.Settings;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class GradeSheetPdfTest {
    private static GradeSheet sheet(String id, int feet) {
        PlanInFeet plan = plan().with(
                        Role.PIPE,
                        id,
                        "LINESTRING (0 0, " + feet + " 0)",
                        "diameter = 4 in",
                        "invert_up = 7 ft",
                        "invert_down = 6.75 ft")
                .with(Role.OUTFALL, "OF-1", "POINT (" + feet + " 0)")
                .with(Role.UTILITY, "G-1", "LINESTRING (10 -9, 10 9)", "kind = gas");
        Settings settings = new Settings(length("10 ft"), length("4 in"), HandZones.given(length("24 in")));
        return GradeSheet.of(SiteAnalysis.of(plan.site()), settings);
    }

    private static Written length(String text) {
        return Written.parse(text, Dimension.LENGTH);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void itsTextCanBeRead() throws IOException {
        String text = text(GradeSheetPdf.write(sheet("P-1", 25), Paper.letter));
        assertThat(text)
                .contains("Grade sheet: Plan (invented)", "Before you dig", "one-call")
                .contains("From 5 ft of depth a trench", "after rain")
                .contains("crosses gas G-1, depth not known", "0+10.0", "6.90")
                .contains("page 1 of 1");
    }

    @Test
    void itsFontsAreEmbedded() throws IOException {
        try (PDDocument document = Loader.loadPDF(GradeSheetPdf.write(sheet("P-1", 25), Paper.letter))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                    assertThat(page.getResources().getFont(name).getName()).contains("SourceSans3");
                }
            }
        }
    }

    @Test
    void itIsTaggedAndHasATitleAndALanguage() throws IOException {
        try (PDDocument document = Loader.loadPDF(GradeSheetPdf.write(sheet("P-1", 25), Paper.letter))) {
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Grade sheet: Plan (invented)");
            assertThat(document.getDocumentCatalog().getStructureTreeRoot().getKids())
                    .isNotEmpty();
        }
    }

    @Test
    void aLongPipeGoesOnOnFurtherPagesUnderItsName() throws IOException {
        byte[] pdf = GradeSheetPdf.write(sheet("P-1", 1200), Paper.a4);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(595f, 596f);
        }
        assertThat(text(pdf)).contains("Pipe P-1: joint to outfall OF-1, continued", "page 3 of");
    }

    @Test
    void theSameSheetGivesTheSameBytes() {
        assertThat(GradeSheetPdf.write(sheet("P-1", 125), Paper.letter))
                .isEqualTo(GradeSheetPdf.write(sheet("P-1", 125), Paper.letter));
    }

    @Test
    void lettersThatTheFontLacksAreShownByNumber() throws IOException {
        String text = text(GradeSheetPdf.write(sheet("管\u0007(x)\\ <b>", 25), Paper.letter));
        assertThat(text).contains("[U+7BA1]").contains("(x)\\ <b>");
    }
}
