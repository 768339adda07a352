package org.fallrule.rulebook;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Place;

/**
 * Something that whoever reviews a submittal looks for on the plan.
 *
 * @param id its id
 * @param asks what is asked for
 * @param asked how usual it is
 * @param shownBy how a plan shows it
 * @param setBy where the book says so
 */
public record ChecklistItem(String id, String asks, Asked asked, ShownBy shownBy, Place setBy) {

    /** How usual an item is. */
    public enum Asked {
        /** By most. */
        USUALLY,
        /** Where the lot has such a thing. */
        WHERE_IT_APPLIES,
        /** By some. */
        SOMETIMES;

        /** The word in rule books. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The words in a report. */
        public String spoken() {
            return word().replace('_', ' ');
        }

        static Optional<Asked> named(String word) {
            return Arrays.stream(values())
                    .filter(asked -> asked.word().equals(word))
                    .findFirst();
        }
    }
}
