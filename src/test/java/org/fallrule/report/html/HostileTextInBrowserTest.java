package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HostileTextInBrowserTest extends InBrowser {
    @BeforeAll
    static void size() {
        browser.size(390, 900);
    }

    static String[] names() {
        return new String[] {
            "</script><script>window.struck = 1</script>",
            "</style></title><img src=x onerror=window.struck=1>",
            "\"' onmouseover='window.struck=1' autofocus onfocus='window.struck=1' x=\"",
            "]]></svg><svg onload=window.struck=1>",
            "\u05E6\u05E0\u05D5\u05E8 12.5 \u05DE\u05E2\u05DC\u05D4",
            "\u202Etf 99.9\u202C",
            "\uD83D\uDEB0\uD83D\uDC69\u200D\uD83D\uDD27",
            "a&amp;b &lt;i&gt; #outcome=fails&rule=x",
            "x".repeat(10_000)
        };
    }

    @ParameterizedTest
    @MethodSource("names")
    void isShownAsText(String name) {
        browser.console();
        browser.open(HtmlReport.write(SamplePlan.report(id -> name + id)));
        assertThat(browser.ask("window.struck === undefined")).isEqualTo(true);
        assertThat(browser.number("document.querySelectorAll('main img, main script, main style').length"))
                .isZero();
        String shown = name.replace("\u202E", "[U+202E]").replace("\u202C", "[U+202C]");
        assertThat(plain(browser.find(".finding .says").getText())).contains(plain(shown));
        assertThat(browser.number("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .isZero();
        assertThat(browser.console()).isEmpty();
    }

    /** Without the marks that set letters apart that run the other way. */
    private static String plain(String text) {
        return text.replaceAll("[\u2068\u2069]", "");
    }

    @ParameterizedTest
    @MethodSource("names")
    void findingsAreStillChosenByIt(String name) {
        browser.open(HtmlReport.write(SamplePlan.report(id -> name + (id.equals("OF-1") ? "" : id))));
        browser.find("#filter [name=feature] option:last-child").click();
        int chosen = browser.seen("[data-outcome]").size();
        assertThat(chosen).isPositive();
        browser.reopen(browser.ask("location.hash").toString());
        assertThat(browser.seen("[data-outcome]")).hasSize(chosen);
        assertThat(browser.ask("window.struck === undefined")).isEqualTo(true);
        assertThat(browser.console()).isEmpty();
    }
}
