package org.fallrule.report.html;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Tests of a page in a browser, which starts before the first of a class and ends after the last. */
abstract class InBrowser {
    @TempDir
    static Path folder;

    static Chromium browser;

    @BeforeAll
    static void start() {
        browser = new Chromium(folder);
    }

    @AfterAll
    static void stop() {
        browser.close();
    }
}
