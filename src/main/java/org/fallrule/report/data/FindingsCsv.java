package org.fallrule.report.data;

import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;

/** The findings as a table (RFC 4180). */
public final class FindingsCsv {
    private static final List<String> HEADER = List.of(
            "site",
            "rule",
            "check",
            "weight",
            "outcome",
            "subject",
            "other",
            "measured",
            "required",
            "short_by",
            "missing",
            "says",
            "remedy",
            "basis",
            "set_by");

    private FindingsCsv() {}

    public static String write(Report report) {
        StringBuilder text = new StringBuilder();
        text.append(CsvLine.first(HEADER));
        for (Finding finding : report.review().findings()) {
            text.append(CsvLine.of(row(report, finding)));
        }
        return text.toString();
    }

    private static List<String> row(Report report, Finding finding) {
        Observation seen = finding.observation();
        return List.of(
                report.site().id(),
                finding.rule(),
                finding.check(),
                finding.weight().word(),
                finding.outcome().word(),
                seen.subject().map(Feature::spoken).orElse(""),
                seen.other().map(Feature::spoken).orElse(""),
                seen.measured().map(Sentence::shown).orElse(""),
                seen.measured().flatMap(Sentence::asked).orElse(""),
                seen.measured().flatMap(Sentence::shortBy).orElse(""),
                seen.missing().stream().map(Missing::what).collect(Collectors.joining("; ")),
                Sentence.of(finding),
                RemedyWords.line(report, finding).orElse(""),
                finding.basis().spoken(),
                finding.setBy().fileAndLine());
    }
}
