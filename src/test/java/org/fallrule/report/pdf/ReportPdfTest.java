package org.fallrule.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Computation;
import org.fallrule.report.Fact;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.report.SamplePlan;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.PlanInMetres;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The report as sheets. */
class ReportPdfTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 15);

    private static byte[] pdf(Report report) {
        return ReportPdf.write(report, new PrintSettings(Paper.letter, DAY));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static List<String> bookmarks(byte[] pdf, boolean within) throws IOException {
        List<String> titles = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDOutlineItem site :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                for (PDOutlineItem part : site.children()) {
                    titles.add(part.getTitle());
                    if (within) {
                        part.children().forEach(item -> titles.add(item.getTitle()));
                    }
                }
            }
        }
        return titles;
    }

    /** A lot of so many feet with a pipe of 50 ft from west to east, whose heights are in feet or in metres. */
    private static Report lot(int feet, boolean metric) {
        String lot = "POLYGON ((0 0, " + feet + " 0, " + feet + " " + feet + ", 0 " + feet + ", 0 0))";
        Site site = plan().with(Role.LOT, "L", lot, "own = true")
                .with(Role.PIPE, "P-1", "LINESTRING (1 20, 51 20)")
                .with(Role.OUTFALL, "OF-1", "POINT (51 20)")
                .site();
        return report(metric ? PlanInMetres.of(site) : site);
    }

    private static Report report(Site site) {
        RuleBook book = new RuleBook(List.of(), PlanInFeet.plan().analysis().locality(), List.of());
        return new Report(SiteAnalysis.of(site), "none", book, new Review(List.of(), List.of()));
    }

    /** The lengths in points of the level straight strokes on all pages. */
    private static List<Double> strokes(byte[] pdf) throws IOException {
        List<Double> lengths = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                double[] last = new double[2];
                List<Object> numbers = new ArrayList<>();
                for (Object token : new PDFStreamParser(page).parse()) {
                    if (!(token instanceof Operator operator)) {
                        numbers.add(token);
                        continue;
                    }
                    if (List.of("m", "l").contains(operator.getName())) {
                        double x = ((COSNumber) numbers.get(0)).floatValue();
                        double y = ((COSNumber) numbers.get(1)).floatValue();
                        if (operator.getName().equals("l") && Math.abs(y - last[1]) < 0.01) {
                            lengths.add(Math.abs(x - last[0]));
                        }
                        last = new double[] {x, y};
                    }
                    numbers.clear();
                }
            }
        }
        return lengths;
    }

    private static void assertMeasures(byte[] pdf, double points) throws IOException {
        assertThat(strokes(pdf)).anySatisfy(length -> assertThat(length).isCloseTo(points, within(0.02)));
    }

    /** A plan may be no more than a line, or a point. */
    @Test
    void aPlanWithoutAnAreaIsDrawn() throws IOException {
        Site line = plan().with(Role.PIPE, "P-1", "LINESTRING (1 20, 51 20)").site();
        Site point = plan().with(Role.OUTFALL, "OF-1", "POINT (51 20)").site();

        assertThat(text(pdf(report(line)))).contains("P-1");
        assertThat(text(pdf(report(point)))).contains("OF-1");
    }

    @Test
    void fiftyFeetMeasureTwoInchesAndAHalfAtOneInchToTwentyFeet() throws IOException {
        byte[] pdf = pdf(lot(120, false));

        assertThat(text(pdf)).contains("Scale 1 in = 20 ft");
        assertMeasures(pdf, 2.5 * 72);
    }

    @Test
    void fiftyFeetMeasureFiveInchesOnASmallLotAndOneOnALargeOne() throws IOException {
        assertThat(text(pdf(lot(52, false)))).contains("Scale 1 in = 10 ft");
        assertMeasures(pdf(lot(52, false)), 5 * 72);
        assertThat(text(pdf(lot(300, false)))).contains("Scale 1 in = 50 ft");
        assertMeasures(pdf(lot(300, false)), 72);
    }

    @Test
    void aMetricPlanIsDrawnAtAMetricScale() throws IOException {
        byte[] pdf = pdf(lot(80, true));

        assertThat(text(pdf)).contains("Scale 1:200").doesNotContain("1 in = 20 ft");
        assertMeasures(pdf, 50 * 0.3048 / 200 / 0.0254 * 72);
    }

    @Test
    void aPlanThatFitsNoScaleGoesOnSeveralSheets() throws IOException {
        byte[] pdf = pdf(lot(700, false));

        assertThat(text(pdf)).contains("Plan, sheet 4 of", "Scale 1 in = 50 ft");
        assertMeasures(pdf, 72);
    }

    @Test
    void aPlanOfManyMilesTakesASmallerScaleAndNotThousandsOfSheets() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(lot(50_000, false)))) {
            assertThat(document.getNumberOfPages()).isLessThan(25);
        }
    }

    @Test
    void itsPartsAndFindingsHaveBookmarks() throws IOException {
        byte[] pdf = pdf(SamplePlan.report());

        assertThat(bookmarks(pdf, false))
                .containsExactly(
                        "Rule books",
                        "Preparer",
                        "Plan",
                        "Long sections",
                        "Findings",
                        "Settled findings",
                        "Tables",
                        "Problems with the input",
                        "Cautions");
        assertThat(bookmarks(pdf, true)).anyMatch(title -> title.startsWith("1  fails, must: "));
    }

    @Test
    void numbersOnTheDrawingsLeadToTheirFindings() throws IOException {
        Report report = Reports.of("harrow-14");
        try (PDDocument document = Loader.loadPDF(pdf(report))) {
            int links = 0;
            for (PDPage page : document.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    PDAnnotationLink link = (PDAnnotationLink) annotation;
                    String number = link.getContents().replaceAll("^Finding (\\d+): .*", "$1");
                    PDPageXYZDestination to = (PDPageXYZDestination) link.getDestination();
                    PDFTextStripper text = new PDFTextStripper();
                    text.setStartPage(to.retrievePageNumber() + 1);
                    text.setEndPage(to.retrievePageNumber() + 1);
                    Outcome outcome =
                            report.byNeed().get(Integer.parseInt(number) - 1).outcome();
                    assertThat(text.getText(document))
                            .containsPattern("(?m)^" + number + " +" + outcome.spoken() + ", ");
                    links++;
                }
            }
            long marked = report.byNeed().stream()
                    .filter(each -> each.outcome() == Outcome.FAILS || each.outcome() == Outcome.BORDERLINE)
                    .filter(each -> each.observation().where().isPresent())
                    .count();
            assertThat(links).isGreaterThanOrEqualTo((int) marked);
        }
    }

    @Test
    void itStatesWhatTheReportStates() throws IOException {
        Report report = Reports.of("harrow-14");
        String text = text(pdf(report)).replaceAll("\\s+", " ");

        assertThat(text)
                .contains(report.verdict(), "Harrow Street 14", "reviewed 2026-06-15", "Submittal checklist")
                .contains("Left empty for the person who answers for this plan.")
                .contains("Scale of lengths 1 in =", "This is a screening aid.", "Dig by hand");
        assertThat(text).doesNotContain("not to scale");
        report.book().books().forEach(book -> assertThat(text.replace(" ", "")).contains(book.sha256()));
        assertThat(text).contains("page 1 of ");
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SamplePlan.report()))) {
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                    fonts++;
                }
            }
            assertThat(fonts).isPositive();
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePaperIsTheOneAskedFor(Paper paper) throws IOException {
        try (PDDocument document =
                Loader.loadPDF(ReportPdf.write(SamplePlan.report(), new PrintSettings(paper, DAY)))) {
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .isEqualTo(paper.size().getWidth());
        }
    }

    @Test
    void theSameReportGivesTheSameBytes() {
        assertThat(pdf(SamplePlan.report())).isEqualTo(pdf(SamplePlan.report()));
    }

    @Test
    void whatAnybodyMayWriteIntoATableIsPrintedOrCut() throws IOException {
        for (String id : List.of("\u0007\u001b[31m", "\u202Eevil", "مرحبا", "\uD83D\uDEB0", "管", "x".repeat(10_000))) {
            String text = text(pdf(SamplePlan.report(name -> name + id)));
            assertThat(text).contains("OF-1").hasSizeLessThan(600_000);
        }
        assertThat(text(pdf(SamplePlan.report(name -> name + "\u0007")))).contains("[U+0007]");
    }

    @Test
    void anEmptyPlanStillHasItsReport() throws IOException {
        assertThat(text(pdf(SamplePlan.emptyReport())))
                .contains("The plan has nothing that could be drawn.", "The plan has no pipes.", "Cautions");
    }

    @Test
    void computationsAreSetDownStepByStep() throws IOException {
        Computation.Step step = new Computation.Step(
                "peak flow",
                "Q = C i A",
                List.of(new Fact("C", "0.9"), new Fact("i", "5 in/h"), new Fact("A", "0.1 ac")),
                "0.45 cfs",
                "HEC-22, 4th edition, 4.2.2");
        byte[] pdf = ReportPdf.write(
                SamplePlan.report(),
                List.of(new Computation("Flow to CB-1", List.of(step))),
                new PrintSettings(Paper.letter, DAY));

        assertThat(text(pdf).replaceAll("\\s+", " "))
                .contains("Flow to CB-1", "Q = C i A", "C = 0.9, i = 5 in/h, A = 0.1 ac", "0.45 cfs", "HEC-22");
    }
}
