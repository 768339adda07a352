package org.fallrule.finding;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Place;

/**
 * What a rule rests on.
 *
 * @param kind how binding that is
 * @param document its title and edition
 * @param section the section, table or equation
 * @param known how the value is known: read in the document, read in a page about it, or from memory
 * @param note what else to know, such as whom it binds
 * @param statedAt the line of the rule book that says so
 */
public record Basis(
        Kind kind,
        Optional<String> document,
        Optional<String> section,
        Optional<String> known,
        Optional<String> note,
        Place statedAt) {

    /** How binding a basis is. */
    public enum Kind {
        STATUTE,
        ORDINANCE,
        MODEL_CODE,
        STANDARD,
        MANUAL,
        PRACTICE;

        private final String word = name().toLowerCase(Locale.ROOT);

        public String word() {
            return word;
        }

        public String spoken() {
            return word().replace('_', ' ');
        }

        public static Optional<Kind> named(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst();
        }
    }

    /** One line: {@code ordinance: Larkmoor Drainage Manual (invented), 4.2}. */
    public String spoken() {
        StringBuilder text = new StringBuilder(kind == Kind.PRACTICE ? "common practice" : kind.spoken());
        document.ifPresent(title -> text.append(": ").append(title));
        section.ifPresent(
                place -> text.append(document.isPresent() ? ", " : ": ").append(place));
        known.filter(how -> !how.equals("read"))
                .ifPresent(how -> text.append(" (").append(how).append(')'));
        return text.toString();
    }
}
