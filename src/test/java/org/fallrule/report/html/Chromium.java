package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Debian's Chromium without a screen, and one page from a file in it. */
final class Chromium implements AutoCloseable {
    private static final File BROWSER = new File("/usr/bin/chromium");
    private static final File DRIVER = new File("/usr/bin/chromedriver");

    private final Path folder;
    private final ChromeDriver driver;
    private String address = "about:blank";

    /**
     * Starts it.
     *
     * @param folder where it may keep its own files and the page
     */
    Chromium(Path folder) {
        assertThat(BROWSER.canExecute() && DRIVER.canExecute())
                .as("this test needs %s and %s: install Debian's chromium and chromium-driver", BROWSER, DRIVER)
                .isTrue();
        this.folder = folder;
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).build();
        this.driver = new ChromeDriver(service, options(folder));
    }

    private static ChromeOptions options(Path folder) {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER);
        options.setCapability("goog:loggingPrefs", logs);
        options.setScriptTimeout(Duration.ofMinutes(5));
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--window-size=1280,900",
                "--user-data-dir=" + folder.resolve("profile"));
        return options;
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a page from a file. */
    void open(String page) {
        try {
            address = Files.writeString(folder.resolve("report.html"), page)
                    .toUri()
                    .toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        reopen("");
    }

    /** Opens the page anew, at a place of it such as {@code #plan}. */
    void reopen(String hash) {
        driver.get("about:blank");
        driver.get(address + hash);
    }

    void size(int width, int height) {
        command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** As a reader sees it who likes {@code light} or {@code dark}. */
    void scheme(String scheme) {
        command(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    void command(String name, Map<String, Object> parameters) {
        driver.executeCdpCommand(name, parameters);
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    /** The elements that can be seen, in the page's order. */
    List<WebElement> seen(String selector) {
        return driver.findElements(By.cssSelector(selector)).stream()
                .filter(WebElement::isDisplayed)
                .toList();
    }

    /** An attribute's value as it stands on the page, empty where there is none. */
    static String attribute(WebElement element, String name) {
        return Objects.requireNonNullElse(element.getDomAttribute(name), "");
    }

    /** Where something lies in the window, in pixels. */
    record Box(double left, double top, double width, double height) {
        double middleX() {
            return left + width / 2;
        }

        double middleY() {
            return top + height / 2;
        }
    }

    Box box(String selector) {
        String side = "document.querySelector(arguments[0]).getBoundingClientRect().";
        return new Box(
                number(side + "left", selector),
                number(side + "top", selector),
                number(side + "width", selector),
                number(side + "height", selector));
    }

    Object ask(String script, Object... arguments) {
        Object answer = driver.executeScript("return " + script, arguments);
        return answer == null ? "" : answer;
    }

    double number(String script, Object... arguments) {
        return ((Number) ask(script, arguments)).doubleValue();
    }

    /** What the page has written on the console since this was last asked. */
    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(Object::toString)
                .toList();
    }

    /** The requests since this was last asked. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(entry -> entry.getMessage())
                .filter(message -> message.contains("Network.requestWillBeSent\""))
                .toList();
    }

    @Override
    public void close() {
        driver.quit();
    }
}
