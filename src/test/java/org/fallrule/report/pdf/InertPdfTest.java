package org.fallrule.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.Test;

/** Paper does nothing: the file holds no script, action, form, foreign file or address to go to (ISO 32000-1, 12.6 and 7.11). */
class InertPdfTest {
    private static final Set<String> ACTIVE = Set.of(
            "JavaScript",
            "JS",
            "Launch",
            "URI",
            "GoToR",
            "GoToE",
            "SubmitForm",
            "ImportData",
            "OpenAction",
            "AA",
            "Action",
            "EmbeddedFile",
            "EmbeddedFiles",
            "EF",
            "Filespec",
            "RichMedia",
            "Movie",
            "Sound",
            "Rendition",
            "AcroForm",
            "XFA",
            "FileAttachment");

    @Test
    void holdsNothingThatActs() throws IOException {
        byte[] pdf = ReportPdf.write(
                SamplePlan.report(id -> "https://example.org/?) /S /JavaScript /JS (app.alert(1)) javascript:" + id),
                new PrintSettings(Paper.letter, LocalDate.of(2026, 6, 15)));

        Set<String> names = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            names(document.getDocument().getTrailer(), names);
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                names(document.getDocument().getObjectFromPool(key).getObject(), names);
            }
        }

        assertThat(names).contains("Page", "Annots", "Link", "Outlines").doesNotContainAnyElementsOf(ACTIVE);
    }

    /** The names in an object and in what stands in it directly; what it refers to has a number of its own. */
    private static void names(COSBase object, Set<String> names) {
        if (object instanceof COSName name) {
            names.add(name.getName());
        } else if (object instanceof COSDictionary dictionary) {
            dictionary.keySet().forEach(key -> {
                names.add(key.getName());
                names(dictionary.getItem(key), names);
            });
        } else if (object instanceof COSArray array) {
            array.forEach(item -> names(item, names));
        }
    }
}
