package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.finding.Outcome;
import org.fallrule.report.data.CsvLine;

/** The docket as a table (RFC 4180): a row for each plan, and for each rule a column with the outcome that needs a person most. */
public final class DocketCsv {
    private static final List<String> HEADER = List.of(
            "site", "name", "report", "county", "needs", "binding_fails", "open", "advice_fails", "verdict", "causes");

    private DocketCsv() {}

    public static String write(Docket docket) {
        List<String> rules = docket.rules().stream().map(RuleTally::rule).toList();
        List<String> header = new ArrayList<>(HEADER);
        header.addAll(rules);
        StringBuilder text = new StringBuilder(CsvLine.first(header));
        docket.byNeed().forEach(entry -> text.append(CsvLine.of(row(entry, rules))));
        return text.toString();
    }

    private static List<String> row(DocketEntry entry, List<String> rules) {
        List<String> cells = new ArrayList<>(List.of(
                entry.path(),
                entry.name(),
                entry.isBroken() ? "" : entry.folder(),
                entry.county(),
                entry.need().word(),
                entry.shown(entry.binding()),
                entry.shown(entry.open()),
                entry.shown(entry.advice()),
                entry.verdict(),
                String.join("; ", entry.causes())));
        Map<String, Outcome> outcomes = new HashMap<>();
        entry.standings().forEach(standing -> outcomes.put(standing.rule(), standing.outcome()));
        for (String rule : rules) {
            Outcome outcome = outcomes.get(rule);
            cells.add(outcome == null ? "" : outcome.word());
        }
        return cells;
    }
}
