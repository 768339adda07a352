package org.fallrule.report.data;

import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.report.Visible;
import org.fallrule.site.Feature;

/**
 * The findings as a table (RFC 4180), each row one line. A cell that a spreadsheet would take for a formula gets an
 * apostrophe before it.
 */
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
            "basis",
            "set_by");

    /** With the full-width forms, which some spreadsheets take for the plain ones. */
    private static final String FORMULA_STARTS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private FindingsCsv() {}

    public static String write(Report report) {
        StringBuilder text = new StringBuilder();
        line(text, HEADER);
        for (Finding finding : report.review().findings()) {
            line(text, row(report, finding));
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
                finding.basis().spoken(),
                finding.setBy().fileAndLine());
    }

    private static void line(StringBuilder text, List<String> cells) {
        text.append(cells.stream().map(FindingsCsv::cell).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    private static String cell(String any) {
        String value = Visible.of(any);
        boolean formula =
                !value.isBlank() && FORMULA_STARTS.indexOf(value.stripLeading().charAt(0)) >= 0 && !isQuantity(value);
        String safe = formula ? "'" + value : value;
        boolean quoted = safe.chars().anyMatch(letter -> letter == ',' || letter == ';' || letter == '"');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static boolean isQuantity(String value) {
        return value.matches("-\\d+(\\.\\d+)? [a-z%/]+");
    }
}
