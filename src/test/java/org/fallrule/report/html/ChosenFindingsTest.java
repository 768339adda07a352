package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

class ChosenFindingsTest extends InBrowser {
    private static final Report REPORT = SamplePlan.report();

    @BeforeEach
    void open() {
        browser.open(HtmlReport.write(REPORT));
    }

    @AfterEach
    void nothingIsReportedOnTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    private static List<String> shown(String fact) {
        return browser.seen("[data-outcome]").stream()
                .map(finding -> Chromium.attribute(finding, "data-" + fact))
                .toList();
    }

    private static void choose(String name, String value) {
        browser.find("#filter [name=" + name + "] option[value='" + value + "']")
                .click();
    }

    private static long count(java.util.function.Predicate<Finding> which) {
        return REPORT.byNeed().stream().filter(which).count();
    }

    @Test
    void findingsAreChosenByOutcomeAndTheirNumberIsAnnounced() {
        browser.find("#filter input[value=fails]").click();
        assertThat(shown("outcome"))
                .hasSize((int) REPORT.review().count(Outcome.FAILS))
                .containsOnly("fails");
        browser.find("#filter input[value=waived]").click();
        assertThat(shown("outcome")).contains("fails", "waived").doesNotContain("meets", "cannot_tell");
        assertThat(browser.find("#shown").getAttribute("role")).isEqualTo("status");
        assertThat(browser.find("#shown").getText())
                .isEqualTo(shown("outcome").size() + " of " + REPORT.byNeed().size() + " findings shown");
    }

    @Test
    void findingsAreChosenByRule() {
        choose("rule", "pipe-least-slope");
        assertThat(shown("rule"))
                .hasSize((int) count(finding -> finding.rule().equals("pipe-least-slope")))
                .containsOnly("pipe-least-slope");
    }

    @Test
    void findingsAreChosenByTheFeatureThatTheyAreAboutOrAreMeasuredAgainst() {
        choose("feature", "walk W-1");
        assertThat(shown("features"))
                .isNotEmpty()
                .allMatch(names -> List.of(names.split("\n", -1)).contains("walk W-1"));
        choose("feature", "pipe P-4");
        assertThat(shown("features")).hasSize((int) count(finding -> finding.observation()
                .subject()
                .filter(subject -> subject.id().equals("P-4"))
                .isPresent()));
    }

    @Test
    void findingsAreChosenByWordsAllOfWhichTheyMustHave() {
        browser.find("#filter [name=words]").sendKeys("DOWNSTREAM p-4");
        assertThat(shown("outcome")).isNotEmpty().containsOnly("cannot_tell");
        browser.find("#filter [name=words]").sendKeys(" zebra");
        assertThat(shown("outcome")).isEmpty();
        assertThat(browser.find("#shown").getText()).startsWith("0 of ");
    }

    @Test
    void theChoiceIsWorkedByKeyboard() {
        browser.driver().executeScript("document.querySelector('#filter input').focus()");
        browser.driver().switchTo().activeElement().sendKeys(Keys.SPACE);
        assertThat(shown("outcome")).containsOnly("fails");
        browser.driver().switchTo().activeElement().sendKeys(Keys.SPACE);
        while (!focused().getTagName().equals("select")) {
            focused().sendKeys(Keys.TAB);
        }
        focused().sendKeys(Keys.ARROW_DOWN);
        assertThat(shown("rule").stream().distinct()).hasSize(1);
        while (!Chromium.attribute(focused(), "id").equals("show-all")) {
            focused().sendKeys(Keys.TAB);
        }
        focused().sendKeys(Keys.ENTER);
        assertThat(shown("rule")).hasSameSizeAs(REPORT.byNeed());
    }

    private static WebElement focused() {
        return browser.driver().switchTo().activeElement();
    }

    @Test
    void theChoiceStandsInTheAddressAndIsMadeAgainFromIt() {
        browser.find("#filter input[value=fails]").click();
        browser.find("#filter input[value=meets]").click();
        choose("feature", "pipe P-1");
        browser.find("#filter [name=words]").sendKeys("falls enough");
        List<String> chosen = shown("number");
        String hash = browser.ask("location.hash").toString();
        browser.reopen(hash);
        assertThat(shown("number")).isNotEmpty().isEqualTo(chosen);
        assertThat(browser.ask("location.hash")).isEqualTo(hash);
        assertThat(browser.find("#filter [name=words]").getAttribute("value")).isEqualTo("falls enough");
    }

    @Test
    void anAddressThatAsksForWhatIsNotThereShowsEverything() {
        browser.reopen("#outcome=splendid&rule=%3Cscript%3E&feature=pipe%20P-99&finding=4000");
        assertThat(shown("number")).hasSameSizeAs(REPORT.byNeed());
    }

    @Test
    void aLinkToAFindingThatIsNotShownShowsIt() {
        browser.find("#filter input[value=waived]").click();
        browser.driver()
                .executeAsyncScript("addEventListener('hashchange', () => setTimeout(arguments[0]));"
                        + " location.hash = 'finding-1'");
        assertThat(browser.find("#finding-1").isDisplayed()).isTrue();
        assertThat(browser.find("#finding-1").getAttribute("class")).contains("lit");
    }

    @Test
    void aLinkToAPartOfThePageKeepsTheChoice() {
        browser.find("#filter input[value=fails]").click();
        browser.find("nav a[href='#cautions']").click();
        assertThat(shown("outcome")).containsOnly("fails");
        browser.find("#filter input[value=borderline]").click();
        assertThat(browser.ask("location.hash").toString()).contains("outcome=fails");
    }
}
