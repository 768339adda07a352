package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.report.Fact;
import org.fallrule.report.FindingFacts;
import org.fallrule.report.Sentence;
import org.fallrule.report.map.PlainText;

/**
 * A finding as the page shows it.
 *
 * @param number its number in the list, from 1
 * @param outcome how it stands
 * @param title what the rule asks
 * @param rule the rule's id
 * @param says the finding in one sentence
 * @param facts what was measured and asked, and what the rule rests on, each with its name
 * @param missing what the plan does not say
 * @param remedy what would pass, or why nothing does
 * @param weight what hangs on the rule
 * @param map the map as SVG; empty when there is none
 * @param place what it is about and where that lies
 */
public record FindingView(
        int number,
        OutcomeSign outcome,
        String title,
        String rule,
        String says,
        List<Fact> facts,
        List<Missing> missing,
        Optional<Fact> remedy,
        String weight,
        Optional<String> map,
        FindingPlace place) {

    static FindingView of(
            int number, Finding finding, Optional<Fact> remedy, Optional<String> map, FindingPlace place) {
        return new FindingView(
                number,
                OutcomeSign.of(finding.outcome()),
                PlainText.of(finding.title()),
                PlainText.of(finding.rule()),
                PlainText.of(Sentence.of(finding)),
                FindingFacts.of(finding).stream().map(FindingView::shown).toList(),
                finding.observation().missing().stream()
                        .map(each -> new Missing(PlainText.of(each.what()), PlainText.of(each.settledBy())))
                        .toList(),
                remedy.map(FindingView::shown),
                finding.weight().word(),
                map,
                place);
    }

    /** A fact whose text is safe to stand on a page. */
    static Fact shown(Fact fact) {
        return new Fact(PlainText.of(fact.name()), PlainText.of(fact.value()));
    }
}
