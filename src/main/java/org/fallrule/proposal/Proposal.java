package org.fallrule.proposal;

import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.review.Review;

/**
 * A line that passes.
 *
 * @param analysis the plan with the proposed drain in it
 * @param review what the rules make of it; nothing binding fails
 * @param quantities what it takes to build
 * @param apron length of the stone apron at the outfall; nought for none
 * @param cost by the weights of the rule book, in cubic yards of trench
 * @param course where its course comes from
 */
public record Proposal(
        SiteAnalysis analysis, Review review, Quantities quantities, Length apron, double cost, Course course) {

    /** Where the course of a line comes from. */
    public enum Course {
        /** Found on the grid. */
        FOUND("found"),
        /** That of the submitted drain, at other heights, in other sizes. */
        SUBMITTED("submitted, laid anew"),
        /** The submitted drain as it is. */
        AS_SUBMITTED("as submitted");

        private final String spoken;

        Course(String spoken) {
            this.spoken = spoken;
        }

        /** {@code as submitted}. */
        public String spoken() {
            return spoken;
        }
    }

    /** What stays open: it is for the crew and the reviewer to settle. */
    public List<Finding> open() {
        return review.findings().stream()
                .filter(finding -> finding.outcome() == Outcome.CANNOT_TELL || finding.outcome() == Outcome.BORDERLINE)
                .toList();
    }

    /** Advice that it does not follow. */
    public List<Finding> adviceMissed() {
        return review.findings().stream()
                .filter(finding -> finding.outcome() == Outcome.FAILS)
                .toList();
    }
}
