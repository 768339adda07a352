package org.fallrule.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.fallrule.report.gradesheet.GradeSheet;
import org.fallrule.report.gradesheet.GradeWords;
import org.fallrule.report.gradesheet.PipeGrade;

/** The grade sheet on paper. The same sheet gives the same bytes. */
public final class GradeSheetPdf {
    private static final double TEXT = 10;
    private static final double LINE = 13;
    /** Height that a pipe's heading, its facts and its first rows want together. */
    private static final double START = 130;

    private final GradeSheet sheet;
    private final GradeWords words;
    private final PdfPages pages;
    private final Typeface regular;
    private final Typeface bold;

    private GradeSheetPdf(GradeSheet sheet, PDDocument document, Paper paper) throws IOException {
        this.sheet = sheet;
        this.words = new GradeWords(sheet);
        this.regular = Typeface.regular(document);
        this.bold = Typeface.semibold(document);
        this.pages = new PdfPages(document, paper);
    }

    public static byte[] write(GradeSheet sheet, Paper paper) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.setDocumentId(0L);
            GradeSheetPdf pdf = new GradeSheetPdf(sheet, document, paper);
            pdf.write();
            document.getDocumentInformation().setTitle(pdf.words.title());
            PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
            preferences.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write() throws IOException {
        heading("H1", 17, words.title());
        paragraphs(words.reading());
        heading("H2", 12.5, "Before you dig");
        paragraphs(sheet.cautions());
        if (sheet.pipes().isEmpty()) {
            paragraphs(List.of("The plan has no pipes."));
        }
        for (PipeGrade pipe : sheet.pipes()) {
            pages.skip(8);
            pages.room(START);
            heading("H2", 12.5, words.heading(pipe));
            paragraphs(words.facts(pipe));
            pages.skip(3);
            new GradeTable(pages, regular, bold).draw(words, pipe);
        }
        pages.close(regular, regular.printable(words.title()));
    }

    private void heading(String type, double size, String text) throws IOException {
        PDStructureElement element = pages.tags().under(pages.tags().whole(), type);
        for (String line : bold.lines(text, size, pages.width())) {
            pages.room(size * 1.5);
            pages.text(element, bold, size, 0, size * 1.1, line);
            pages.skip(size * 1.5);
        }
    }

    private void paragraphs(List<String> paragraphs) throws IOException {
        for (String paragraph : paragraphs) {
            PDStructureElement element = pages.tags().under(pages.tags().whole(), "P");
            for (String line : regular.lines(paragraph, TEXT, pages.width())) {
                pages.room(LINE);
                pages.text(element, regular, TEXT, 0, LINE - 3, line);
                pages.skip(LINE);
            }
            pages.skip(2);
        }
    }
}
