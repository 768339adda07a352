package org.fallrule.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;

/**
 * A binding rule that the plan does not meet.
 *
 * @param asks what it asks
 * @param findings the numbers of its findings that fail
 */
public record FailingRule(String asks, List<Integer> findings) {

    static List<FailingRule> in(List<FindingView> open) {
        Map<String, List<FindingView>> byRule = open.stream()
                .filter(FailingRule::isBinding)
                .collect(Collectors.groupingBy(FindingView::rule, LinkedHashMap::new, Collectors.toList()));
        return byRule.values().stream()
                .map(same -> new FailingRule(
                        same.get(0).title(),
                        same.stream().map(FindingView::number).toList()))
                .toList();
    }

    private static boolean isBinding(FindingView finding) {
        return finding.outcome().word().equals(Outcome.FAILS.word())
                && finding.weight().equals(Weight.MUST.word());
    }
}
