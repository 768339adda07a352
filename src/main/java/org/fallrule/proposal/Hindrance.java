package org.fallrule.proposal;

import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.rulebook.Rule;

/**
 * A rule that stands in the way of every line.
 *
 * @param rule its id
 * @param title what it asks
 * @param setBy where the book says so
 * @param how in what way it does
 * @param with the rule that has to be left out besides for a line to be found, if it takes two
 */
public record Hindrance(String rule, String title, Place setBy, How how, Optional<String> with) {

    /** In what way a rule stands in the way. */
    public enum How {
        /** It fails however the line runs: it is not about the line. */
        WHATEVER_THE_LINE("fails whatever the line"),
        /** Without it there is a line. */
        UNLOCKS("without it there is a line"),
        /** Without it and another there is a line. */
        UNLOCKS_WITH("there is a line only without it and");

        private final String spoken;

        How(String spoken) {
            this.spoken = spoken;
        }

        String spoken() {
            return spoken;
        }
    }

    static Hindrance of(Rule rule, How how) {
        return new Hindrance(rule.id(), rule.title(), rule.setBy(), how, Optional.empty());
    }

    static Hindrance of(Rule rule, Rule other) {
        return new Hindrance(rule.id(), rule.title(), rule.setBy(), How.UNLOCKS_WITH, Optional.of(other.id()));
    }

    /** {@code without it there is a line}. */
    public String spoken() {
        return how.spoken() + with.map(other -> " " + other).orElse("");
    }
}
