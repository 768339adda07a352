package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Base64;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fallrule.finding.Finding;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.fallrule.report.Sentence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.print.PrintOptions;

class ReportInBrowserTest extends InBrowser {
    private static final Report REPORT = SamplePlan.report();

    @BeforeEach
    void open() {
        browser.size(1280, 900);
        browser.console();
        browser.requests();
        browser.open(HtmlReport.write(REPORT));
    }

    @AfterEach
    void nothingIsReportedOnTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void nothingIsFetchedButThePage() {
        browser.find("#filter input").click();
        browser.find("button.show").click();
        assertThat(browser.requests()).singleElement().asString().contains("\"url\":\"file:", "report.html");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 800, 1280})
    void thePageNeverScrollsSideways(int width) {
        browser.size(width, 900);
        browser.find("button.show").click();
        assertThat(browser.number("document.documentElement.scrollWidth"))
                .isEqualTo(browser.number("document.documentElement.clientWidth"));
    }

    @Test
    void printingShowsEveryFindingWhateverIsChosenAndNoControls() throws IOException {
        browser.find("#filter input[value=fails]").click();
        browser.find("button.show").click();
        String printed = printed();
        for (Finding finding : REPORT.byNeed()) {
            assertThat(printed).contains(withoutSpace(Sentence.of(finding)));
        }
        assertThat(printed)
                .contains("Cautions")
                .doesNotContain("showonplan", "showall", "wholeplan", "turnoff", "Needsattention(");
    }

    private static String printed() throws IOException {
        String pdf = browser.driver().print(new PrintOptions()).getContent();
        try (PDDocument document = Loader.loadPDF(Base64.getDecoder().decode(pdf))) {
            return withoutSpace(new PDFTextStripper().getText(document));
        }
    }

    private static String withoutSpace(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void thePageIsWholeWithoutScript() {
        browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            browser.reopen("");
            assertThat(browser.seen("[data-outcome] .says")).hasSameSizeAs(REPORT.byNeed());
            assertThat(browser.seen("#plan .wide svg, #sections .wide svg")).hasSizeGreaterThan(1);
            assertThat(browser.seen("button, select, input, #lit")).isEmpty();
        } finally {
            browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    @Test
    void whatHasTheFocusIsSeenToHaveIt() {
        for (String each : new String[] {"button.show", "#filter select", "#plan .wide", "#plan .wide [tabindex]"}) {
            WebElement element = browser.seen(each).get(0);
            browser.driver().executeScript("arguments[0].focus({focusVisible: true})", element);
            assertThat(element.getCssValue("outline-style")).as(each).isEqualTo("solid");
            assertThat(element.getCssValue("outline-width")).as(each).isEqualTo("3px");
        }
    }
}
