package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fallrule.finding.Finding;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** From a finding to its place, and from a place to its findings. */
class LitPlacesTest extends InBrowser {
    private static final Report REPORT = SamplePlan.report();

    @BeforeAll
    static void size() {
        browser.size(1280, 1100);
    }

    @BeforeEach
    void open() {
        browser.open(HtmlReport.write(REPORT));
    }

    @AfterEach
    void nothingIsReportedOnTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    /** The number of the finding of a rule about a feature. */
    private static int number(String rule, String subject) {
        List<Finding> findings = REPORT.byNeed();
        for (int i = 0; i < findings.size(); i++) {
            boolean isAbout = findings.get(i)
                    .observation()
                    .subject()
                    .filter(feature -> feature.id().equals(subject))
                    .isPresent();
            if (findings.get(i).rule().equals(rule) && isAbout) {
                return i + 1;
            }
        }
        throw new AssertionError("no finding of " + rule + " about " + subject);
    }

    @Test
    void theButtonOfAFindingLightsThePipeOnThePlanAndOnItsLongSection() {
        int number = number("pipe-least-slope", "P-3");
        browser.driver().executeScript("arguments[0].click()", browser.find("#finding-" + number + " .show"));
        Chromium.Box lit = browser.box("#plan .wide .lit-glow");
        Chromium.Box pipe = browser.box("#plan .wide [data-feature='pipe P-3'] .m-pipe");
        assertThat(lit.middleX()).isCloseTo(pipe.middleX(), within(3.0));
        assertThat(lit.middleY()).isCloseTo(pipe.middleY(), within(3.0));
        Chromium.Box band = browser.box("#sections .wide .lit-band");
        Chromium.Box wall = browser.box("#sections .wide [data-feature='pipe P-3'] .m-pipe-wall");
        assertThat(band.left()).isCloseTo(wall.left(), within(2.0));
        assertThat(band.width()).isCloseTo(wall.width(), within(3.0));
        assertThat(browser.find("#said").getAttribute("textContent"))
                .isEqualTo("Finding " + number + " is lit on plan, long section 1.");
        assertThat(browser.find("#lit").isDisplayed()).isTrue();
    }

    @Test
    void theButtonBringsThePlanIntoSightWithTheFocusOnIt() {
        int number = number("outfall-walk-setback", "OF-1");
        browser.find("#finding-" + number + " .show").click();
        assertThat(browser.driver().switchTo().activeElement()).isEqualTo(browser.find("#plan .wide"));
        Chromium.Box lit = browser.box("#plan .wide .lit-place");
        assertThat(lit.middleY()).isBetween(0.0, 1100.0);
        browser.find("#lit a[href='#finding-" + number + "']").click();
        assertThat(browser.box("#finding-" + number).middleY()).isBetween(0.0, 1100.0);
    }

    @Test
    void aClickOnAFindingLightsItsPlaceAndEscapePutsItOut() {
        int number = number("outfall-walk-setback", "OF-1");
        browser.find("#finding-" + number + " .says").click();
        assertThat(browser.find("#finding-" + number).getAttribute("class")).contains("lit");
        assertThat(browser.seen("#plan .wide .lit-glow")).hasSize(1);
        assertThat(browser.ask("location.hash")).isEqualTo("#finding=" + number);
        new Actions(browser.driver()).sendKeys(Keys.ESCAPE).perform();
        assertThat(browser.seen(".lit-glow, .lit-band, #lit, .finding.lit")).isEmpty();
        assertThat(browser.ask("location.hash")).isEqualTo("");
    }

    @Test
    void aNumberOnThePlanLeadsToItsFindingAndLightsIt() {
        WebElement badge = browser.find("#plan .wide a");
        String target = Chromium.attribute(badge, "href").substring(1);
        new Actions(browser.driver()).moveToElement(badge).click().perform();
        assertThat(browser.find("#" + target).getAttribute("class")).contains("lit");
        assertThat(browser.seen("#plan .wide .lit-glow")).hasSize(1);
    }

    @Test
    void aClickOnAPipeOfThePlanShowsItsFindingsOnly() {
        browser.ask("document.querySelector('#plan .wide').scrollIntoView({block: 'center'})");
        Number[] middle = middleOf("#plan .wide [data-feature='pipe P-4'] .m-pipe");
        new Actions(browser.driver())
                .moveToLocation(middle[0].intValue() + 3, middle[1].intValue())
                .click()
                .perform();
        assertThat(browser.seen("[data-outcome]"))
                .isNotEmpty()
                .allMatch(
                        finding -> Chromium.attribute(finding, "data-features").contains("pipe P-4"));
        assertThat(browser.ask("document.activeElement.id")).isEqualTo("filter-name");
        assertThat(browser.find("#plan .wide [data-feature='pipe P-4']").getAttribute("class"))
                .isEqualTo("lit");
    }

    private static Number[] middleOf(String path) {
        List<?> place = (List<?>) browser.ask(
                "(path => { const p = path.getPointAtLength(path.getTotalLength() / 2)"
                        + ".matrixTransform(path.getScreenCTM()); return [p.x, p.y]; })"
                        + "(document.querySelector(arguments[0]))",
                path);
        return new Number[] {(Number) place.get(0), (Number) place.get(1)};
    }

    @Test
    void aPipeOfALongSectionShowsItsFindingsToo() {
        new Actions(browser.driver())
                .moveToElement(browser.find("#sections .wide [data-feature='pipe P-1'] .m-pipe-wall"))
                .click()
                .perform();
        assertThat(browser.find("#filter [name=feature]").getAttribute("value")).isEqualTo("pipe P-1");
    }

    @Test
    void aFeatureThatNeedsAttentionIsAButtonForTheKeyboard() {
        WebElement outfall = browser.find("#plan .wide [data-feature='outfall OF-1']");
        assertThat(outfall.getAttribute("role")).isEqualTo("button");
        assertThat(outfall.getAttribute("tabindex")).isEqualTo("0");
        assertThat(outfall.getAttribute("aria-label")).matches("outfall OF-1, findings: [1-9]\\d*");
        browser.driver().executeScript("arguments[0].focus()", outfall);
        new Actions(browser.driver()).sendKeys(Keys.ENTER).perform();
        assertThat(browser.find("#filter [name=feature]").getAttribute("value")).isEqualTo("outfall OF-1");
    }

    @Test
    void anAddressWithAFindingLightsIt() {
        browser.reopen("#outcome=fails&finding=1");
        assertThat(browser.seen("#plan .wide .lit-glow")).hasSize(1);
        assertThat(browser.seen("[data-outcome]"))
                .allMatch(finding -> Chromium.attribute(finding, "data-outcome").equals("fails"));
    }
}
