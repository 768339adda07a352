package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.Dockets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The page over many sites, in a browser. */
class DocketPageTest extends InBrowser {
    private static final String HOSTILE = "</script><img src=x onerror=\"document.title='taken'\">\u202Eevil {{7*7}}";

    private static String page(Docket docket) {
        return DocketHtml.write(docket, "report.html");
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "390, dark", "1280, dark", "390, light"})
    void nothingStandsInTheWayOfAReader(int width, String scheme) {
        browser.size(width, 900);
        browser.scheme(scheme);
        browser.open(page(Dockets.ofSamples()));
        browser.driver().executeScript(AccessiblePageTest.axe());
        Object found = browser.driver().executeAsyncScript(AccessiblePageTest.RUN_AXE);
        assertThat(found).asInstanceOf(InstanceOfAssertFactories.LIST).isEmpty();
        assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(width);
    }

    @Test
    void itAsksForNothingAndComplainsOfNothing() {
        browser.open(page(Dockets.ofSamples()));
        browser.console();
        browser.requests();

        browser.reopen("");

        assertThat(browser.console()).isEmpty();
        assertThat(browser.requests())
                .allMatch(request -> request.contains("\"url\":\"file:") || request.contains("about:blank"));
    }

    @Test
    void plansAreChosenByNeedRuleAndWords() {
        browser.size(1280, 900);
        browser.open(page(Dockets.ofSamples()));
        assertThat(browser.find("#shown").getText()).isEqualTo("6 of 6 plans");

        browser.find("input[value=open]").click();
        assertThat(browser.seen("#rows a"))
                .extracting(link -> link.getText())
                .containsExactly(
                        "Thistledown Way 3 (invented)",
                        "Plumb Line 1 (invented)",
                        "Maple Court 2 (invented)",
                        "Quillfeather Lane 8 (invented)");

        browser.find("#show-all").click();
        browser.find("[name=rule] option[value=ground-falls-from-house]").click();
        assertThat(browser.find("#rows").getText()).contains("Harrow Street 14").doesNotContain("Quillfeather");

        browser.find("#show-all").click();
        browser.find("[name=words]").sendKeys("torn");
        assertThat(browser.find("#shown").getText()).isEqualTo("1 of 6 plans");
        assertThat(browser.find("#rows").getText()).contains("lot.geojson:1:2: found the end of the file");
    }

    @Test
    void theKeyboardReachesEachPlan() {
        browser.open(page(Dockets.ofSamples()));
        browser.find("#rows a").sendKeys(Keys.TAB);

        assertThat(browser.ask("document.activeElement.getAttribute('href')")).isEqualTo("./thistledown-3/report.html");
    }

    @Test
    void aFailureLeadsToItsPlans() {
        browser.open(page(Dockets.ofSamples()));
        browser.find("button.pick[data-rule=pipe-cover]").click();

        assertThat(browser.find("#shown").getText()).startsWith("2 of 6 plans");
    }

    @Test
    void ofTenThousandPlansSomeAreListedAndAllCanBeFound() {
        browser.open(page(Dockets.ofMany(10_000)));

        assertThat(browser.driver().findElements(By.cssSelector("#rows tr"))).hasSize(200);
        assertThat(browser.driver().findElements(By.cssSelector(".heat-table td")))
                .hasSizeLessThan(20);
        browser.find("[name=words]").sendKeys("plan-9999");
        assertThat(browser.find("#rows").getText()).contains("plan-9999");
        browser.find("#show-all").click();
        browser.find("#more").click();
        assertThat(browser.driver().findElements(By.cssSelector("#rows tr"))).hasSize(400);
    }

    @Test
    void aHostileNameIsOnlyText() {
        DocketEntry hostile = new DocketEntry(
                "stack/" + HOSTILE,
                "javascript:alert(1)",
                HOSTILE,
                HOSTILE,
                "",
                Map.of(),
                List.of(),
                Optional.empty(),
                List.of());
        DocketEntry torn = DocketEntry.broken(HOSTILE, HOSTILE, HOSTILE, List.of(HOSTILE));
        browser.open(page(new Docket(List.of(hostile, torn), List.of(HOSTILE), "2026-06-01")));
        browser.find("[name=words]").sendKeys("evil");

        assertThat(browser.driver().getTitle()).isEqualTo("2 plans held against the rules");
        assertThat(browser.driver().findElements(By.cssSelector("img"))).isEmpty();
        assertThat(browser.find("#shown").getText()).isEqualTo("2 of 2 plans");
        assertThat(Chromium.attribute(browser.find("#rows a"), "href"))
                .isEqualTo("./javascript%3Aalert%281%29/report.html");
    }

    @Test
    void withoutAnyPlanThatCouldBeCheckedItSaysSo() {
        DocketEntry torn = DocketEntry.broken("torn", "torn", "torn", List.of("torn"));
        browser.open(page(new Docket(List.of(torn), List.of(), "2026-06-01")));

        assertThat(browser.find("main").getText())
                .contains(
                        "No rule fails in any plan that could be checked.", "No plan has a place that could be drawn.");
    }
}
