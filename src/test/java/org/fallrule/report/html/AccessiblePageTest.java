package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.fallrule.report.Reports;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Held against the rules of axe-core 4.11, which stand for the Web Content Accessibility Guidelines 2.2, levels A and AA, as
 * far as a machine can tell, and for good practice beside them.
 */
class AccessiblePageTest extends InBrowser {
    /** The rows of settled findings are all alike, and there are hundreds: twenty stand for them. */
    private static final String ONLY_SOME_ROWS =
            "document.querySelectorAll('.settled tr:nth-child(n+21)').forEach(row => row.remove())";

    /** What is found, as a list of sentences. */
    static final String RUN_AXE = "const done = arguments[0]; axe.run(document).then(result =>"
            + " done(result.violations.map(each => each.impact + ' ' + each.id + ': '"
            + " + each.nodes.map(node => node.html.slice(0, 120)).join(' | '))))";

    @BeforeAll
    static void patience() {
        browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
    }

    @ParameterizedTest
    @CsvSource({
        "harrow-14, 1280, light",
        "harrow-14, 390, dark",
        "quillfeather-8, 1280, dark",
        "quillfeather-8, 390, light"
    })
    void nothingStandsInTheWayOfAReader(String sample, int width, String scheme) {
        browser.size(width, 900);
        browser.scheme(scheme);
        browser.open(HtmlReport.write(Reports.of(sample)));
        browser.find("button.show").click();
        browser.driver().executeScript(ONLY_SOME_ROWS);
        browser.driver().executeScript(axe());
        Object found = browser.driver().executeAsyncScript(RUN_AXE);
        assertThat(found)
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .isEmpty();
    }

    static String axe() {
        try (InputStream script = AccessiblePageTest.class.getResourceAsStream("/axe.min.js")) {
            assertThat(script).isNotNull();
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
