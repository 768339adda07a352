package org.fallrule.reader.shapefile;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Type N without decimals: a {@link Long}; a {@link Double} when the text has a fraction after all or is too large. */
final class WholeNumberFormat implements ValueFormat {
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]++");

    @Override
    public Optional<Object> read(byte[] raw, Consumer<String> complain) {
        String text = AsciiText.of(raw);
        if (!WHOLE.matcher(text).matches()) {
            return NumberFormat.number(text, complain);
        }
        try {
            return Optional.of(Long.valueOf(text));
        } catch (NumberFormatException tooLarge) {
            complain.accept("found " + text + ", which is too large for a whole number of 64 bits; "
                    + "read with 15 digits; shorten it, or make the column a text");
            return NumberFormat.number(text, complain);
        }
    }
}
