package org.fallrule.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Outcome;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.RuleStanding;
import org.fallrule.report.docket.RuleTally;
import org.fallrule.report.map.PlainText;

/** All plans as the script of the page reads them, to choose and sort them by; rules are named by number. */
final class DocketData {
    private DocketData() {}

    /**
     * JSON that stands inside a script element and cannot end it.
     *
     * @param entries the plans
     * @param rows what the page shows of each, in the same order
     */
    static String of(List<DocketEntry> entries, List<DocketPage.SiteRow> rows, List<RuleTally> rules) {
        Map<String, Integer> number = new HashMap<>();
        rules.forEach(rule -> number.put(rule.rule(), number.size()));
        List<Object> sites = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            sites.add(site(entries.get(i), rows.get(i), number));
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("rules", rules.stream().map(rule -> PlainText.of(rule.rule())).toList());
        tree.put("sites", sites);
        return JsonWriter.compact(tree)
                .replace("<", "\\u003c")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private static Map<String, Object> site(DocketEntry entry, DocketPage.SiteRow row, Map<String, Integer> number) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("n", row.number());
        tree.put("name", row.name());
        tree.put("path", row.path());
        tree.put("at", row.address());
        tree.put("need", row.need().word());
        tree.put("counts", List.of(row.binding(), row.open(), row.advice()));
        tree.put("county", row.county());
        tree.put("says", row.says());
        tree.put("fails", numbers(entry, number, DocketData::fails));
        tree.put("open", numbers(entry, number, standing -> standing.isOpen() && !fails(standing)));
        return tree;
    }

    private static boolean fails(RuleStanding standing) {
        return standing.outcome() == Outcome.FAILS;
    }

    private static List<Integer> numbers(
            DocketEntry entry, Map<String, Integer> number, Predicate<RuleStanding> which) {
        return entry.standings().stream()
                .filter(which)
                .map(standing -> number.get(standing.rule()))
                .toList();
    }
}
