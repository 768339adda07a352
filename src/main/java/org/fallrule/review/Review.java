package org.fallrule.review;

import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;

/**
 * What a rule book makes of a plan.
 *
 * @param findings the findings in the order of the rules
 * @param problems what is wrong with the plan or went wrong in a check
 */
public record Review(List<Finding> findings, List<Fault> problems) {

    public Review {
        findings = List.copyOf(findings);
        problems = List.copyOf(problems);
    }

    public long count(Outcome outcome) {
        return findings.stream().filter(finding -> finding.outcome() == outcome).count();
    }

    /** Whether a rule of weight must fails. */
    public boolean failsPlan() {
        return findings.stream().anyMatch(Finding::failsPlan);
    }

    /** Whether anything is open, whatever its weight: borderline or not to be told. */
    public boolean leavesOpen() {
        return count(Outcome.BORDERLINE) + count(Outcome.CANNOT_TELL) > 0;
    }
}
