package org.fallrule.report.html;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.report.Report;
import org.fallrule.report.map.FeatureName;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Feature;

/**
 * What the findings of a page can be chosen by.
 *
 * @param rules every rule that has a finding, by what it asks
 * @param features every feature that a finding is about, the kinds in the order of a plan, each as the findings come
 */
public record FilterChoices(List<Rule> rules, List<String> features) {

    /** A rule: its id and what it asks. */
    public record Rule(String id, String asks) {}

    static FilterChoices of(Report report) {
        Set<Rule> rules = new TreeSet<>(
                Comparator.comparing(Rule::asks, String.CASE_INSENSITIVE_ORDER).thenComparing(Rule::id));
        Set<Feature> spokenOf = new LinkedHashSet<>();
        for (Finding finding : report.review().findings()) {
            rules.add(new Rule(PlainText.of(finding.rule()), PlainText.of(finding.title())));
            Observation seen = finding.observation();
            Stream.of(seen.subject(), seen.other()).flatMap(Optional::stream).forEach(spokenOf::add);
        }
        List<String> features = spokenOf.stream()
                .sorted(Comparator.comparing(Feature::role))
                .map(FeatureName::of)
                .distinct()
                .toList();
        return new FilterChoices(List.copyOf(rules), features);
    }
}
