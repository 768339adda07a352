package org.fallrule.report;

import java.util.Comparator;
import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.proposal.Outlook;
import org.fallrule.remedy.Remedies;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/**
 * Everything that a report states.
 *
 * @param analysis the plan and what follows from it
 * @param county the county whose rules were applied
 * @param book those rules
 * @param review what they make of the plan
 * @param remedies what would pass what does not
 * @param outlook what is shown beside the plan
 */
public record Report(
        SiteAnalysis analysis, String county, RuleBook book, Review review, Remedies remedies, Outlook outlook) {

    /** A report that shows the plan alone. */
    public Report(SiteAnalysis analysis, String county, RuleBook book, Review review, Remedies remedies) {
        this(analysis, county, book, review, remedies, Outlook.NONE);
    }

    /** A report for which no remedies were looked for. */
    public Report(SiteAnalysis analysis, String county, RuleBook book, Review review) {
        this(analysis, county, book, review, Remedies.NONE);
    }

    public Site site() {
        return analysis.site();
    }

    /** The findings, those that need a person first: by weight, then by outcome, then in the order of the rules. */
    public List<Finding> byNeed() {
        return review.findings().stream()
                .sorted(Comparator.comparing(
                                (Finding finding) -> !finding.outcome().isOpen())
                        .thenComparing(Finding::weight)
                        .thenComparing(Finding::outcome))
                .toList();
    }

    /** The findings of one outcome, by weight, then in the order of the rules. */
    public List<Finding> with(Outcome outcome) {
        return byNeed().stream().filter(finding -> finding.outcome() == outcome).toList();
    }

    /** One line: does the plan pass, and how much is open. */
    public String verdict() {
        long failing = review.findings().stream().filter(Finding::failsPlan).count();
        long open = review.count(Outcome.BORDERLINE) + review.count(Outcome.CANNOT_TELL);
        if (failing > 0) {
            return "Does not meet the rules: " + counted(failing, "binding finding")
                    + (failing == 1 ? " fails" : " fail") + (open > 0 ? ", " + open + " more open." : ".");
        }
        if (open > 0) {
            return "Nothing binding fails, but " + counted(open, "finding") + (open == 1 ? " is" : " are") + " open"
                    + advice() + ".";
        }
        return "Nothing binding fails and nothing is open" + advice() + ".";
    }

    private String advice() {
        long failing = with(Outcome.FAILS).stream()
                .filter(finding -> finding.weight() == Weight.SHOULD)
                .count();
        return failing == 0 ? "" : "; " + counted(failing, "piece") + " of advice not followed";
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
