package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Length;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.data.FindingsJson;
import org.fallrule.report.html.HtmlReport;
import org.fallrule.site.PlanInMetres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A plan in metres reads in metric units; what a rule book says stays in the book's words. */
class MetricPlanTest {
    private static final Pattern CUSTOMARY = Pattern.compile(
            "[^.;,:|<>\"\\n]{0,40}\\d (ft|in|sq ft|cu ft|cu yd|cfs|ft/s|in/h|lb)\\b[^.;,|<>\"\\n]{0,30}");

    private static Report metric(String sample) {
        return Reports.of(PlanInMetres.of(SiteReader.read(Path.of("sample-sites", sample))));
    }

    private static List<String> customary(String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = CUSTOMARY.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group().strip());
        }
        return found;
    }

    static List<String> samples() {
        return List.of("quillfeather-8", "harrow-14", "thistledown-3", "maple-court-2", "plumb-line-1");
    }

    /** Without what the report gives in the book's words: its limits, its figures with their line, its conditions. */
    private static String ofThePlan(String text) {
        return text.replaceAll("(at least|at most|asked is|diameter) [^;()]*", "")
                .replaceAll("the rule looks [0-9.]+ ft", "")
                .replaceAll("[^;]*\\(rules/[^;]*", "");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatFindingsSayOfThePlanIsMetric(String sample) {
        for (Finding finding : metric(sample).review().findings()) {
            assertThat(customary(ofThePlan(Sentence.of(finding))))
                    .as(finding.rule())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theTablesAreMetric(String sample) {
        String json = FindingsJson.write(metric(sample));

        assertThat(customary(json.substring(json.indexOf("\"tables\"")))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void thePageShowsPipesAndStructuresAndTheSurveyInMetres(String sample) {
        String page = HtmlReport.write(metric(sample));
        int structures = page.indexOf("<th scope=\"col\">invert up</th>");

        assertThat(page).doesNotContain("±0.10 ft");
        assertThat(SiteFacts.of(metric(sample)).toString()).doesNotContain(" ft");
        assertThat(structures).isNotNegative();
        assertThat(customary(page.substring(structures, page.indexOf("</table>", structures))))
                .isEmpty();
    }

    @Test
    void aPipeIsCalledByItsSizeInMillimetres() {
        assertThat(metric("harrow-14").site().nominal(Length.inches(4))).isEqualTo("102 mm");
        assertThat(SiteReader.read(Path.of("sample-sites", "harrow-14")).nominal(Length.inches(4)))
                .isEqualTo("4 in");
    }

    @Test
    void aLimitIsReadInBothUnitsAndTheValueInMetres() {
        assertThat(metric("harrow-14").review().findings())
                .filteredOn(finding -> finding.rule().equals("outfall-walk-setback"))
                .extracting(Sentence::of)
                .first()
                .asString()
                .startsWith(
                        "Outfall OF-1 and walk W1: plan distance 1.067 m, at least 5 ft (1.524 m) asked, 0.457 m short");
    }
}
