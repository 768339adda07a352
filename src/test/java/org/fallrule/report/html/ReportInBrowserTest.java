package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.Level;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

class ReportInBrowserTest {
    private static final File BROWSER = new File("/usr/bin/chromium");
    private static final File DRIVER = new File("/usr/bin/chromedriver");

    @TempDir
    static Path folder;

    private static ChromeDriver browser;
    private static String page;

    @BeforeAll
    static void open() throws IOException {
        assertThat(BROWSER.canExecute() && DRIVER.canExecute())
                .as("this test needs %s and %s: install Debian's chromium and chromium-driver", BROWSER, DRIVER)
                .isTrue();
        Path file = Files.writeString(folder.resolve("report.html"), HtmlReport.write(SamplePlan.report()));
        page = file.toUri().toString();
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).build();
        browser = new ChromeDriver(service, options());
        browser.get(page);
    }

    private static ChromeOptions options() {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER);
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"));
        return options;
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @Test
    void nothingIsReportedOnTheConsoleAndNothingIsFetched() {
        browser.get("about:blank");
        browser.manage().logs().get(LogType.PERFORMANCE);
        browser.get(page);
        assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
        assertThat(requests()).singleElement().asString().contains("\"url\":\"file:", "report.html");
    }

    /** The requests since the last time that this was asked. */
    private static List<String> requests() {
        return browser.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(entry -> entry.getMessage())
                .filter(message -> message.contains("Network.requestWillBeSent\""))
                .toList();
    }

    @Test
    void theFilterIsWorkedByKeyboard() {
        WebElement fails = browser.findElement(By.cssSelector("#filter button[data-show=fails]"));
        ((JavascriptExecutor) browser).executeScript("document.querySelector('#filter button').focus()");
        browser.switchTo().activeElement().sendKeys(Keys.TAB);
        assertThat(browser.switchTo().activeElement()).isEqualTo(fails);
        fails.sendKeys(Keys.SPACE);
        assertThat(fails.getAttribute("aria-pressed")).isEqualTo("true");
        assertThat(outcomesShown()).isNotEmpty().containsOnly("fails");
        assertThat(browser.findElement(By.id("shown")).getText())
                .startsWith(outcomesShown().size() + " of ");
        browser.findElement(By.cssSelector("#filter button[data-show='']")).sendKeys(Keys.ENTER);
        assertThat(outcomesShown()).contains("meets", "cannot_tell", "waived");
    }

    private static List<String> outcomesShown() {
        return browser.findElements(By.cssSelector("[data-outcome]")).stream()
                .filter(WebElement::isDisplayed)
                .map(finding -> finding.getAttribute("data-outcome"))
                .toList();
    }

    @Test
    void thePageNeverScrollsSideways() {
        for (int width : new int[] {390, 800, 1280}) {
            browser.manage().window().setSize(new Dimension(width, 900));
            Object spare = ((JavascriptExecutor) browser)
                    .executeScript(
                            "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(spare).as("at %d px", width).isEqualTo(0L);
        }
        browser.manage().window().setSize(new Dimension(1280, 900));
    }
}
