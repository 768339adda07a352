package org.fallrule.locality;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;

/**
 * A formula for the intensity by duration t in minutes, with the unit that it gives.
 *
 * @param form its form
 * @param scale the number above the line, above zero
 * @param shift the number added below the line, zero or more
 * @param power the exponent, above zero
 * @param unit in/h or mm/h
 * @param from the shortest duration that it was fitted to
 * @param to the longest
 */
public record IntensityCurve(Form form, double scale, double shift, double power, Unit unit, Time from, Time to)
        implements Rainfall {

    /** The forms that are published, each with its letters in the order scale, shift, power. */
    public enum Form {
        POWER_OF_SUM("a/(t+b)^c", "a", "b", "c"),
        SUM_WITH_POWER("c/(t^e+f)", "c", "f", "e");

        private final String written;

        @SuppressWarnings("ImmutableEnumChecker") // made by List.of
        private final List<String> letters;

        Form(String written, String... letters) {
            this.written = written;
            this.letters = List.of(letters);
        }

        /** How a book writes it: {@code a/(t+b)^c}. */
        public String written() {
            return written;
        }

        public String scale() {
            return letters.get(0);
        }

        public String shift() {
            return letters.get(1);
        }

        public String power() {
            return letters.get(2);
        }

        public static Optional<Form> of(String text) {
            String tidy = text.replace(" ", "").toLowerCase(Locale.ROOT);
            return Arrays.stream(values())
                    .filter(form -> form.written.equals(tidy))
                    .findFirst();
        }

        /** The forms, for messages. */
        public static String known() {
            return POWER_OF_SUM.written + " or " + SUM_WITH_POWER.written;
        }
    }
}
