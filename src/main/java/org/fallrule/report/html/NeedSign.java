package org.fallrule.report.html;

import org.fallrule.report.docket.Need;

/**
 * How a page shows what a plan needs: in words, by a sign, and by a class.
 *
 * @param word the word in files and classes
 * @param spoken the words for people
 * @param sign a sign that stands before the words
 */
public record NeedSign(String word, String spoken, String sign) {
    static NeedSign of(Need need) {
        String sign = switch (need) {
            case BINDING_FAILS -> "✕";
            case OPEN -> "?";
            case ADVICE_FAILS -> "◇";
            case BROKEN -> "!";
            case CLEAN -> "✓";
        };
        return new NeedSign(need.word(), need.spoken(), sign);
    }
}
