package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.Test;

class HtmlReportTest {
    @Test
    void writesASample() throws IOException {
        String page = HtmlReport.write(SamplePlan.report());
        long start = System.nanoTime();
        HtmlReport.write(SamplePlan.report());
        System.out.println(page.length() + " chars " + (System.nanoTime() - start) / 1e6 + " ms");
        Files.writeString(Path.of("target/sample.html"), page);
        assertThat(page).contains("</html>");
    }
}
