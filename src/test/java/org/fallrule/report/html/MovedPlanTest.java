package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.WheelInput;

class MovedPlanTest extends InBrowser {
    private static final Pattern VIEW =
            Pattern.compile("translate\\((-?[\\d.e-]+) (-?[\\d.e-]+)\\) scale\\(([\\d.]+)\\)");

    /** How far the plan is moved, in pixels of its sheet, and how much it is magnified. */
    private record View(double x, double y, double scale) {}

    @BeforeAll
    static void size() {
        browser.size(1280, 1100);
    }

    @BeforeEach
    void open() {
        browser.open(HtmlReport.write(SamplePlan.report()));
        browser.ask("document.querySelector('#plan .wide').scrollIntoView({block: 'center'})");
    }

    @AfterEach
    void nothingIsReportedOnTheConsole() {
        assertThat(browser.console()).isEmpty();
    }

    private static View view() {
        Matcher found = VIEW.matcher(browser.find("#plan .wide .m-view").getAttribute("transform"));
        assertThat(found.matches()).isTrue();
        return new View(
                Double.parseDouble(found.group(1)),
                Double.parseDouble(found.group(2)),
                Double.parseDouble(found.group(3)));
    }

    private static WebElement sheet() {
        return browser.find("#plan .wide");
    }

    private static void button(String which) {
        browser.find("#plan-tools [data-view=" + which + "]").click();
    }

    @Test
    void buttonsMagnifyAndShowTheWholeAgain() {
        assertThat(view()).isEqualTo(new View(0, 0, 1));
        button("in");
        button("in");
        assertThat(view().scale()).isEqualTo(2.25);
        button("out");
        assertThat(view().scale()).isEqualTo(1.5);
        button("all");
        assertThat(view()).isEqualTo(new View(0, 0, 1));
    }

    @Test
    void keysMagnifyAndMove() {
        sheet().sendKeys("+");
        View near = view();
        assertThat(near.scale()).isEqualTo(1.5);
        sheet().sendKeys(org.openqa.selenium.Keys.ARROW_RIGHT);
        assertThat(view().x()).isCloseTo(near.x() - 60, within(0.01));
        sheet().sendKeys(org.openqa.selenium.Keys.ARROW_UP);
        assertThat(view().y()).isCloseTo(near.y() + 60, within(0.01));
        sheet().sendKeys("-");
        assertThat(view().scale()).isEqualTo(1);
        sheet().sendKeys("+", "0");
        assertThat(view()).isEqualTo(new View(0, 0, 1));
    }

    @Test
    void thePlanNeverLeavesItsFrame() {
        sheet().sendKeys("+");
        for (int i = 0; i < 40; i++) {
            sheet().sendKeys(org.openqa.selenium.Keys.ARROW_LEFT);
        }
        assertThat(view().x()).isZero();
    }

    @Test
    void theWheelMagnifiesOnceThePlanHasBeenClickedAndScrollsThePageBefore() {
        double before = browser.number("scrollY");
        wheel(-100);
        assertThat(view().scale()).isEqualTo(1);
        assertThat(browser.number("scrollY")).isLessThan(before);
        browser.driver().executeScript("arguments[0].focus({preventScroll: true})", sheet());
        wheel(-100);
        assertThat(view().scale()).isGreaterThan(1.2);
        double place = browser.number("scrollY");
        wheel(60);
        assertThat(browser.number("scrollY")).isEqualTo(place);
    }

    private static void wheel(int down) {
        new Actions(browser.driver())
                .scrollFromOrigin(WheelInput.ScrollOrigin.fromElement(sheet(), -300, -200), 0, down)
                .perform();
    }

    @Test
    void draggingMovesThePlanAndChoosesNothing() {
        button("in");
        View before = view();
        new Actions(browser.driver())
                .moveToElement(sheet(), -300, -100)
                .clickAndHold()
                .moveByOffset(20, 10)
                .moveByOffset(20, 15)
                .release()
                .perform();
        double unit = browser.number("document.querySelector('#plan .wide svg').viewBox.baseVal.width"
                + " / document.querySelector('#plan .wide svg').getBoundingClientRect().width");
        assertThat(view().x()).isCloseTo(before.x() + 40 * unit, within(1.0));
        assertThat(view().y()).isCloseTo(before.y() + 25 * unit, within(1.0));
        assertThat(browser.ask("location.hash")).isEqualTo("");
    }

    @Test
    void twoFingersPinch() {
        touch("touchStart", 300, 400);
        for (int apart = 110; apart <= 200; apart += 10) {
            touch("touchMove", 350 - apart / 2, 350 + apart / 2);
        }
        browser.command("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        assertThat(view().scale()).isCloseTo(2, within(0.1));
    }

    private static void touch(String type, int left, int right) {
        List<Map<String, Integer>> points =
                List.of(Map.of("x", left, "y", 500, "id", 0), Map.of("x", right, "y", 500, "id", 1));
        browser.command("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
    }

    @Test
    void theScaleBarStaysTrueAndRound() {
        double metresToPixels = Double.parseDouble(Chromium.attribute(browser.find("#plan .wide .m-view"), "data-frame")
                .split(" ", -1)[2]);
        for (int i = 0; i < 6; i++) {
            String[] words = browser.find("#plan .wide .m-scale")
                    .findElements(By.tagName("text"))
                    .get(1)
                    .getText()
                    .split(" ", -1);
            double pixels =
                    Double.parseDouble(browser.find("#plan .wide .m-bar").getAttribute("width"));
            double feet = Double.parseDouble(words[0]);
            assertThat(words[1]).isEqualTo("ft");
            assertThat(pixels / (feet * 0.3048 * metresToPixels * view().scale()))
                    .isCloseTo(1, within(0.002));
            assertThat(String.valueOf(feet).replaceAll("[0.]", "")).isIn("1", "2", "5");
            button("in");
        }
    }

    @Test
    void wordsAndSignsKeepTheirSize() {
        String height = "document.querySelector('#plan .wide .m-outfall-label').getBoundingClientRect().height";
        double before = browser.number(height);
        button("in");
        button("in");
        assertThat(browser.number(height)).isCloseTo(before, within(0.5));
    }
}
