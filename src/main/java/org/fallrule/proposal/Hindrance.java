package org.fallrule.proposal;

import org.fallrule.document.Place;
import org.fallrule.rulebook.Rule;

/**
 * A rule that stands in the way of every line.
 *
 * @param rule its id
 * @param title what it asks
 * @param setBy where the book says so
 * @param how in what way it does
 */
public record Hindrance(String rule, String title, Place setBy, How how) {

    /** In what way a rule stands in the way. */
    public enum How {
        /** It fails however the line runs: it is not about the line. */
        WHATEVER_THE_LINE("fails whatever the line"),
        /** Without it there is a line. */
        UNLOCKS("without it there is a line");

        private final String spoken;

        How(String spoken) {
            this.spoken = spoken;
        }

        public String spoken() {
            return spoken;
        }
    }

    static Hindrance of(Rule rule, How how) {
        return new Hindrance(rule.id(), rule.title(), rule.setBy(), how);
    }
}
