package org.fallrule.report.html;

import org.fallrule.finding.Outcome;

/**
 * How a page shows an outcome: in a word, by a sign, and by a class that gives it a colour and an edge of its own.
 *
 * @param word the word in files and classes
 * @param spoken the word for people
 * @param sign a sign that stands before the word
 */
public record OutcomeSign(String word, String spoken, String sign) {
    static OutcomeSign of(Outcome outcome) {
        String sign = switch (outcome) {
            case FAILS -> "✕";
            case BORDERLINE -> "≈";
            case CANNOT_TELL -> "?";
            case MEETS -> "✓";
            case NOT_APPLICABLE -> "–";
            case WAIVED -> "§";
        };
        return new OutcomeSign(outcome.word(), outcome.spoken(), sign);
    }
}
