package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.FindingChange;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.report.Fact;
import org.fallrule.report.FindingFacts;
import org.fallrule.report.Sentence;
import org.fallrule.report.map.PlainText;

/**
 * A finding of two states as the page shows it.
 *
 * @param number its number on the page and the plan; zero for none
 * @param change how it has changed, in a word
 * @param sign a sign that stands before the word
 * @param outcome how it stands, or stood where it is no more
 * @param title what the rule asks
 * @param rule the rule's id
 * @param weight what hangs on the rule
 * @param why why it counts as changed so
 * @param before the finding as it was, in a sentence
 * @param after the finding as it is
 * @param missing what the plan does not say
 * @param facts what was measured and asked, and what the rule rests on
 */
public record ChangeView(
        int number,
        String change,
        String sign,
        OutcomeSign outcome,
        String title,
        String rule,
        String weight,
        String why,
        Optional<String> before,
        Optional<String> after,
        List<Missing> missing,
        List<Fact> facts) {

    static ChangeView of(int number, FindingChange change) {
        return view(
                number,
                change.change().word(),
                sign(change.change()),
                change.shown(),
                change.why(),
                change.before(),
                change.after());
    }

    /** A value of the work as built. */
    static ChangeView asBuilt(int number, Finding finding) {
        return view(number, "as built", "⌖", finding, "", Optional.empty(), Optional.of(finding));
    }

    private static ChangeView view(
            int number,
            String change,
            String sign,
            Finding shown,
            String why,
            Optional<Finding> before,
            Optional<Finding> after) {
        return new ChangeView(
                number,
                change,
                sign,
                OutcomeSign.of(shown.outcome()),
                PlainText.of(shown.title()),
                PlainText.of(shown.rule()),
                shown.weight().word(),
                PlainText.of(why),
                before.map(Sentence::of).map(PlainText::of),
                after.map(Sentence::of).map(PlainText::of),
                shown.observation().missing().stream()
                        .map(each -> new Missing(PlainText.of(each.what()), PlainText.of(each.settledBy())))
                        .toList(),
                FindingFacts.of(shown).stream().map(FindingView::shown).toList());
    }

    private static String sign(Change change) {
        return switch (change) {
            case NEW -> "+";
            case WORSE -> "▼";
            case BETTER -> "▲";
            case GONE -> "✓";
            case UNCHANGED -> "=";
        };
    }
}
