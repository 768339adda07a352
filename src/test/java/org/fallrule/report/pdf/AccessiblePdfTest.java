package org.fallrule.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The sheets against ISO 14289-1 (PDF/UA-1), as far as a program can tell: the Matterhorn Protocol's machine checks. */
class AccessiblePdfTest {
    @BeforeAll
    static void rules() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static List<String> faults(Report report)
            throws IOException, ModelParsingException, EncryptedPdfException, ValidationException {
        return faults(ReportPdf.write(report, new PrintSettings(Paper.letter, LocalDate.of(2026, 6, 15))));
    }

    private static List<String> faults(byte[] pdf)
            throws IOException, ModelParsingException, EncryptedPdfException, ValidationException {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(found -> found.getStatus() == TestAssertion.Status.FAILED)
                    .map(found -> found.getRuleId().getClause() + ": " + found.getMessage())
                    .distinct()
                    .toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "thistledown-3"})
    void aSampleCanBeReadAloud(String sample) throws Exception {
        assertThat(faults(Reports.of(sample))).isEmpty();
    }

    @Test
    void anEmptyPlanCanToo() throws Exception {
        assertThat(faults(SamplePlan.emptyReport())).isEmpty();
    }

    @Test
    void aPageThatSaysNothingOfItselfIsFound() throws Exception {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.addPage(new PDPage());
            document.save(out);
            assertThat(faults(out.toByteArray())).isNotEmpty();
        }
    }
}
