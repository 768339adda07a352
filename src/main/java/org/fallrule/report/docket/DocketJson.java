package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Outcome;

/** The docket as a file for programs, format {@code fallrule-docket/1}; see docs/schema/docket.schema.json. */
public final class DocketJson {
    private DocketJson() {}

    /** Every plan and every rule. */
    public static String write(Docket docket) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "fallrule-docket/1");
        tree.put("day", docket.day());
        Map<String, Object> needs = new LinkedHashMap<>();
        docket.needs().forEach((need, plans) -> needs.put(need.word(), plans));
        tree.put("summary", needs);
        tree.put("rules", docket.rules().stream().map(DocketJson::rule).toList());
        tree.put("sites", docket.byNeed().stream().map(DocketJson::site).toList());
        tree.put("notices", docket.notices());
        return JsonWriter.write(tree);
    }

    private static Map<String, Object> rule(RuleTally rule) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("rule", rule.rule());
        tree.put("title", rule.title());
        tree.put("weight", rule.weight().word());
        tree.put("sites", EntryTree.counts(rule.plans()));
        return tree;
    }

    private static Map<String, Object> site(DocketEntry entry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("site", entry.path());
        tree.put("name", entry.name());
        tree.put("needs", entry.need().word());
        tree.put("verdict", entry.verdict());
        if (entry.isBroken()) {
            tree.put("causes", entry.causes());
            return tree;
        }
        tree.put("report", entry.folder());
        tree.put("county", entry.county());
        tree.put("binding_fails", entry.binding());
        tree.put("open", entry.open());
        tree.put("advice_fails", entry.advice());
        tree.put("findings", EntryTree.counts(entry.counts()));
        tree.put("rules", rules(entry));
        entry.lot().ifPresent(lot -> tree.put("lot", EntryTree.rings(lot)));
        return tree;
    }

    /** The rules by the outcome of the finding that needs a person most. */
    private static Map<String, Object> rules(DocketEntry entry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            List<String> rules = new ArrayList<>();
            entry.standings().stream()
                    .filter(standing -> standing.outcome() == outcome)
                    .forEach(standing -> rules.add(standing.rule()));
            if (!rules.isEmpty()) {
                tree.put(outcome.word(), rules);
            }
        }
        return tree;
    }
}
