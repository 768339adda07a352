package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.finding.Finding;
import org.fallrule.report.Cautions;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.report.SamplePlan;
import org.fallrule.report.Sentence;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlReportTest {
    private static final Report REPORT = SamplePlan.report();
    private static final String PAGE = HtmlReport.write(REPORT);

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static int count(String text, String what) {
        return text.split(Pattern.quote(what), -1).length - 1;
    }

    @Test
    void statesTheVerdictEveryFindingAndEveryCaution() {
        assertThat(PAGE).contains(escaped(REPORT.verdict()));
        List<Finding> findings = REPORT.byNeed();
        for (int i = 0; i < findings.size(); i++) {
            assertThat(PAGE).contains("id=\"finding-" + (i + 1) + "\"", escaped(Sentence.of(findings.get(i))));
        }
        Cautions.in(REPORT.book().locality().climate())
                .forEach(caution -> assertThat(PAGE).contains(escaped(caution)));
    }

    @Test
    void statesWhereEachRuleWasSetAndWhatItRestsOn() {
        assertThat(REPORT.byNeed())
                .allSatisfy(finding -> assertThat(PAGE)
                        .contains(
                                escaped(finding.setBy().fileAndLine()),
                                escaped(finding.basis().spoken())));
    }

    @Test
    void statesProblemsPipesAndBooks() {
        assertThat(PAGE)
                .contains("marks.shp: feature 14: depth")
                .contains("pvc sdr35", "0.74 %", "rules/house/stonebrook.yaml")
                .contains(REPORT.book().books().get(0).sha256().substring(0, 12));
    }

    @Test
    void saysWhatIsMissingAndWhatWouldSettleIt() {
        assertThat(PAGE)
                .contains("<b>Missing:</b> the downstream invert of pipe P-4.")
                .contains("<b>To settle it:</b> give invert_down with its unit");
    }

    @Test
    void fetchesNothing() {
        String withoutNamespace = PAGE.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        assertThat(withoutNamespace)
                .doesNotContain("http:", "https:", "src=", "@import", "<link", "<img", "<iframe")
                .doesNotContainPattern("url\\((?!#)")
                .doesNotContainPattern("href=\"(?!#)");
        assertThat(PAGE).contains("content=\"default-src &#39;none&#39;");
    }

    @Test
    void staysSmallAndTheSameEachTime() {
        assertThat(PAGE.getBytes(StandardCharsets.UTF_8).length).isLessThan(400_000);
        assertThat(HtmlReport.write(REPORT)).isEqualTo(PAGE);
    }

    @Test
    void staysUnderThreeMegabytesOnALargeSample() {
        assertThat(bytes(Reports.of("harrow-14"))).isLessThan(3_000_000);
    }

    @Test
    void staysUnderThreeMegabytesOnAPlanOfThreeHundredFindings() {
        Report many = Reports.of(SamplePlan.withBranches(9));
        assertThat(many.byNeed()).hasSizeBetween(290, 350);
        assertThat(bytes(many)).isLessThan(3_000_000);
    }

    private static int bytes(Report report) {
        return HtmlReport.write(report).getBytes(StandardCharsets.UTF_8).length;
    }

    @Test
    void findingsThatNeedAPersonComeByWeightAndThenByOutcome() {
        List<Finding> findings = Reports.of("harrow-14").byNeed();
        assertThat(findings)
                .isSortedAccordingTo(Comparator.comparing(
                                (Finding finding) -> !finding.outcome().isOpen())
                        .thenComparing(Finding::weight)
                        .thenComparing(Finding::outcome));
        assertThat(findings.get(0).failsPlan()).isTrue();
    }

    @Test
    void theRulesThatFailThePlanStandAtTheTopWithTheirFindings() {
        String top = PAGE.substring(0, PAGE.indexOf("<main>"));
        List<Finding> findings = REPORT.byNeed();
        for (int i = 0; i < findings.size(); i++) {
            String link = "href=\"#finding-" + (i + 1) + "\"";
            assertThat(top.contains(link)).isEqualTo(findings.get(i).failsPlan());
        }
    }

    @Test
    void noIdStandsTwice() {
        Matcher ids = Pattern.compile(" id=\"([^\"]*)\"").matcher(PAGE);
        assertThat(ids.results().map(found -> found.group(1)).toList()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</script><script>alert(1)</script>",
                "</title></style><img src=x onerror=alert(1)>",
                "\"' onmouseover='alert(1)' x=\"",
                "${7*7} @template.x() --> <!-- ]]>",
                "\u202Etf 99.9\u202C",
                "צנור",
                "🚰👩‍🔧"
            })
    void hostileNamesAreText(String name) {
        String page = HtmlReport.write(SamplePlan.report(id -> name + id));
        assertThat(count(page, "<script")).isEqualTo(1);
        assertThat(count(page, "<style")).isEqualTo(1);
        assertThat(count(page, "<img")).isZero();
        assertThat(page).doesNotContain("\u202E").doesNotContainPattern("<[^>\"]*\\sonmouseover");
        assertThat(count(page, "<article")).isEqualTo(count(PAGE, "<article"));
    }

    @Test
    void aVeryLongNameStandsInTheFindingAndIsClippedOnTheMap() {
        String name = "x".repeat(10_000);
        String page = HtmlReport.write(SamplePlan.report(id -> id.equals("OF-1") ? name : id));
        assertThat(page).contains("Outfall " + name).contains(">xxxxxxxxxxxxxxxxx…</text>");
        assertThat(page.length()).isLessThan(PAGE.length() + 200_000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LOT | POLYGON((0 0, 50 50, 50 0, 0 50, 0 0))",
                "WALK | POLYGON((0 0, 50 50, 50 0, 0 50, 0 0))",
                "BUILDING | POLYGON((20 20, 20 20, 20 20, 20 20))",
                "PIPE | LINESTRING(20 20, 20 20)",
                "PIPE | LINESTRING(-3000 20, 3000 20)",
                "UTILITY | MULTILINESTRING((20 20, 20 40), (30 20, 30 20.1))",
                "SEPTIC | GEOMETRYCOLLECTION(POINT(40 100), POLYGON((40 90, 60 90, 60 100, 40 90)))",
                "OUTFALL | POINT(22 0.5)",
                "WATER_BODY | MULTIPOINT((10 10), (9000 10))"
            })
    void oddGeometryIsDrawn(Role role, String wkt) {
        assertThat(HtmlReport.write(SamplePlan.reportWith(role, wkt))).contains("</html>");
    }

    @Test
    void aPlanThatHoldsNothingStillHasItsPage() {
        String page = HtmlReport.write(SamplePlan.emptyReport());
        assertThat(page).contains("The plan has nothing that could be drawn.", "The plan has no pipes.");
    }
}
